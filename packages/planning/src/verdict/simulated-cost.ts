/**
 * What a plan costs when it is lived: the program's own prices of missing servings, on what the kitchen rule eats
 * without foresight in every planning member, in the mean and in the poor years (the mean of the worst fifth).
 */
import type { Eaten } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import { poorYearsShare, poorYearsWeightOf, slicePrice, slices } from '../program/price.ts';

export function missingCost(problem: PlanningProblem, eaten: Eaten): number {
  const { appetite, weekCount } = problem;
  let cost = 0;
  for (let r = 0; r < appetite.roles.length; r++) {
    for (let w = 0; w < weekCount; w++) {
      const want = appetite.garden[r]![w]!;
      let low = 0;
      for (const slice of slices) {
        const high = low + slice.share * want;
        const missing = high - Math.max(low, Math.min(high, eaten.eaten[r]![w]!));
        cost += slicePrice(problem, r, w, slice.price) * missing;
        low = high;
      }
    }
  }
  return cost;
}

export function simulatedCost(problem: PlanningProblem, eaten: readonly Eaten[]): number {
  const costs = eaten.map((e) => missingCost(problem, e)).sort((a, b) => b - a);
  const mean = costs.reduce((sum, c) => sum + c, 0) / Math.max(1, costs.length);
  const poorest = costs.slice(0, Math.max(1, Math.round(costs.length * poorYearsShare)));
  const poor = poorest.reduce((sum, c) => sum + c, 0) / poorest.length;
  const poorYearsWeight = poorYearsWeightOf(problem);
  return (1 - poorYearsWeight) * mean + poorYearsWeight * poor;
}
