/** Sowings drawn at random, the same in every run: any kind, ground, route and day of the horizon. */
import { streamFor } from '../packages/basis/src/index.ts';
import type { SowingPlan } from '../packages/growing/src/index.ts';
import {
  canGrowIn,
  type PlanningProblem,
  plantsPerStrip,
  routeChoice,
} from '../packages/planning/src/index.ts';

export function randomSowings(problem: PlanningProblem, count: number): SowingPlan[] {
  const stream = streamFor(1, 'bench/sowings', 0);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(stream.uniform() * list.length)]!;
  const kinds = problem.kinds.filter((kind) => !kind.perennial);
  const sowings: SowingPlan[] = [];
  while (sowings.length < count) {
    const kind = pick(kinds);
    const ground = pick(problem.ground);
    const choice = routeChoice(problem, pick(kind.routes));
    const startDay = problem.fromDay + Math.floor(stream.uniform() * problem.shownWeeks * 7);
    if (!canGrowIn(kind, ground) || choice === null) continue;
    sowings.push({
      id: `bench/${sowings.length}`,
      kind,
      route: choice.route,
      startDay,
      startSpreadDays: 0,
      stages: choice.stages,
      exposure: ground.exposure,
      plantDay: null,
      clearDay: null,
      plantsCount: plantsPerStrip(kind, ground),
      protection: problem.protection,
    });
  }
  return sowings;
}
