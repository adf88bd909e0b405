/**
 * A sowing begun later: everything else stays, its ground is free from the same day on, and it may stand longer only as
 * far as nothing else is waiting for its strips. What a delay costs is measured on the plate: what the sowing would put
 * on it that no other does, so that salad which slips from winter into the glut of spring counts as lost.
 */
import { type Day, mondayOf, type Week } from '@twelvemonth/basis';
import { inSeasonDays, type Lot, NEVER, type SowingPlan, type SowingRun } from '@twelvemonth/growing';
import { type PlanningProblem, type Plate, plateRules, pour } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { UnsafeBecause } from '../report/argue-report.ts';
import { runsOf } from './try-out.ts';

const longestDelayWeeks = 10;
const safeShare = 0.5;
const triedMembers = 6;
/** On the plate less than this is nothing: then the servings that come of it are compared. */
const leastWorth = 0.5;

const overlaps = (a: ChosenSowing, b: ChosenSowing): boolean =>
  a.placements.some((p) =>
    b.placements.some(
      (q) =>
        p.bed.place === q.bed.place &&
        p.bed.number === q.bed.number &&
        p.stripsFrom < q.stripsFrom + q.stripsCount &&
        q.stripsFrom < p.stripsFrom + p.stripsCount,
    ),
  );

/** What stands in its strips before it and after it, nearest first. */
export function neighboursOf(
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
): { readonly before: readonly ChosenSowing[]; readonly after: readonly ChosenSowing[] } {
  const others = sowings.filter((other) => other.id !== sowing.id && overlaps(sowing, other));
  return {
    before: others
      .filter((other) => other.groundToWeek <= sowing.groundFromWeek)
      .sort((a, b) => b.groundToWeek - a.groundToWeek),
    after: others
      .filter((other) => other.groundFromWeek >= sowing.groundToWeek)
      .sort((a, b) => a.groundFromWeek - b.groundFromWeek),
  };
}

/** The week in which the next sowing needs its strips; null: none does. */
export const neededFromWeek = (sowings: readonly ChosenSowing[], sowing: ChosenSowing): Week | null =>
  neighboursOf(sowings, sowing).after[0]?.groundFromWeek ?? null;

export function delayed(plan: SowingPlan, weeks: number, nextWeek: Week | null): SowingPlan {
  const { clearDay } = plan;
  const latest: Day = nextWeek === null ? NEVER : mondayOf(nextWeek) - 1;
  return {
    ...plan,
    startDay: plan.startDay + weeks * 7,
    clearDay: clearDay === null ? null : Math.max(clearDay, Math.min(clearDay + weeks * 7, latest)),
  };
}

/** Sets, cloves and tubers are sold in their season only. */
export function canBeHad(problem: PlanningProblem, plan: SowingPlan): boolean {
  const { kind } = plan;
  if (kind.startsAs === 'seed') return true;
  const southern = problem.context.site.latitudeDeg < 0;
  return inSeasonDays(plan.startDay, kind.stockFromDayOfYear, kind.stockToDayOfYear, southern);
}

/** Servings that come within the weeks simulated, mean of runs. */
export function meanServings(problem: PlanningProblem, runs: readonly SowingRun[]): number {
  const end = problem.fromWeek + problem.weekCount;
  let sum = 0;
  for (const run of runs) for (const lot of run.lots) if (lot.fromWeek < end) sum += lot.servings;
  return sum / Math.max(1, runs.length);
}

/** A plate a member, filled in the roles of one sowing by all that the household has but it: what a run would add. */
export function plateWithout(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
): (runs: readonly SowingRun[]) => number {
  const rules = plateRules(problem);
  const count = Math.min(triedMembers, problem.context.members.length);
  const own = new Set<string>(sowing.plan.kind.harvests.map((harvest) => harvest.role));
  const plates = Array.from({ length: count }, (_, m): Plate => {
    const plate = { covered: new Float64Array(rules.appetite.length) };
    const fill = (lots: readonly Lot[]): void => {
      for (const lot of lots) if (own.has(lot.role)) pour(rules, plate, lot, 1, true, null);
    };
    fill(problem.stock);
    for (const other of sowings) if (other !== sowing) fill(other.runs[m]!.lots);
    return plate;
  });
  return (runs) => {
    let worth = 0;
    plates.forEach((plate, m) => {
      const undo: number[] = [];
      for (const lot of runs[m]!.lots) worth += pour(rules, plate, lot, 1, false, undo);
      for (let i = 0; i < undo.length; i += 2) plate.covered[undo[i]!]! -= undo[i + 1]!;
    });
    return worth / Math.max(1, count);
  };
}

export interface LastSafe {
  readonly weeks: number;
  readonly day: Day;
  readonly afterwards: UnsafeBecause | null;
}

const readyInMostYears = (runs: readonly SowingRun[]): boolean =>
  runs.filter((run) => run.harvests.some((h) => h.firstDay < NEVER)).length * 2 > runs.length;

/** How long it may be put off before it does less than half of what it is there for; null for what stands already. */
export function lastSafeOf(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
): LastSafe | null {
  if (sowing.state === 'done') return null;
  const { plan } = sowing;
  const nextWeek = neededFromWeek(sowings, sowing);
  const worthOf = plateWithout(problem, sowings, sowing);
  const own = sowing.runs.slice(0, triedMembers);
  const worth = worthOf(own);
  const servings = meanServings(problem, own);
  let weeks = 0;
  let afterwards: UnsafeBecause | null = null;
  for (let later = 1; later <= longestDelayWeeks && afterwards === null; later++) {
    const moved = delayed(plan, later, nextWeek);
    if (!canBeHad(problem, moved)) afterwards = 'not-sold';
    else {
      const runs = runsOf(problem, moved, triedMembers);
      const share = worth >= leastWorth ? worthOf(runs) / worth : meanServings(problem, runs) / servings;
      if (!readyInMostYears(runs)) afterwards = 'not-ready';
      else if (!(share >= safeShare)) afterwards = 'gives-little';
      else weeks = later;
    }
  }
  return { weeks, day: plan.startDay + weeks * 7, afterwards };
}
