/**
 * Planning again: the first plan of the search is the last plan as far as it can still be kept, filled up where weeks or
 * ground have come free; and plans are compared with what they change at a price, so that little is moved for little.
 */
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import {
  choicesOf,
  emptyState,
  fillGreedily,
  type GreedyState,
  gainOf,
  greedyPlan,
  groupsOf,
  take,
  takeLeast,
} from './greedy.ts';

/** What a change of one sowing must bring, weighted servings over the horizon. Judged: 1 to 4. */
export const movePrice = 2;

/** The latest end that is no later than the one people were told of. */
function clearedAsTold(problem: PlanningProblem, options: readonly Candidate[]): Candidate {
  const told = problem.lastPlan?.clearDays.get(options[0]!.group ?? '');
  const inTime = options.filter(({ plan }) => told === undefined || (plan.clearDay ?? 0) <= told);
  return inTime.at(-1) ?? options[0]!;
}

function fits(problem: PlanningProblem, state: GreedyState): boolean {
  return problem.ground.every((_, g) => {
    for (let w = 0; w < problem.weekCount; w++) if (state.ledger.freeStrips(g, w) < -1e-9) return false;
    return true;
  });
}

function keptPlan(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  stopRequested: () => boolean,
): Choice[] | null {
  if (problem.lastPlan === null) return null;
  const state = emptyState(problem, scenarios);
  for (const options of groupsOf(candidates)) take(state, clearedAsTold(problem, options), 1);
  if (!fits(problem, state)) return null;
  const stays = new Map(candidates.flatMap((c) => (c.stays === undefined ? [] : [[c.stays.id, c] as const])));
  for (const { id, stripsCount } of problem.lastPlan.sowings) {
    const candidate = stays.get(id);
    if (candidate === undefined) continue;
    const batches = Math.min(stripsCount, state.ledger.room(candidate));
    if (batches >= 1 && gainOf(state, scenarios, candidate, batches) > -movePrice)
      take(state, candidate, batches);
  }
  takeLeast(problem, scenarios, candidates, state);
  return filledUp(problem, scenarios, candidates, state, stopRequested);
}

/** What the greedy would add, sowing by sowing, where it brings more than a change costs. */
function filledUp(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  state: GreedyState,
  stopRequested: () => boolean,
): Choice[] {
  const kept = choicesOf(state);
  fillGreedily(problem, scenarios, candidates, state, stopRequested);
  const before = new Map(kept.map(({ candidate, batches }) => [candidate, batches]));
  const filled = emptyState(problem, scenarios);
  for (const { candidate, batches } of kept) take(filled, candidate, batches);
  for (const { candidate, batches } of choicesOf(state)) {
    const more = batches - (before.get(candidate) ?? 0);
    if (more > 0 && gainOf(filled, scenarios, candidate, more) > movePrice) take(filled, candidate, more);
  }
  return choicesOf(filled);
}

/** The last plan kept and filled up; without one, or where it can no longer be kept at all, the greedy's. */
export function startPlan(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  standingChoice: (options: readonly Candidate[]) => Candidate,
  stopRequested: () => boolean,
): Choice[] {
  return (
    keptPlan(problem, scenarios, candidates, stopRequested) ??
    greedyPlan(problem, scenarios, candidates, standingChoice, stopRequested)
  );
}

/** Price of what a plan drops, shrinks and adds against the last one; 0 where there is none. */
export function movingCost(problem: PlanningProblem, choices: readonly Choice[]): number {
  if (problem.lastPlan === null) return 0;
  const kept = new Map(
    choices.flatMap(({ candidate, batches }) =>
      candidate.stays === undefined ? [] : [[candidate.stays.id, batches] as const],
    ),
  );
  const dropped = problem.lastPlan.sowings.reduce(
    (sum, { id, stripsCount }) => sum + 1 - Math.min(1, (kept.get(id) ?? 0) / Math.max(1, stripsCount)),
    0,
  );
  const added = choices.filter(({ candidate: c }) => c.group === null && c.stays === undefined).length;
  return movePrice * (dropped + added);
}
