import type { Choice, PlanningProblem } from '../problem.ts';
import { wishPrice } from '../program/ground-rows.ts';

/** What it costs that wishes from below are not met, weighted servings: the same price as in the program. */
export function wishCost(problem: PlanningProblem, choices: readonly Choice[]): number {
  return problem.limits.reduce((cost, { kind, leastPlants }) => {
    const plants = choices.reduce(
      (sum, { candidate, batches }) =>
        candidate.group === null && candidate.plan.kind.id === kind
          ? sum + candidate.plan.plantsCount * batches
          : sum,
      0,
    );
    return cost + wishPrice * Math.max(0, leastPlants - plants);
  }, 0);
}
