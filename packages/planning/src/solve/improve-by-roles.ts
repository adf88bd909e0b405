/**
 * Fix and optimise (Helber & Sahling 2010): the sowings of a few kitchen roles are chosen anew in whole batches while all
 * others stay as they are; the ground, benches and hours that these take are left out of what there is. Roles with the
 * most to gain against the relaxation come first; the round goes on until nothing more is gained or the effort is spent.
 */
import type { Choice } from '../problem.ts';
import { type LookedAt, letIn, type ProgramParts, plantingProgram } from '../program/build-program.ts';
import type { SolverPort } from '../solver-port.ts';
import { batchesOf, choicesWith, type PricedPlan, pointWith, pricePlan, withGiven } from './evaluate.ts';
import type { Relaxation } from './relax-by-columns.ts';

/** Roles looked at together. */
const rolesAtOnce = 3;
/** Sowings with a reduced cost above this many priced servings a strip are not looked at again. */
const promisingBelow = 0.35;
const mostNodes = 100_000;
const leastGain = 1e-4;

export interface ImproveLimits {
  /** LP iterations of one look at a few roles, and of all together. */
  readonly lpIterationsAtOnce: number;
  readonly lpIterations: number;
  readonly secondsLeft: () => number | null;
  readonly randomSeed: number;
  readonly goodEnough: (cost: number) => boolean;
  readonly onBetter: (cost: number) => void;
  readonly stopRequested: () => boolean;
}

/** Indices of the roles that a sowing feeds in any scenario. */
function rolesFed({ inflows }: ProgramParts, sowing: number): Set<number> {
  const roles = new Set<number>();
  const [from, to] = [sowing * inflows.scenarioCount, (sowing + 1) * inflows.scenarioCount];
  for (let e = inflows.starts[from]!; e < inflows.starts[to]!; e++)
    roles.add(inflows.shelves[inflows.shelf[e]!]!.role);
  return roles;
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

async function lookAgain(
  parts: ProgramParts,
  relaxation: Relaxation,
  plan: PricedPlan,
  roles: ReadonlySet<number>,
  solver: SolverPort,
  limits: ImproveLimits,
): Promise<{ readonly choices: readonly Choice[] | null; readonly iterations: number }> {
  const now = batchesOf(parts, plan.choices);
  const otherCost = plan.roleCost.map((byRole) =>
    byRole.reduce((sum, cost, r) => sum + (roles.has(r) ? 0 : cost), 0),
  );
  const lookedAt: LookedAt = { roles, otherCost };
  const isFree = (sowing: number): boolean => {
    const fed = rolesFed(parts, sowing);
    return [...fed].every((role) => roles.has(role));
  };
  const promising = parts.candidates.flatMap((_, c) =>
    now.has(c) || relaxation.batches[c]! > 1e-6 || relaxation.reducedCosts[c]! < promisingBelow ? [c] : [],
  );
  const free = new Set(promising.filter(isFree));
  const planting = plantingProgram(parts, [], lookedAt);
  letIn(parts, planting, new Set([...free, ...now.keys()]));
  const start = await pointWith(solver, planting, now);
  if (start === null) return { choices: null, iterations: 0 };
  const given = new Map<number, number>();
  for (const [c, n] of now) if (!free.has(c)) given.set(planting.columnOf[c]!, n);
  const part = withGiven(planting.builder.build(), given);
  const answer = await solver.solve(
    part.program,
    {
      gapShare: 1e-4,
      nodes: mostNodes,
      lpIterations: limits.lpIterationsAtOnce,
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

export async function improveByRoles(
  parts: ProgramParts,
  relaxation: Relaxation,
  first: PricedPlan,
  solver: SolverPort,
  limits: ImproveLimits,
): Promise<{ readonly plan: PricedPlan; readonly iterations: number }> {
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
      const answer = await lookAgain(parts, relaxation, plan, new Set(group), solver, limits);
      iterations += answer.iterations;
      if (answer.choices === null) continue;
      const priced = await pricePlan(solver, parts, answer.choices);
      if (priced === null || priced.cost >= plan.cost - leastGain) continue;
      plan = priced;
      gained = true;
      limits.onBetter(plan.cost);
    }
    idle = gained ? 0 : idle + 1;
  }
  return { plan, iterations };
}
