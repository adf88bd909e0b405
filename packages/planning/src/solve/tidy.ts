/**
 * Fewer different jobs: a small sowing is dropped, or joined to another of the same kind and ground within a few weeks,
 * when the plate loses less by it than a job is worth. One pass, smallest first.
 */
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { choicesOf, emptyState, type GreedyState, gainOf, take } from './greedy.ts';

/** What one job more must bring, weighted servings. */
export const jobPrice = 0.6;

export function jobsOf(choices: readonly Choice[]): number {
  return choices.filter(({ candidate }) => candidate.group === null).length;
}

const joinWithinWeeks = 4;
const smallBatches = 4;

function stateWithout(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  batches: ReadonlyMap<Candidate, number>,
  left: Candidate,
): GreedyState {
  const state = emptyState(problem, scenarios);
  for (const [candidate, n] of batches) if (candidate !== left) take(state, candidate, n);
  return state;
}

function wishNeeds(
  problem: PlanningProblem,
  batches: ReadonlyMap<Candidate, number>,
  candidate: Candidate,
  lost: number,
): boolean {
  const limit = problem.limits.find((l) => l.kind === candidate.plan.kind.id);
  if (limit === undefined || limit.leastPlants <= 0) return false;
  let planted = 0;
  for (const [c, n] of batches)
    if (c.group === null && c.plan.kind.id === limit.kind) planted += n * c.plan.plantsCount;
  return planted - lost * candidate.plan.plantsCount < limit.leastPlants;
}

export function tidy(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  choices: readonly Choice[],
  stopRequested: () => boolean,
): Choice[] {
  const batches = new Map(choices.map(({ candidate, batches: n }) => [candidate, n]));
  const small = choices
    .filter(({ candidate, batches: n }) => candidate.group === null && n <= smallBatches)
    .sort((a, b) => a.batches - b.batches || (a.candidate.plan.id < b.candidate.plan.id ? -1 : 1));
  for (const { candidate } of small) {
    if (stopRequested()) break;
    const n = batches.get(candidate);
    if (n === undefined) continue;
    const state = stateWithout(problem, scenarios, batches, candidate);
    const gain = gainOf(state, scenarios, candidate, n);
    if (gain < jobPrice && !wishNeeds(problem, batches, candidate, n)) {
      batches.delete(candidate);
      continue;
    }
    let best: Candidate | null = null;
    let bestGain = gain - jobPrice;
    for (const other of batches.keys()) {
      if (other === candidate || other.group !== null || other.ground !== candidate.ground) continue;
      if (other.plan.kind !== candidate.plan.kind) continue;
      if (Math.abs(other.startWeek - candidate.startWeek) > joinWithinWeeks || state.ledger.room(other) < n)
        continue;
      const joined = gainOf(state, scenarios, other, n);
      if (joined > bestGain) [best, bestGain] = [other, joined];
    }
    if (best !== null) {
      batches.delete(candidate);
      batches.set(best, batches.get(best)! + n);
    }
  }
  const state = emptyState(problem, scenarios);
  for (const [candidate, n] of batches) take(state, candidate, n);
  return choicesOf(state);
}
