/** From the relaxation to whole batches: the whole parts first, then the greedy fills what is left of ground and plate. */
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { choicesOf, emptyState, fillGreedily, take, takeLeast } from './greedy.ts';

export function roundRelaxation(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  values: readonly number[],
  stopRequested: () => boolean,
): Choice[] {
  const state = emptyState(problem, scenarios);
  const groups = new Map<string, { candidate: Candidate; value: number }>();
  candidates.forEach((candidate, c) => {
    if (candidate.group === null) return;
    const best = groups.get(candidate.group);
    if (best === undefined || values[c]! > best.value)
      groups.set(candidate.group, { candidate, value: values[c]! });
  });
  for (const { candidate } of groups.values()) take(state, candidate, 1);
  const order = candidates
    .map((candidate, c) => ({
      candidate,
      whole: Math.floor(values[c]! + 1e-6),
      rest: values[c]! - Math.floor(values[c]! + 1e-6),
    }))
    .filter(({ candidate }) => candidate.group === null);
  for (const { candidate, whole } of order)
    take(state, candidate, Math.min(whole, state.ledger.room(candidate)));
  const nearest = order.filter((o) => o.rest > 0.5).sort((a, b) => b.rest - a.rest);
  for (const { candidate } of nearest) if (state.ledger.room(candidate) >= 1) take(state, candidate, 1);
  takeLeast(problem, scenarios, candidates, state);
  const near = candidates.filter((_, c) => values[c]! > 1e-6);
  fillGreedily(problem, scenarios, near, state, stopRequested);
  fillGreedily(problem, scenarios, candidates, state, stopRequested);
  return choicesOf(state);
}
