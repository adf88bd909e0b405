/**
 * The first plan: again and again the sowing that feeds most for the ground it takes, in all scenarios together, until
 * nothing more is worth its ground. Gains only fall as the plate fills, so a stale gain is an upper bound and most
 * candidates need not be looked at again (lazy greedy, Minoux 1978).
 */
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import { hourPrice, stripWeekPrice, wastePrice } from '../program/price.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { type GroundLedger, groundLedger } from './ground-ledger.ts';
import { type Plate, type PlateRules, plateRules, pour } from './plate.ts';

export interface GreedyState {
  readonly rules: PlateRules;
  readonly plates: readonly Plate[];
  readonly ledger: GroundLedger;
  readonly batches: Map<Candidate, number>;
}

export function emptyState(problem: PlanningProblem, scenarios: readonly Scenario[]): GreedyState {
  const rules = plateRules(problem);
  const plates = scenarios.map(() => ({ covered: new Float64Array(rules.appetite.length) }));
  for (const plate of plates) for (const lot of problem.stock) pour(rules, plate, lot, 1, true, null);
  return { rules, plates, ledger: groundLedger(problem), batches: new Map() };
}

export function take(state: GreedyState, candidate: Candidate, batches: number): void {
  if (batches <= 0) return;
  state.ledger.take(candidate, batches);
  candidate.lots.forEach((lots, s) => {
    for (const lot of lots) pour(state.rules, state.plates[s]!, lot, batches, true, null);
  });
  state.batches.set(candidate, (state.batches.get(candidate) ?? 0) + batches);
}

/** Worth of so many batches on top of the state, minus work and ground. */
export function gainOf(
  state: GreedyState,
  scenarios: readonly Scenario[],
  candidate: Candidate,
  batches: number,
): number {
  let gain = 0;
  const undo: number[] = [];
  candidate.lots.forEach((lots, s) => {
    const plate = state.plates[s]!;
    undo.length = 0;
    let worth = 0;
    for (const lot of lots) worth += pour(state.rules, plate, lot, batches, false, undo);
    for (let i = 0; i < undo.length; i += 2) plate.covered[undo[i]!]! -= undo[i + 1]!;
    gain += worth * scenarios[s]!.prob;
  });
  return gain - costOf(candidate) * batches;
}

export function costOf(candidate: Candidate): number {
  const weeks = candidate.groundToWeek - candidate.groundFromWeek;
  const price =
    (candidate.minutes / 60) * hourPrice +
    candidate.stripsPerBatch * weeks * stripWeekPrice +
    (candidate.offeredServings ?? 0) * wastePrice;
  return price - (candidate.stays?.bonus ?? 0);
}

/** Share of the scarce things that a batch takes: strip-weeks of its class and bench-weeks. */
function scarcityOf(problem: PlanningProblem, candidate: Candidate): number {
  const weeks = candidate.groundToWeek - candidate.groundFromWeek;
  let share =
    (candidate.stripsPerBatch * (weeks + 3)) / Math.max(1, problem.ground[candidate.ground]!.stripCount);
  for (const use of candidate.bench)
    share +=
      (0.5 * use.m2 * (use.toWeek - use.fromWeek)) / Math.max(0.01, problem.benches[use.bench]!.capacityM2);
  return share;
}

const leastGain = 0.05;

export function fillGreedily(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  state: GreedyState,
  stopRequested: () => boolean,
): void {
  const entries = candidates
    .filter((candidate) => candidate.group === null)
    .map((candidate) => {
      const scarcity = scarcityOf(problem, candidate);
      return { candidate, scarcity, ratio: Number.POSITIVE_INFINITY };
    });
  const heap = entries.slice();
  while (heap.length > 0 && !stopRequested()) {
    let top = 0;
    for (let i = 1; i < heap.length; i++) if (heap[i]!.ratio > heap[top]!.ratio) top = i;
    const entry = heap[top]!;
    if (entry.ratio <= 0) break;
    const room = state.ledger.room(entry.candidate);
    const gain = room >= 1 ? gainOf(state, scenarios, entry.candidate, 1) : 0;
    if (gain <= leastGain) {
      heap[top] = heap[heap.length - 1]!;
      heap.pop();
      continue;
    }
    const ratio = gain / entry.scarcity;
    const stale = ratio < entry.ratio - 1e-12;
    entry.ratio = ratio;
    if (stale && heap.some((other) => other !== entry && other.ratio > ratio)) continue;
    take(state, entry.candidate, 1);
  }
}

/** The ways in which each crop that stands may go on. */
export function groupsOf(candidates: readonly Candidate[]): Candidate[][] {
  const groups = new Map<string, Candidate[]>();
  for (const c of candidates) if (c.group !== null) groups.set(c.group, [...(groups.get(c.group) ?? []), c]);
  return [...groups.values()];
}

/** Standing crops first (kept to their natural end), then limits from below, then the fill. */
export function greedyPlan(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  standingChoice: (options: readonly Candidate[]) => Candidate,
  stopRequested: () => boolean,
): Choice[] {
  const state = emptyState(problem, scenarios);
  for (const options of groupsOf(candidates)) take(state, standingChoice(options), 1);
  takeLeast(problem, scenarios, candidates, state);
  fillGreedily(problem, scenarios, candidates, state, stopRequested);
  return choicesOf(state);
}

/** Wishes from below ("at least 100 garlic"): the candidates of the kind that gain most, until the wish is met. */
export function takeLeast(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  state: GreedyState,
): void {
  for (const limit of problem.limits) {
    let missing = limit.leastPlants;
    for (const [candidate, n] of state.batches)
      if (candidate.plan.kind.id === limit.kind && candidate.group === null)
        missing -= n * candidate.plan.plantsCount;
    const own = candidates.filter((c) => c.plan.kind.id === limit.kind && c.group === null);
    while (missing > 0) {
      let best: Candidate | null = null;
      let bestGain = Number.NEGATIVE_INFINITY;
      for (const candidate of own) {
        if (state.ledger.room(candidate) < 1) continue;
        const gain = gainOf(state, scenarios, candidate, 1) / scarcityOf(problem, candidate);
        if (gain > bestGain) [best, bestGain] = [candidate, gain];
      }
      if (best === null) break;
      take(state, best, 1);
      missing -= best.plan.plantsCount;
    }
  }
}

export function choicesOf(state: GreedyState): Choice[] {
  return [...state.batches]
    .filter(([, batches]) => batches > 0)
    .map(([candidate, batches]) => ({ candidate, batches }));
}
