/** Crops that stand, as candidates: one for each day on which they may be cleared; exactly one of a group is taken. */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import { runSowing } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';

export function standingOptions(problem: PlanningProblem, scenarios: readonly Scenario[]): Candidate[] {
  return problem.standing.flatMap((crop) =>
    crop.clearDays.map((clearDay) => {
      const plan = { ...crop.plan, clearDay };
      const endWeek: Week = problem.fromWeek + problem.weekCount;
      const toWeek = crop.plan.kind.perennial ? endWeek : Math.min(endWeek, weekOfDay(clearDay) + 1);
      return {
        plan,
        ground: crop.ground,
        stripsPerBatch: crop.stripsCount,
        groundFromWeek: crop.groundFromWeek,
        groundToWeek: Math.max(crop.groundFromWeek, toWeek),
        bench: [],
        startWeek: problem.fromWeek,
        minutes: 0,
        mostBatches: 1,
        group: crop.plan.id,
        lots: scenarios.map(({ member }) => runSowing(problem.context, member, plan, problem.stores).lots),
      };
    }),
  );
}
