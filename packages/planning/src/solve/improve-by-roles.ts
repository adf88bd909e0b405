/**
 * Fix and optimise (Helber & Sahling 2010): the sowings of a few kitchen roles are chosen anew in whole batches while all
 * others stay as they are; the ground, benches and hours that these take are left out of what there is. Roles with the
 * most to gain against the relaxation come first; the round goes on until nothing more is gained or the effort is spent.
 */
import type { Choice, PlanningProblem } from '../problem.ts';
import { type LookedAt, letIn, type ProgramParts, plantingProgram } from '../program/build-program.ts';
import type { SolverPort } from '../solver-port.ts';
import { batchesOf, choicesWith, type PricedPlan, pointWith, pricePlan, withGiven } from './evaluate.ts';
import { movingCost } from './last-plan.ts';
import type { Relaxation } from './relax-by-columns.ts';
import { jobPrice, jobsOf } from './tidy.ts';

/** Roles looked at together. */
const rolesAtOnce = 3;
/** Sowings looked at together, at most: those of the plan and the relaxation, then those that cost least more. */
const mostFree = 400;
/** LP iterations of one look: the first better points come after some ten thousand. */
const lookIterations = 16_000;
const mostNodes = 100_000;
const leastGain = 1e-4;

export interface ImproveLimits {
  /** LP iterations of all looks together; the last may go a little over. */
  readonly lpIterations: number;
  readonly secondsLeft: () => number | null;
  readonly randomSeed: number;
  readonly goodEnough: (cost: number) => boolean;
  readonly onBetter: (cost: number) => void;
  readonly stopRequested: () => boolean;
}

/** Bit r of a sowing is set where it feeds role r in any scenario. */
function rolesFedBy({ inflows, candidates }: ProgramParts): Int32Array {
  return Int32Array.from(candidates, (_, sowing) => {
    const [from, to] = [sowing * inflows.scenarioCount, (sowing + 1) * inflows.scenarioCount];
    let bits = 0;
    for (let e = inflows.starts[from]!; e < inflows.starts[to]!; e++)
      bits |= 1 << inflows.shelves[inflows.shelf[e]!]!.role;
    return bits;
  });
}

/** What is missing above the relaxation, priced, by role. */
function excessByRole(parts: ProgramParts, plan: PricedPlan, relaxation: Relaxation): number[] {
  return parts.problem.appetite.roles.map((_, r) =>
    parts.scenarios.reduce(
      (sum, { prob }, s) => sum + prob * (plan.roleCost[s]![r]! - relaxation.roleCost[s]![r]!),
      0,
    ),
  );
}

/** Groups of roles, those with the most to gain first; each role is in one group with its neighbours in that order. */
function groupsOfRoles(excess: readonly number[], shift: number): number[][] {
  const order = excess.map((_, r) => r).sort((a, b) => excess[b]! - excess[a]! || a - b);
  const groups: number[][] = [];
  for (let i = shift % rolesAtOnce; i < order.length; i += rolesAtOnce)
    groups.push(order.slice(i, i + rolesAtOnce));
  const before = order.slice(0, shift % rolesAtOnce);
  return before.length > 0 ? [before, ...groups] : groups;
}

/** A job's price spread over the batches that a sowing is likely to have, so that few large sowings beat many small. */
function jobPriceOfBatch({ candidates }: ProgramParts, batches: number, sowing: number): number {
  return candidates[sowing]!.group === null ? jobPrice / Math.max(1, batches) : 0;
}

