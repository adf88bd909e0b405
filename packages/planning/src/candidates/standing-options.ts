/** Crops that stand, as candidates: one for each day on which they may be cleared; exactly one of a group is taken. */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import { runSowing } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { candidateWork } from '../work/minutes-by-week.ts';
import { offeredServings } from './offered-servings.ts';

export function standingOptions(problem: PlanningProblem, scenarios: readonly Scenario[]): Candidate[] {
  return problem.standing.flatMap((crop) =>
    crop.clearDays.map((clearDay) => {
      const plan = { ...crop.plan, clearDay };
      const endWeek: Week = problem.fromWeek + problem.weekCount;
      const toWeek = crop.plan.kind.perennial ? endWeek : Math.min(endWeek, weekOfDay(clearDay) + 1);
      const groundToWeek = Math.max(crop.groundFromWeek, toWeek);
      const lots = scenarios.map(
        ({ member }) => runSowing(problem.context, member, plan, problem.stores).lots,
      );
      const { work } = candidateWork(
        problem,
        { ...crop, plan, groundToWeek },
        lots.map((own, s) => ({ prob: scenarios[s]!.prob, lots: own })),
      );
      return {
        plan,
        ground: crop.ground,
        stripsPerBatch: crop.stripsCount,
        groundFromWeek: crop.groundFromWeek,
        groundToWeek,
        bench: crop.bench,
        startWeek: problem.fromWeek,
        minutes: 0,
        work,
        mostBatches: 1,
        group: crop.plan.id,
        lots,
        offeredServings: offeredServings(problem, scenarios, lots),
      };
    }),
  );
}
