import type { Lot } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';

/** Mean servings of roles that somebody wants whose time ends within the horizon: eaten by then, or wasted. */
export function offeredServings(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  lots: readonly (readonly Lot[])[],
): number {
  const wanted = new Set<string>(problem.appetite.roles);
  const endWeek = problem.fromWeek + problem.weekCount;
  return lots.reduce(
    (sum, own, s) =>
      sum +
      scenarios[s]!.prob *
        own.reduce((all, lot) => all + (wanted.has(lot.role) && lot.toWeek < endWeek ? lot.servings : 0), 0),
    0,
  );
}
