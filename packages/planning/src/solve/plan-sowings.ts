/**
 * Choosing the sowings: scenarios, candidates, a greedy plan at once, then the program: its relaxation gives the proven
 * bound and, rounded, a better plan; a program over the promising candidates, started from the best plan, improves it.
 * Stops by gap or by counted nodes; the clock is a safety net only and marks the plan as not reproducible.
 *
 * Gap = (best − bound) / (cost of sowing nothing − bound), the bound from the program over all candidates.
 */
import { invariant } from '@twelvemonth/basis';
import { withLastPlan } from '../candidates/last-plan-candidates.ts';
import { makeCandidates } from '../candidates/make-candidates.ts';
import { probePlans } from '../candidates/probe-plans.ts';
import { standingOptions } from '../candidates/standing-options.ts';
import type { Candidate, Choice, PlanningProblem } from '../problem.ts';
import { buildProgram, type PlantingProgram } from '../program/build-program.ts';
import { chooseScenarios, type Scenario } from '../scenarios/choose-scenarios.ts';
import type { SolverPort } from '../solver-port.ts';
import { simulate } from '../verdict/simulate.ts';
import { simulatedCost } from '../verdict/simulated-cost.ts';
import { choicesOfPoint, type PricedPlan, pricePlan } from './evaluate.ts';
import { costOf } from './greedy.ts';
import { movingCost, startPlan } from './last-plan.ts';
import { roundRelaxation } from './round-relaxation.ts';
import { jobPrice, tidy } from './tidy.ts';

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

const mostNodes = 100_000;
/** Candidates whose relaxed value is above this are looked at again in whole batches. */
const promisingAbove = 0.01;

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
  const planting = buildProgram(problem, scenarios, candidates);
  return improve(problem, base, planting, first, solver, limits, steps);
}

async function improve(
  problem: PlanningProblem,
  base: { candidates: readonly Candidate[]; scenarios: readonly Scenario[] },
  planting: PlantingProgram,
  first: readonly Choice[],
  solver: SolverPort,
  limits: PlanLimits,
  steps: PlanSteps,
): Promise<ChosenPlan> {
  const { candidates, scenarios } = base;
  const { program, columnOf, offset } = planting;
  const outOfTime = (): boolean =>
    limits.timeLimitSeconds !== null && steps.elapsedSeconds() > limits.timeLimitSeconds;
  const enough = (): boolean => steps.stopRequested() || outOfTime();
  const relaxed = await solver.relax(program, enough);
  let iterations = relaxed.iterations;
  const priced: PricedPlan[] = [];
  const consider = async (choices: readonly Choice[]): Promise<void> => {
    const plan = await pricePlan(solver, planting, candidates, choices);
    if (plan !== null) priced.push(plan);
  };
  if (relaxed.colValue === null) {
    const choices = tidy(problem, scenarios, first, () => false);
    const stoppedBecause = steps.stopRequested() ? 'stopped' : outOfTime() ? 'time' : 'greedy-only';
    return {
      ...base,
      choices,
      gapShare: null,
      gapServings: null,
      iterations,
      stoppedBecause,
      reproducible: false,
    };
  }
  await consider(first);
  const nothing = await pricePlan(solver, planting, candidates, standingOnly(candidates));
  const bound = relaxed.objective === null ? null : relaxed.objective + offset;
  if (relaxed.colValue !== null && !steps.stopRequested() && !outOfTime()) {
    const values = columnOf.map((column) => relaxed.colValue![column]!);
    await consider(roundRelaxation(problem, scenarios, candidates, values, steps.stopRequested));
  }
  const best = (): PricedPlan => priced.reduce((a, b) => (b.cost < a.cost ? b : a));
  const gapOf = (plan: PricedPlan): number | null =>
    bound === null || nothing === null
      ? null
      : Math.max(0, (plan.cost - bound) / Math.max(1e-9, nothing.cost - bound));
  let stoppedBecause: ChosenPlan['stoppedBecause'] = 'effort';
  invariant(priced.length > 0, 'the greedy plan fits the program');
  steps.progress('program', null, gapOf(best()));

  if ((gapOf(best()) ?? 1) <= limits.gapShare) stoppedBecause = 'gap';
  else if (steps.stopRequested()) stoppedBecause = 'stopped';
  else if (outOfTime()) stoppedBecause = 'time';
  else if (limits.lpIterations > 0 && relaxed.colValue !== null) {
    const start = best();
    const keep = candidates.map(
      (_, c) => relaxed.colValue![columnOf[c]!]! > promisingAbove || start.point[columnOf[c]!]! > 0.5,
    );
    const left =
      limits.timeLimitSeconds === null ? null : Math.max(1, limits.timeLimitSeconds - steps.elapsedSeconds());
    const restricted = restrictTo(program, columnOf, keep);
    const answer = await solver.solve(
      restricted,
      {
        gapShare: limits.gapShare,
        nodes: mostNodes,
        lpIterations: limits.lpIterations,
        timeLimitSeconds: left,
        randomSeed: problem.seed,
      },
      start.point,
      (p) => {
        const value =
          bound === null || nothing === null ? null : (p.objective + offset - bound) / (nothing.cost - bound);
        steps.progress('program', null, value);
      },
      steps.stopRequested,
    );
    iterations += answer.iterations;
    if (answer.colValue !== null) await consider(choicesOfPoint(candidates, columnOf, answer.colValue));
    if (answer.status === 'time' || outOfTime()) stoppedBecause = 'time';
    else if (answer.status === 'stopped') stoppedBecause = 'stopped';
    else if ((gapOf(best()) ?? 1) <= limits.gapShare) stoppedBecause = 'gap';
  }
  const chosen = await mostLivable(problem, base, planting, priced, solver, steps);
  return {
    ...base,
    choices: chosen.choices,
    gapShare: gapOf(chosen),
    gapServings: bound === null ? null : chosen.cost - bound,
    iterations,
    stoppedBecause,
    reproducible: stoppedBecause === 'gap' || stoppedBecause === 'effort',
  };
}

