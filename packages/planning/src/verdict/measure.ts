/** What planner and rivals are measured by: the same simulation, the same weeks, the same count of ground and work. */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import {
  type Eaten,
  type ForecastContext,
  type Lot,
  type SowingPlan,
  servingGOf,
} from '@twelvemonth/growing';
import type { BenchUse, PlanningProblem } from '../problem.ts';
import { addSowingWork } from '../work/sowing-work.ts';
import { meanScore, type SimulatedMember, simulate } from './simulate.ts';

/** A sowing with the ground and bench that it takes; `to` weeks exclusive, absolute. */
export interface PlacedSowing {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
  readonly minutes: number;
  readonly standing: boolean;
}

export interface PlanScore {
  readonly leanWeeks: number;
  readonly servingsMissing: number;
  readonly servingsEaten: number;
  readonly wasted: number;
  readonly groundIdleShare: number;
  readonly hours: number;
  readonly sowings: number;
}

/** Weeks that two spans of weeks have in common; `to` exclusive. */
function sharedWeeks(from: Week, to: Week, otherFrom: Week, otherTo: Week): number {
  return Math.max(0, Math.min(to, otherTo) - Math.max(from, otherFrom));
}

function groundM2(problem: PlanningProblem): number {
  return problem.ground.reduce((sum, g) => sum + (g.bench === null ? g.stripCount * g.stripM2 : 0), 0);
}

export function idleShare(
  problem: PlanningProblem,
  placed: readonly PlacedSowing[],
  first: number,
  last: number,
): number {
  const [from, to] = [problem.fromWeek + first, problem.fromWeek + last];
  let used = 0;
  for (const { ground, stripsCount, groundFromWeek, groundToWeek } of placed) {
    const own = problem.ground[ground]!;
    if (own.bench === null)
      used += stripsCount * own.stripM2 * sharedWeeks(groundFromWeek, groundToWeek, from, to);
  }
  const all = groundM2(problem) * (last - first);
  return all <= 0 ? 0 : Math.max(0, 1 - used / all);
}

/** Work on what is newly sown that falls into the weeks counted, picking and putting by in the mean of the members. */
function hoursOf(
  problem: PlanningProblem,
  placed: readonly PlacedSowing[],
  simulated: readonly SimulatedMember[],
  first: number,
  last: number,
): number {
  const [from, to] = [problem.fromWeek + first, problem.fromWeek + last];
  let minutes = 0;
  placed.forEach((sowing, i) => {
    if (sowing.standing) return;
    const outcomes = simulated.map(({ runs }) => ({ prob: 1 / simulated.length, lots: runs[i]!.lots }));
    addSowingWork(problem, sowing, outcomes, (_, week, more) => {
      if (week >= from && week < to) minutes += more;
    });
  });
  return minutes / 60;
}

/** Kilograms as harvested that came ready in the weeks counted, mean over members, per m² of ground and year. */
function harvestedKgPerM2Year(
  problem: PlanningProblem,
  placed: readonly PlacedSowing[],
  simulated: readonly SimulatedMember[],
  first: number,
  last: number,
): number {
  const [from, to] = [problem.fromWeek + first, problem.fromWeek + last];
  const gramsOf = (lot: Lot, plan: SowingPlan): number => {
    const harvest = plan.kind.harvests.find((h) => h.role === lot.role);
    return harvest === undefined ? 0 : (lot.servings * servingGOf(lot.role)) / harvest.edibleShare;
  };
  let grams = 0;
  for (const { runs } of simulated)
    runs.forEach((run, i) => {
      const { plan, ground } = placed[i]!;
      if (problem.ground[ground]!.bench !== null) return;
      for (const lot of run.lots) if (lot.fromWeek >= from && lot.fromWeek < to) grams += gramsOf(lot, plan);
    });
  const years = (last - first) / 52;
  return grams / 1000 / Math.max(1, simulated.length) / Math.max(1e-9, groundM2(problem)) / years;
}

/**
 * Scores a list of placed sowings in the members of a context; weeks are indices from the first week, `last` exclusive.
 * `eaten`: all weeks of each member, for whoever counts otherwise.
 */
export function scorePlaced(
  problem: PlanningProblem,
  context: ForecastContext,
  placed: readonly PlacedSowing[],
  first: number,
  last: number,
): { readonly score: PlanScore; readonly kgPerM2Year: number; readonly eaten: readonly Eaten[] } {
  const { stock, appetite, roles, stores } = problem;
  const plans = placed.map(({ plan }) => plan);
  const simulated = simulate({ context, plans, stock, appetite, roles, stores });
  const eaten = simulated.map((member) => member.eaten);
  const { leanWeeks, missingServings, eatenServings, wastedServings } = meanScore(
    appetite,
    eaten,
    first,
    last,
  );
  const begun = new Set<string>();
  for (const { plan, standing } of placed) {
    const week = weekOfDay(plan.startDay) - problem.fromWeek;
    if (!standing && week >= first && week < last)
      begun.add(`${plan.kind.id}/${plan.route}/${plan.startDay}`);
  }
  return {
    score: {
      leanWeeks,
      servingsMissing: missingServings,
      servingsEaten: eatenServings,
      wasted: wastedServings,
      groundIdleShare: idleShare(problem, placed, first, last),
      hours: hoursOf(problem, placed, simulated, first, last),
      sowings: begun.size,
    },
    kgPerM2Year: harvestedKgPerM2Year(problem, placed, simulated, first, last),
    eaten,
  };
}
