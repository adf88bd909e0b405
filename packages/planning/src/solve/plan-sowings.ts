/**
 * Choosing the sowings: scenarios, candidates, a greedy plan at once, then the program: its relaxation gives the proven
 * bound and, rounded, a better plan; a program over the promising candidates, started from the best plan, improves it.
 * Stops by gap or by counted nodes; the clock is a safety net only and marks the plan as not reproducible.
 *
 * Gap = (best − bound) / (cost of sowing nothing − bound), the bound from the program over all candidates.
 */
import { withLastPlan } from '../candidates/last-plan-candidates.ts';
import { makeCandidates } from '../candidates/make-candidates.ts';
import { probePlans } from '../candidates/probe-plans.ts';
import { standingOptions } from '../candidates/standing-options.ts';
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import { type ProgramParts, programParts } from '../program/build-program.ts';
import { chooseScenarios, type Scenario } from '../scenarios/choose-scenarios.ts';
import type { SolverPort } from '../solver-port.ts';
import { simulate } from '../verdict/simulate.ts';
import { simulatedCost } from '../verdict/simulated-cost.ts';
import { dive } from './dive.ts';
import { type PricedPlan, pricePlan } from './evaluate.ts';
import { costOf, groupsOf } from './greedy.ts';
import { improveByRoles, withJobs } from './improve-by-roles.ts';
import { movingCost, startPlan } from './last-plan.ts';
import { relaxByColumns } from './relax-by-columns.ts';
import { roundRelaxation } from './round-relaxation.ts';
import { jobPrice, jobsOf, tidy } from './tidy.ts';
import { wishCost } from './wish-cost.ts';

export interface PlanLimits {
  readonly scenarioCount: number;
  readonly gapShare: number;
  /** Simplex iterations that the search in whole batches may spend; 0: none. */
  readonly lpIterations: number;
  readonly timeLimitSeconds: number | null;
}

export interface PlanSteps {
  readonly progress: (
    step: 'candidates' | 'greedy' | 'program',
    doneShare: number | null,
    gapShare: number | null,
  ) => void;
  readonly stopRequested: () => boolean;
  readonly elapsedSeconds: () => number;
}

export interface ChosenPlan {
  readonly choices: readonly Choice[];
  readonly candidates: readonly Candidate[];
  readonly scenarios: readonly Scenario[];
  readonly gapShare: number | null;
  /** The same of the cheapest plan that the search found, before the plans were lived through; null without a bound. */
  readonly searchGapShare?: number | null;
  /** Program cost of the plan less its bound, servings (weighted) over the horizon. */
  readonly gapServings: number | null;
  readonly iterations: number;
  readonly stoppedBecause: 'gap' | 'effort' | 'time' | 'stopped' | 'greedy-only';
  readonly reproducible: boolean;
  /**
   * Share of the appetite for the garden that the relaxation eats, [role][week], mean over the scenarios by their
   * weight; 1 where there is no appetite. Left out when nothing was relaxed.
   */
  readonly relaxedEatenShare?: readonly Float64Array[];
}

/** The relaxation ends when its bound is proven to within this part of the gap that is good enough. */
const boundWithinShare = 0.1;

export async function planSowings(
  problem: PlanningProblem,
  solver: SolverPort | null,
  limits: PlanLimits,
  steps: PlanSteps,
): Promise<ChosenPlan> {
  const scenarios = chooseScenarios(problem, probePlans(problem), limits.scenarioCount);
  const candidates = [
    ...standingOptions(problem, scenarios),
    ...withLastPlan(
      problem,
      scenarios,
      makeCandidates(problem, scenarios, (share) => steps.progress('candidates', share, null)),
    ),
  ];
  steps.progress('greedy', null, null);
  const latest = (options: readonly Candidate[]): Candidate => options[options.length - 1]!;
  const first = startPlan(problem, scenarios, candidates, latest, steps.stopRequested);
  const base = { candidates, scenarios };
  if (solver === null || steps.stopRequested()) {
    const stoppedBecause = solver === null ? ('greedy-only' as const) : ('stopped' as const);
    return {
      ...base,
      choices: first,
      gapShare: null,
      gapServings: null,
      iterations: 0,
      stoppedBecause,
      reproducible: solver === null,
    };
  }
  steps.progress('program', null, null);
  return improve(problem, base, first, solver, limits, steps);
}

interface Found {
  readonly candidates: readonly Candidate[];
  readonly scenarios: readonly Scenario[];
}

