/** What else could be sown: possible sowings in a class of ground, and how the plan at hand leaves room for them. */
import { isoFromDay, mondayOf, weekOfDay } from '@twelvemonth/basis';
import { allFamilies, NEVER, type SowingPlan } from '@twelvemonth/growing';
import {
  type Candidate,
  candidateWork,
  emptyState,
  type GreedyState,
  makeCandidates,
  type PlanningProblem,
  type Scenario,
  take,
} from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import { scenarioCount } from '../plan/scenario-count.ts';
import type { OtherSowing } from '../report/argue-report.ts';

/** A few members, alike in weight: quick and even-handed. */
export function fewScenarios(problem: PlanningProblem): Scenario[] {
  const members = problem.context.members.slice(0, scenarioCount);
  return members.map((member) => ({ member, prob: 1 / members.length }));
}

/** Possible sowings in one class of ground: the other classes are closed to every family. */
export function candidatesIn(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  ground: number,
): Candidate[] {
  const closed = allFamilies().map((family) => family.id);
  const only = problem.ground.map((g, i) => (i === ground ? g : { ...g, bannedFamilies: closed }));
  return makeCandidates({ ...problem, ground: only }, scenarios, () => {});
}

/** A sowing of the plan as one batch. */
export function asCandidate(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  scenarios: readonly Scenario[],
): Candidate {
  const { plan, ground, groundFromWeek, groundToWeek, bench, stripsCount, standing } = sowing;
  const lots = scenarios.map(({ member }) => sowing.runs[problem.context.members.indexOf(member)]!.lots);
  const outcomes = lots.map((own, s) => ({ prob: scenarios[s]!.prob, lots: own }));
  return {
    plan,
    ground,
    stripsPerBatch: Math.max(1, stripsCount),
    groundFromWeek,
    groundToWeek: stripsCount > 0 ? groundToWeek : groundFromWeek,
    bench,
    startWeek: weekOfDay(plan.startDay),
    minutes: 0,
    work: candidateWork(problem, sowing, outcomes).work,
    mostBatches: 1,
    group: standing === null ? null : plan.id,
    lots,
  };
}

/** Plates and ground with so many sowings of the plan on them. */
export function stateOf(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  scenarios: readonly Scenario[],
): GreedyState {
  const state = emptyState(problem, scenarios);
  for (const sowing of sowings) take(state, asCandidate(problem, sowing, scenarios), 1);
  return state;
}

export const inBatches = (candidate: Candidate, batches: number): SowingPlan => ({
  ...candidate.plan,
  plantsCount: candidate.plan.plantsCount * batches,
});

export function describe(problem: PlanningProblem, candidate: Candidate, batches: number): OtherSowing {
  const { plan } = candidate;
  const ground = problem.ground[candidate.ground]!;
  const strips = candidate.stripsPerBatch * batches;
  const names = [...new Set(ground.beds.map((bed) => bed.placeName))];
  return {
    kind: plan.kind.id,
    kindName: plan.kind.name,
    startsAs: plan.kind.startsAs,
    routeId: plan.route,
    sow: isoFromDay(plan.startDay),
    plantOut:
      plan.stages.length === 0 ? null : isoFromDay(plan.plantDay ?? mondayOf(candidate.groundFromWeek)),
    clear: isoFromDay(
      plan.clearDay === null || plan.clearDay >= NEVER ? mondayOf(candidate.groundToWeek) : plan.clearDay,
    ),
    placeName: names.join(' or '),
    plants: Math.max(1, Math.round(plan.plantsCount * batches)),
    m2: Math.round(strips * ground.stripM2 * 100) / 100,
    vessels: ground.stripLitres > 0 || ground.bench !== null ? strips : 0,
  };
}