async function lookAgain(
  parts: ProgramParts,
  relaxation: Relaxation,
  plan: PricedPlan,
  rolesFed: Int32Array,
  roles: ReadonlySet<number>,
  solver: SolverPort,
  limits: ImproveLimits,
): Promise<{ readonly choices: readonly Choice[] | null; readonly iterations: number }> {
  const now = batchesOf(parts, plan.choices);
  const otherCost = plan.roleCost.map((byRole) =>
    byRole.reduce((sum, cost, r) => sum + (roles.has(r) ? 0 : cost), 0),
  );
  const lookedAt: LookedAt = { roles, otherCost };
  const others = ~[...roles].reduce((bits, role) => bits | (1 << role), 0);
  const isFree = (sowing: number): boolean => (rolesFed[sowing]! & others) === 0;
  const rank = (sowing: number): number =>
    now.has(sowing) || relaxation.batches[sowing]! > 1e-6 ? -1 : relaxation.reducedCosts[sowing]!;
  const free = new Set(
    [...parts.candidates.keys()]
      .filter(isFree)
      .sort((a, b) => rank(a) - rank(b) || a - b)
      .slice(0, mostFree),
  );
  for (const c of now.keys()) if (isFree(c)) free.add(c);
  const planting = plantingProgram(parts, [], lookedAt);
  letIn(parts, planting, new Set([...free, ...now.keys()]));
  const start = await pointWith(solver, planting, now);
  if (start === null) return { choices: null, iterations: 0 };
  const given = new Map<number, number>();
  for (const [c, n] of now) if (!free.has(c)) given.set(planting.columnOf[c]!, n);
  const program = planting.builder.build();
  for (const c of free)
    program.colCost[planting.columnOf[c]!]! += jobPriceOfBatch(
      parts,
      now.get(c) ?? relaxation.batches[c]!,
      c,
    );
  const part = withGiven(program, given);
  const answer = await solver.solve(
    part.program,
    {
      gapShare: 1e-4,
      nodes: mostNodes,
      lpIterations: lookIterations,
      timeLimitSeconds: limits.secondsLeft(),
      randomSeed: limits.randomSeed,
    },
    Float64Array.from(part.kept, (column) => start.point[column]!),
    () => {},
    limits.stopRequested,
  );
  if (answer.colValue === null) return { choices: null, iterations: answer.iterations };
  const batches = new Map(now);
  const keptAt = new Map(Array.from(part.kept, (column, k) => [column, k]));
  for (const c of free) batches.set(c, Math.round(answer.colValue[keptAt.get(planting.columnOf[c]!)!]!));
  return { choices: choicesWith(parts.candidates, batches), iterations: answer.iterations };
}

/** What the program says a plan costs, with the price of its jobs and of what it moves. */
export function withJobs(problem: PlanningProblem, { cost, choices }: PricedPlan): number {
  return cost + jobsOf(choices) * jobPrice + movingCost(problem, choices);
}

export async function improveByRoles(
  parts: ProgramParts,
  relaxation: Relaxation,
  first: PricedPlan,
  solver: SolverPort,
  limits: ImproveLimits,
): Promise<{ readonly plan: PricedPlan; readonly iterations: number }> {
  const rolesFed = rolesFedBy(parts);
  let plan = first;
  let iterations = 0;
  const over = (): boolean => {
    const left = limits.secondsLeft();
    return limits.stopRequested() || (left !== null && left <= 0) || iterations >= limits.lpIterations;
  };
  for (let shift = 0, idle = 0; idle < rolesAtOnce && !over(); shift++) {
    let gained = false;
    for (const group of groupsOfRoles(excessByRole(parts, plan, relaxation), shift)) {
      if (over() || limits.goodEnough(plan.cost)) return { plan, iterations };
      const answer = await lookAgain(parts, relaxation, plan, rolesFed, new Set(group), solver, limits);
      iterations += answer.iterations;
      if (answer.choices === null) continue;
      const priced = await pricePlan(solver, parts, answer.choices);
      if (priced === null || withJobs(parts.problem, priced) >= withJobs(parts.problem, plan) - leastGain)
        continue;
      plan = priced;
      gained = true;
      limits.onBetter(plan.cost);
    }
    idle = gained ? 0 : idle + 1;
  }
  return { plan, iterations };
}
