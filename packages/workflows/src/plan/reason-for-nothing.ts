import type { PlanningProblem } from '@twelvemonth/planning';
import type { ReasonForNothing, ReportSowing } from '../report/plan-report.ts';

/** Why a plan begins nothing; null where it begins something. */
export function reasonForNothing(
  problem: PlanningProblem,
  sowings: readonly ReportSowing[],
): ReasonForNothing | null {
  if (sowings.some(({ state }) => state !== 'done')) return null;
  if (problem.ground.length === 0) return 'no-ground';
  const wanted = problem.appetite.garden.some((weeks) => weeks.some((servings) => servings > 0));
  if (!wanted) return 'no-appetite';
  return problem.kinds.every(({ perennial }) => perennial) ? 'all-forbidden' : 'nothing-worth-it';
}
