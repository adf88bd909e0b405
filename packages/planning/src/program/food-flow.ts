/**
 * Food of one scenario through the weeks. Lots that can be eaten until about the same week and lose alike lie on one
 * shelf; a shelf's balance each week is what came, what lay there, less what goes on lying; the difference is eaten.
 *
 *   in(w) + (1 − loss)·left(w − 1) − left(w) − used(w) ≥ 0,   Σ shelves used = Σ slices eaten
 */
import type { Lot } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { roleWeight, slices, weekWeight } from './price.ts';
import type { ProgramBuilder } from './program-builder.ts';

const shelfEndStepWeeks = 4;
const freshCarryLoss = 0.3;

interface Shelf {
  readonly role: number;
  readonly loss: number;
  firstWeek: number;
  lastWeek: number;
  /** Inflow: week, column (or −1 for stock at hand), servings. */
  readonly inflow: { week: number; column: number; servings: number }[];
}

export interface ScenarioFlow {
  /** Cost when nothing is eaten. */
  readonly emptyCost: number;
  /** Columns of eaten slices with their price. */
  readonly slices: readonly { readonly column: number; readonly price: number }[];
}

function shelfKey(
  lot: Lot,
  role: number,
  from: number,
  to: number,
): { key: string; end: number; loss: number } {
  const span = to - from;
  if (span <= 1) return { key: `${role}/fresh`, end: to, loss: freshCarryLoss };
  const end = Math.max(from + 1, Math.floor(to / shelfEndStepWeeks) * shelfEndStepWeeks);
  const loss = Math.round(lot.lossPerWeekShare * 50) / 50;
  return { key: `${role}/${end}/${loss}`, end, loss };
}

function gatherShelves(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
  scenario: number,
): Shelf[] {
  const shelves = new Map<string, Shelf>();
  const roleIndex = new Map<string, number>(problem.appetite.roles.map((role, i) => [role, i]));
  const last = problem.weekCount - 1;
  const put = (lot: Lot, column: number): void => {
    const role = roleIndex.get(lot.role);
    const from = Math.max(0, lot.fromWeek - problem.fromWeek);
    const to = Math.min(last, lot.toWeek - problem.fromWeek);
    if (role === undefined || to < from || from > last || lot.servings <= 0) return;
    const { key, end, loss } = shelfKey(lot, role, from, to);
    let shelf = shelves.get(key);
    if (shelf === undefined) {
      shelf = { role, loss, firstWeek: from, lastWeek: end, inflow: [] };
      shelves.set(key, shelf);
    }
    shelf.firstWeek = Math.min(shelf.firstWeek, from);
    shelf.lastWeek = Math.max(shelf.lastWeek, end);
    shelf.inflow.push({ week: from, column, servings: lot.servings });
  };
  for (const lot of problem.stock) put(lot, -1);
  candidates.forEach((candidate, c) => {
    for (const lot of candidate.lots[scenario]!) put(lot, columnOf[c]!);
  });
  return [...shelves.values()];
}

export function foodFlow(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
  scenario: number,
): ScenarioFlow {
  const { weekCount, appetite } = problem;
  const eatRow = appetite.roles.map(() => new Int32Array(weekCount).fill(-1));
  const eaten: { column: number; price: number }[] = [];
  let emptyCost = 0;
  appetite.roles.forEach((_, r) => {
    for (let w = 0; w < weekCount; w++) {
      const want = appetite.garden[r]![w]!;
      if (want <= 0.01) continue;
      const row = builder.row(0, Number.POSITIVE_INFINITY);
      eatRow[r]![w] = row;
      for (const slice of slices) {
        const price = slice.price * roleWeight(problem, r) * weekWeight(problem, w);
        const column = builder.column(0, 0, slice.share * want, false);
        builder.add(row, column, -1);
        eaten.push({ column, price });
        emptyCost += price * slice.share * want;
      }
    }
  });

  for (const shelf of gatherShelves(problem, candidates, columnOf, scenario)) {
    const byWeek = new Map<number, typeof shelf.inflow>();
    for (const inflow of shelf.inflow) byWeek.set(inflow.week, [...(byWeek.get(inflow.week) ?? []), inflow]);
    let before = -1;
    for (let w = shelf.firstWeek; w <= shelf.lastWeek; w++) {
      const inflows = byWeek.get(w) ?? [];
      const stock = inflows.reduce((sum, i) => sum + (i.column === -1 ? i.servings : 0), 0);
      const balance = builder.row(-stock, Number.POSITIVE_INFINITY);
      for (const inflow of inflows)
        if (inflow.column >= 0) builder.add(balance, inflow.column, inflow.servings);
      if (before >= 0) builder.add(balance, before, 1 - shelf.loss);
      const eat = eatRow[shelf.role]![w]!;
      if (eat >= 0) {
        const used = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
        builder.add(balance, used, -1);
        builder.add(eat, used, 1);
      }
      if (w < shelf.lastWeek) {
        before = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
        builder.add(balance, before, -1);
      }
    }
  }
  return { emptyCost, slices: eaten };
}
