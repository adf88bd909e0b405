/** What a plan is made from: weather to plan and to check with, and the problem, with the last plan taken into account. */
import type { Issue } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather, ForecastContext } from '@twelvemonth/growing';
import type { PlanningProblem, SolverPort } from '@twelvemonth/planning';
import { conflictsOf } from '../conflicts/conflicts.ts';
import type { PlanOptions } from '../ports.ts';
import { buildProblem, type ContextSize, contextOf } from '../problem/build-problem.ts';
import { restIssues } from '../problem/rests.ts';
import {
  begunSowings,
  gardenSince,
  type PlannedAgain,
  planAgain,
  weatherFromOf,
} from '../replan/plan-again.ts';
import type { ReportConflict } from '../report/conflict-report.ts';

export interface ProblemOfPlan {
  /** The garden file, without promises that are begun by now and demands that cannot be met. */
  readonly garden: Garden;
  readonly context: ForecastContext;
  readonly check: ForecastContext;
  readonly problem: PlanningProblem;
  /** Ids of crops of the file that are taken as cleared. */
  readonly cleared: readonly string[];
  /** Demands that cannot be met together; the problem is without what they drop. */
  readonly conflicts: readonly ReportConflict[];
  readonly issues: readonly Issue[];
}

/** Null when the garden has no climate to draw from. */
export async function problemOfPlan(
  file: Garden,
  options: PlanOptions,
  daily: DailyWeather | null,
  solver: SolverPort | null,
): Promise<ProblemOfPlan | null> {
  const last = options.last ?? null;
  const begun = last === null ? null : begunSowings(last.report, file, options.fromDay, last.notBegun);
  const demanded = begun === null ? file : gardenSince(file, begun);
  const size: ContextSize = {
    fromDay: options.fromDay,
    weeks: options.weeks,
    memberCount: options.memberCount,
    seed: options.seed,
    weatherFromDay: last === null ? null : weatherFromOf(last, options.fromDay),
  };
  const context = contextOf(demanded, daily, 'plan', size);
  const check = contextOf(demanded, daily, 'check', { ...size, memberCount: options.checkMemberCount });
  if (context === null || check === null) return null;
  const problemIn = (garden: Garden, members: ForecastContext): PlannedAgain => {
    const anew = buildProblem(garden, members, size);
    return last === null || begun === null
      ? { problem: anew, cleared: [], issues: [] }
      : planAgain(garden, anew, last.report, begun);
  };
  const { garden, conflicts } = await conflictsOf(
    demanded,
    context,
    solver,
    (some, members) => problemIn(some, members).problem,
  );
  const { problem, cleared, issues } = problemIn(garden, context);
  return {
    garden,
    context,
    check,
    problem,
    cleared,
    conflicts,
    issues: [...issues, ...restIssues(garden, problem)],
  };
}
