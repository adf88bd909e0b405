/**
 * A plan opened to be argued with: the garden's problem and the plan's sowings in weather that the plan was not made
 * with, and what the household eats in it. Made once; every question after that simulates only what it changes.
 */
import { cannot, type Day, dayFromIso, done, type Outcome } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type DailyWeather, type Eaten, eat, type Lot } from '@twelvemonth/growing';
import type { PlanningProblem } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { PlanRefusal } from '../plan-garden.ts';
import { buildProblem, contextOf } from '../problem/build-problem.ts';
import { gardenOfPlan } from '../replan/garden-of-plan.ts';
import type { PlanReport } from '../report/plan-report.ts';
import { sowingsOfReport } from './sowings-of-report.ts';

/** Members that decide when what stands is over: the first of them, as in planning. */
const standingMembers = 12;

export interface OpenPlan {
  readonly garden: Garden;
  /** Its context holds the members that everything is simulated in: unseen when the plan was made. */
  readonly problem: PlanningProblem;
  readonly sowings: readonly ChosenSowing[];
  /** Sowings of the report that the garden file no longer has room, kind or route for. */
  readonly lost: readonly string[];
  /** By member. */
  readonly eaten: readonly Eaten[];
  readonly report: PlanReport | null;
}

export interface OpenOptions {
  /** Used where there is no report. */
  readonly fromDay: Day;
  readonly weeks: number;
  readonly memberCount: number;
  readonly seed: number;
}

export const lotsIn = (problem: PlanningProblem, sowings: readonly ChosenSowing[], member: number): Lot[] => [
  ...problem.stock,
  ...sowings.flatMap((sowing) => sowing.runs[member]!.lots),
];

export function openPlan(
  garden: Garden,
  daily: DailyWeather | null,
  report: PlanReport | null,
  options: OpenOptions,
): Outcome<OpenPlan, PlanRefusal> {
  const size = {
    fromDay: (report === null ? null : dayFromIso(report.from)) ?? options.fromDay,
    weeks: report?.weeksShown ?? options.weeks,
    memberCount: Math.min(report?.members ?? standingMembers, standingMembers),
    seed: report?.seed ?? options.seed,
  };
  const planned = contextOf(garden, daily, 'plan', size);
  const check = contextOf(garden, daily, 'check', { ...size, memberCount: options.memberCount });
  if (planned === null || check === null) return cannot('no-climate');
  const asPlanned = report === null ? garden : gardenOfPlan(garden, report);
  const problem: PlanningProblem = { ...buildProblem(asPlanned, planned, size), context: check };
  if (problem.ground.length === 0) return cannot('no-ground');
  if (problem.appetite.roles.length === 0) return cannot('no-appetite');
  const { sowings, lost } = sowingsOfReport(garden, problem, report);
  const eaten = check.members.map((_, m) =>
    eat(lotsIn(problem, sowings, m), problem.appetite, problem.roles),
  );
  return done({ garden, problem, sowings, lost, eaten, report });
}
