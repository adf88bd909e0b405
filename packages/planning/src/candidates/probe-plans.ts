/** A fixed handful of sowings by which members are compared: every kind, spread over the year, in its first ground. */

import { mondayOf } from '@twelvemonth/basis';
import type { SowingPlan } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import { careOf } from './place-care.ts';
import { canGrowIn, plantsPerStrip, routeChoice } from './routes.ts';

const probeEveryWeeks = 13;

export function probePlans(problem: PlanningProblem): SowingPlan[] {
  return problem.kinds.flatMap((kind, k) => {
    const ground = problem.ground.find((g) => canGrowIn(kind, g));
    const choice = kind.routes.map((route) => routeChoice(problem, route)).find((c) => c !== null);
    if (kind.perennial || ground === undefined || choice === undefined || choice === null) return [];
    return [0, 1, 2].map((quarter) => ({
      id: `probe/${kind.id}/${quarter}`,
      kind,
      route: choice.route,
      startDay: mondayOf(problem.fromWeek + (k % probeEveryWeeks) + quarter * 2 * probeEveryWeeks),
      startSpreadDays: 0,
      stages: choice.stages,
      exposure: ground.exposure,
      plantDay: null,
      clearDay: null,
      plantsCount: plantsPerStrip(kind, ground),
      protection: problem.protection,
      keepsSeed: problem.savesSeedOf.has(kind.id),
      care: careOf(ground),
    }));
  });
}