async function improve(
  problem: PlanningProblem,
  base: Found,
  first: readonly Choice[],
  solver: SolverPort,
  limits: PlanLimits,
  steps: PlanSteps,
): Promise<ChosenPlan> {
  const { candidates, scenarios } = base;
  const parts = programParts(problem, scenarios, candidates);
  const secondsLeft = (): number | null =>
    limits.timeLimitSeconds === null ? null : limits.timeLimitSeconds - steps.elapsedSeconds();
  const outOfTime = (): boolean => (secondsLeft() ?? 1) <= 0;
  const enough = (): boolean => steps.stopRequested() || outOfTime();
  const early = (): ChosenPlan['stoppedBecause'] | null =>
    steps.stopRequested() ? 'stopped' : outOfTime() ? 'time' : null;
  const withoutProof = (): ChosenPlan => ({
    ...base,
    choices: tidy(problem, scenarios, first, () => false),
    gapShare: null,
    gapServings: null,
    iterations: 0,
    stoppedBecause: early() ?? 'greedy-only',
    reproducible: false,
  });

  const nothing = await pricePlan(solver, parts, standingOnly(candidates));
  const greedy = await pricePlan(solver, parts, first);
  if (nothing === null) return withoutProof();
  const shareOf = (cost: number, bound: number): number =>
    Math.max(0, (cost - bound) / Math.max(1e-9, nothing.cost - bound));
  let dived: Awaited<ReturnType<typeof dive>> = { choices: null, iterations: 0 };
  const relaxation = await relaxByColumns(
    parts,
    firstLetIn(parts, first),
    solver,
    (cost, bound) => {
      steps.progress('program', null, shareOf((greedy ?? nothing).cost, bound));
      return shareOf(cost, bound) <= boundWithinShare * limits.gapShare;
    },
    enough,
    async ({ batches }, planting, kept) => {
      dived = await dive(parts, planting, kept, batches, enough);
    },
  );
  if (relaxation === null) return withoutProof();
  const gapOf = ({ cost }: PricedPlan): number => shareOf(cost, relaxation.bound);
  const priced: PricedPlan[] = [];
  const fallback = greedy ?? nothing;
  let iterations = relaxation.iterations + dived.iterations;
  const consider = async (choices: readonly Choice[]): Promise<void> => {
    const plan = await pricePlan(solver, parts, tidy(problem, scenarios, choices, steps.stopRequested));
    if (plan !== null) priced.push(plan);
  };
  await consider(first);
  if (!enough()) {
    const values = [...relaxation.batches];
    await consider(roundRelaxation(problem, scenarios, candidates, values, steps.stopRequested));
    if (dived.choices !== null) await consider(dived.choices);
  }
  const best = (): PricedPlan =>
    priced.reduce((a, b) => (withJobs(problem, b) < withJobs(problem, a) ? b : a), priced[0] ?? fallback);
  steps.progress('program', null, gapOf(best()));
  if (gapOf(best()) > limits.gapShare && limits.lpIterations > 0 && !enough()) {
    const improved = await improveByRoles(parts, relaxation, best(), solver, {
      lpIterations: limits.lpIterations,
      secondsLeft,
      randomSeed: problem.seed,
      goodEnough: (cost) => shareOf(cost, relaxation.bound) <= limits.gapShare,
      onBetter: (cost) => steps.progress('program', null, shareOf(cost, relaxation.bound)),
      stopRequested: steps.stopRequested,
    });
    iterations += improved.iterations;
    priced.push(improved.plan);
    if (!enough()) await consider(improved.plan.choices);
  }
  const chosen = mostLivable(problem, priced.length > 0 ? priced : [fallback]);
  const stoppedBecause = early() ?? (gapOf(chosen) <= limits.gapShare ? 'gap' : 'effort');
  return {
    ...base,
    choices: chosen.choices,
    gapShare: gapOf(chosen),
    searchGapShare: Math.min(...[fallback, ...priced].map(gapOf)),
    gapServings: chosen.cost - relaxation.bound,
    iterations,
    stoppedBecause,
    reproducible: stoppedBecause === 'gap' || stoppedBecause === 'effort',
    relaxedEatenShare: relaxation.eatenShare,
  };
}

/** The relaxation starts from the first plan and every way in which a crop that stands may go on. */
function firstLetIn({ candidates, indexOf }: ProgramParts, first: readonly Choice[]): Set<number> {
  const sowings = new Set(first.map(({ candidate }) => indexOf.get(candidate)!));
  candidates.forEach(({ group }, c) => {
    if (group !== null) sowings.add(c);
  });
  return sowings;
}

function livedCost(problem: PlanningProblem, choices: readonly Choice[]): number {
  const plans = choices.map(({ candidate, batches }) => ({
    ...candidate.plan,
    plantsCount: candidate.plan.plantsCount * (candidate.group === null ? batches : 1),
  }));
  const { context, stock, appetite, roles, stores } = problem;
  const lived = simulate({ context, plans, stock, appetite, roles, stores }).map((member) => member.eaten);
  const work = choices.reduce((sum, { candidate, batches }) => sum + costOf(candidate) * batches, 0);
  const told = movingCost(problem, choices) + wishCost(problem, choices);
  return simulatedCost(problem, lived) + work + jobsOf(choices) * jobPrice + told;
}

/**
 * The program sees a few scenarios with foresight; the plan is lived in many without. So the plans at hand are lived
 * through in every planning member, and the cheapest is taken. Its gap is still that of the program.
 */
function mostLivable(problem: PlanningProblem, priced: readonly PricedPlan[]): PricedPlan {
  const lived = priced.map((plan) => ({ plan, cost: livedCost(problem, plan.choices) }));
  return lived.reduce((a, b) => (b.cost < a.cost ? b : a)).plan;
}

/** Sowing nothing: what stands goes on to its natural end. */
function standingOnly(candidates: readonly Candidate[]): Choice[] {
  return groupsOf(candidates).map((options) => ({ candidate: options.at(-1)!, batches: 1 }));
}
