/**
 * What can still be done about servings that were lost: the plan goes on as it is, and from a day on possible sowings are
 * added, greedily, to the ground, benches and hours that it leaves free. The plate is laid with the lost servings alone,
 * so that nothing is chosen that does not fill one of their weeks.
 */
import { type Day, weekOfDay } from '@twelvemonth/basis';
import type { CropType } from '@twelvemonth/growing';
import { makeCandidates } from '../candidates/make-candidates.ts';
import { probePlans } from '../candidates/probe-plans.ts';
import type { BenchUse, Candidate, Choice, PlanningProblem } from '../problem.ts';
import { chooseScenarios, type Scenario } from '../scenarios/choose-scenarios.ts';
import { choicesOf, emptyState, fillGreedily, take } from '../solve/greedy.ts';
import type { PlacedSowing } from '../verdict/measure.ts';
import { candidateWork } from '../work/minutes-by-week.ts';

export interface RefillRequest {
  /** The problem of the plan; its context holds the members to be fed, as they are after what went wrong. */
  readonly problem: PlanningProblem;
  /** First day on which something can be begun. */
  readonly fromDay: Day;
  /** What goes on and keeps its ground and bench. */
  readonly kept: readonly Omit<PlacedSowing, 'minutes' | 'standing'>[];
  /** Servings lost, by role and week as in the problem's appetite. */
  readonly lostServings: readonly Float64Array[];
  readonly scenarioCount: number;
  readonly stopRequested: () => boolean;
}

const leastLostServings = 0.25;

/** Kinds that feed a role of which enough was lost to be worth a sowing. */
function usefulKinds(problem: PlanningProblem, lost: readonly Float64Array[]): CropType[] {
  const roles = new Set(
    problem.appetite.roles.filter((_, r) => lost[r]!.reduce((sum, v) => sum + v, 0) >= leastLostServings),
  );
  return problem.kinds.filter((kind) => kind.harvests.some((harvest) => roles.has(harvest.role)));
}

function keptCandidate(
  sowing: RefillRequest['kept'][number],
  scenarios: readonly Scenario[],
  problem: PlanningProblem,
): Candidate {
  const { plan, ground, stripsCount, groundFromWeek, groundToWeek } = sowing;
  const bench: readonly BenchUse[] = sowing.bench;
  return {
    plan,
    ground,
    stripsPerBatch: stripsCount,
    groundFromWeek,
    groundToWeek,
    bench,
    startWeek: problem.fromWeek,
    minutes: 0,
    work: candidateWork(problem, sowing, []).work,
    mostBatches: 1,
    group: `kept/${plan.id}`,
    lots: scenarios.map(() => []),
  };
}

/** Sowings to add, at their greedy best; empty when nothing that could still be begun feeds the weeks lost. */
export function refill(request: RefillRequest): Choice[] {
  const { problem, fromDay, kept, lostServings, scenarioCount, stopRequested } = request;
  const fromWeek = weekOfDay(fromDay);
  const passed = Math.max(0, fromWeek - problem.fromWeek);
  const kinds = usefulKinds(problem, lostServings);
  if (kinds.length === 0 || passed >= problem.weekCount) return [];
  const later: PlanningProblem = {
    ...problem,
    kinds,
    fromDay,
    fromWeek,
    weekCount: problem.weekCount - passed,
    capMinutesByWeek: problem.capMinutesByWeek?.slice(passed) ?? null,
  };
  const scenarios = chooseScenarios(problem, probePlans(later), scenarioCount);
  const candidates = makeCandidates(later, scenarios, () => {});
  const hungry: PlanningProblem = {
    ...problem,
    stock: [],
    appetite: { ...problem.appetite, garden: lostServings },
  };
  const state = emptyState(hungry, scenarios);
  const goesOn = kept.map((sowing) => keptCandidate(sowing, scenarios, later));
  for (const candidate of goesOn) take(state, candidate, 1);
  fillGreedily(hungry, scenarios, candidates, state, stopRequested);
  const old = new Set(goesOn);
  return choicesOf(state).filter(({ candidate }) => !old.has(candidate));
}
