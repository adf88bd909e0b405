/**
 * What possible sowings bring to the kitchen, flat: lots that can be eaten until about the same week and lose alike lie
 * on one shelf. Entries of sowing c in scenario s are those from starts[c · scenarioCount + s] on.
 */
import type { Lot } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { roundedCoefficient } from './program-builder.ts';

const shelfEndStepWeeks = 4;
const freshCarryLoss = 0.3;
const lossStepShare = 0.02;

export interface Shelf {
  readonly role: number;
  /** What is left of a serving after a week. */
  readonly keepShare: number;
  /** Last week index on which anything of it can be eaten. */
  readonly lastWeek: number;
}

export interface Inflows {
  readonly shelves: readonly Shelf[];
  readonly scenarioCount: number;
  readonly starts: Int32Array;
  readonly shelf: Int32Array;
  /** Week index from the problem's first week. */
  readonly week: Int32Array;
  readonly servings: Float64Array;
  /** Stock at hand, the same in every scenario: shelf, week index, servings. */
  readonly stock: readonly { readonly shelf: number; readonly week: number; readonly servings: number }[];
}

export function inflowsOf(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  scenarioCount: number,
): Inflows {
  const shelves: Shelf[] = [];
  const shelfIndex = new Map<number, number>();
  const roleIndex = new Map<string, number>(problem.appetite.roles.map((role, i) => [role, i]));
  const last = problem.weekCount - 1;
  const shelfOf = (role: number, from: number, to: number, lossPerWeekShare: number): number => {
    const fresh = to - from <= 1;
    const end = fresh
      ? last
      : Math.min(last, Math.max(from + 1, Math.floor(to / shelfEndStepWeeks) * shelfEndStepWeeks));
    const lossSteps = Math.round((fresh ? freshCarryLoss : lossPerWeekShare) / lossStepShare);
    const key = ((role * 1024 + end) * 64 + lossSteps) * 2 + Number(fresh);
    const known = shelfIndex.get(key);
    if (known !== undefined) return known;
    shelves.push({ role, keepShare: roundedCoefficient(1 - lossSteps * lossStepShare), lastWeek: end });
    shelfIndex.set(key, shelves.length - 1);
    return shelves.length - 1;
  };
  const put = (lot: Lot, add: (shelf: number, week: number, servings: number) => void): void => {
    const role = roleIndex.get(lot.role);
    const from = Math.max(0, lot.fromWeek - problem.fromWeek);
    const to = Math.min(last, lot.toWeek - problem.fromWeek);
    if (role === undefined || to < from || from > last || lot.servings <= 0) return;
    add(shelfOf(role, from, to, lot.lossPerWeekShare), from, lot.servings);
  };

  const stock: { shelf: number; week: number; servings: number }[] = [];
  for (const lot of problem.stock) put(lot, (shelf, week, servings) => stock.push({ shelf, week, servings }));

  const starts = new Int32Array(candidates.length * scenarioCount + 1);
  const shelf: number[] = [];
  const week: number[] = [];
  const servings: number[] = [];
  candidates.forEach((candidate, c) => {
    for (let s = 0; s < scenarioCount; s++) {
      const own = new Map<number, number>();
      for (const lot of candidate.lots[s]!)
        put(lot, (onShelf, inWeek, amount) => {
          const key = onShelf * 1024 + inWeek;
          own.set(key, (own.get(key) ?? 0) + amount);
        });
      for (const [key, amount] of own) {
        const rounded = roundedCoefficient(amount);
        if (rounded === 0) continue;
        shelf.push(Math.floor(key / 1024));
        week.push(key % 1024);
        servings.push(rounded);
      }
      starts[c * scenarioCount + s + 1] = shelf.length;
    }
  });
  return {
    shelves,
    scenarioCount,
    starts,
    shelf: Int32Array.from(shelf),
    week: Int32Array.from(week),
    servings: Float64Array.from(servings),
    stock,
  };
}