/** Price of one more job, weighted servings over the horizon: the same as in tidying. */
function livedCost(problem: PlanningProblem, choices: readonly Choice[]): number {
  const plans = choices.map(({ candidate, batches }) => ({
    ...candidate.plan,
    plantsCount: candidate.plan.plantsCount * (candidate.group === null ? batches : 1),
  }));
  const { context, stock, appetite, roles, stores } = problem;
  const lived = simulate({ context, plans, stock, appetite, roles, stores }).map((member) => member.eaten);
  const work = choices.reduce((sum, { candidate, batches }) => sum + costOf(candidate) * batches, 0);
  const jobs = choices.filter(({ candidate }) => candidate.group === null).length;
  return simulatedCost(problem, lived) + work + jobs * jobPrice + movingCost(problem, choices);
}

/**
 * The program sees a few scenarios with foresight; the plan is lived in many without. So the plans at hand, tidied, are
 * lived through in every planning member, and the cheapest is taken. Its gap is still that of the program.
 */
async function mostLivable(
  problem: PlanningProblem,
  base: { candidates: readonly Candidate[]; scenarios: readonly Scenario[] },
  planting: PlantingProgram,
  priced: readonly PricedPlan[],
  solver: SolverPort,
  steps: PlanSteps,
): Promise<PricedPlan> {
  let best: { plan: PricedPlan; lived: number } | null = null;
  for (const plan of priced) {
    const choices = tidy(problem, base.scenarios, plan.choices, steps.stopRequested);
    const lived = livedCost(problem, choices);
    if (best !== null && lived >= best.lived) continue;
    best = { plan: (await pricePlan(solver, planting, base.candidates, choices)) ?? plan, lived };
  }
  invariant(best !== null, 'there is a plan to choose from');
  return best.plan;
}

/** Sowing nothing: what stands goes on to its natural end. */
function standingOnly(candidates: readonly Candidate[]): Choice[] {
  const last = new Map<string, Candidate>();
  for (const candidate of candidates) if (candidate.group !== null) last.set(candidate.group, candidate);
  return [...last.values()].map((candidate) => ({ candidate, batches: 1 }));
}

function restrictTo(
  program: PlantingProgram['program'],
  columnOf: readonly number[],
  keep: readonly boolean[],
) {
  const colUpper = program.colUpper.slice();
  columnOf.forEach((column, c) => {
    if (!keep[c]) colUpper[column] = 0;
  });
  return { ...program, colUpper };
}
