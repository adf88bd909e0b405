/**
 * The relaxation of the program with all sowings, solved with few: those of the first plan to begin with, then round by
 * round those that would pay at the duals found so far (column generation, Gilmore & Gomory 1961; Lübbecke & Desrosiers
 * 2005), until none would, or so little is left between the value and the proven bound that it does not matter.
 */
import { letIn, type PlantingProgram, type ProgramParts, plantingProgram } from '../program/build-program.ts';
import { slices } from '../program/price.ts';
import type { KeptRelaxation, SolverPort } from '../solver-port.ts';
import { roleCostOf } from './evaluate.ts';
import { dearestChains, reducedCosts } from './price-sowings.ts';

/** Sowings let in in one round, at most. */
const letInAtOnce = 600;
const chainsARound = 8;
const ofAKindARound = 2;
const paysBelow = -1e-6;

export interface Relaxation {
  /** Batches of each sowing, 0 where it was left out. */
  readonly batches: Float64Array;
  /** Proven: no plan of whole batches costs less, whichever sowings it takes. */
  readonly bound: number;
  readonly cost: number;
  /** Of every sowing at the last duals: what a batch costs more than it is worth. */
  readonly reducedCosts: Float64Array;
  /** What is missing, priced, by scenario and role. */
  readonly roleCost: readonly Float64Array[];
  /** Mean share of appetite that is eaten, by role and week index; 1 where nothing is wanted. */
  readonly eatenShare: readonly Float64Array[];
  readonly rounds: number;
  readonly iterations: number;
}

/**
 * `closeEnough` sees cost and bound after each round; `thenWith` may go on with the kept relaxation before it is closed.
 * Null when stopped before the first round was over.
 */
export async function relaxByColumns(
  parts: ProgramParts,
  first: Iterable<number>,
  solver: SolverPort,
  closeEnough: (cost: number, bound: number) => boolean,
  stopRequested: () => boolean,
  thenWith: (relaxation: Relaxation, planting: PlantingProgram, kept: KeptRelaxation) => Promise<void>,
): Promise<Relaxation | null> {
  const planting = plantingProgram(parts, first);
  const kept = await solver.keepRelaxation(planting.builder.growth());
  let found: Relaxation | null = null;
  let iterations = 0;
  try {
    for (let rounds = 1; ; rounds++) {
      const answer = await kept.relax(stopRequested);
      iterations += answer.iterations;
      if (answer.colValue === null || answer.rowDual === null || answer.objective === null) return found;
      const cost = answer.objective + planting.offset;
      const costs = reducedCosts(parts, planting, answer.rowDual);
      const bound = Math.max(
        found?.bound ?? Number.NEGATIVE_INFINITY,
        cost - mostToGain(parts, planting, costs),
      );
      found = {
        ...pointOf(parts, planting, answer.colValue),
        reducedCosts: costs,
        bound,
        cost,
        rounds,
        iterations,
      };
      const entering = closeEnough(cost, bound) ? [] : enteringSowings(parts, planting, costs);
      if (entering.length === 0 || stopRequested()) {
        if (!stopRequested()) await thenWith(found, planting, kept);
        return found;
      }
      letIn(parts, planting, entering);
      await kept.grow(planting.builder.growth());
    }
  } finally {
    await kept.close();
  }
}

const isOut =
  ({ columnOf }: PlantingProgram) =>
  (sowing: number): boolean =>
    columnOf[sowing]! < 0;

function mostToGain(parts: ProgramParts, planting: PlantingProgram, costs: Float64Array): number {
  return dearestChains(parts, costs, isOut(planting)).reduce(
    (sum, { worth }, g) => sum + worth * parts.problem.ground[g]!.stripCount,
    0,
  );
}

function enteringSowings(parts: ProgramParts, planting: PlantingProgram, costs: Float64Array): number[] {
  const { candidates } = parts;
  const out = isOut(planting);
  const entering = new Set<number>();
  for (let k = 0; k < chainsARound && entering.size < letInAtOnce; k++)
    for (const chain of dearestChains(parts, costs, (c) => out(c) && !entering.has(c)))
      for (const c of chain.sowings) if (costs[c]! < paysBelow) entering.add(c);
  const byKind = new Map<string, number[]>();
  candidates.forEach(({ plan, ground }, c) => {
    if (costs[c]! >= paysBelow || !out(c)) return;
    const key = `${plan.kind.id}/${ground}`;
    const own = byKind.get(key);
    if (own === undefined) byKind.set(key, [c]);
    else own.push(c);
  });
  for (const own of byKind.values())
    for (const c of own.sort((a, b) => costs[a]! - costs[b]! || a - b).slice(0, ofAKindARound))
      if (entering.size < letInAtOnce) entering.add(c);
  return [...entering].sort((a, b) => a - b);
}

function pointOf(
  parts: ProgramParts,
  planting: PlantingProgram,
  point: Float64Array,
): Pick<Relaxation, 'batches' | 'eatenShare' | 'roleCost'> {
  const { candidates, problem, scenarios } = parts;
  const batches = new Float64Array(candidates.length);
  planting.columnOf.forEach((column, c) => {
    if (column >= 0) batches[c] = point[column]!;
  });
  const eatenShare = problem.appetite.roles.map((_, r) =>
    Float64Array.from({ length: problem.weekCount }, (_unused, w) => {
      const want = problem.appetite.garden[r]![w]!;
      return planting.flows.reduce((sum, { sliceColumn }, s) => {
        const at = sliceColumn[r]![w]!;
        if (at < 0) return sum + scenarios[s]!.prob;
        const eaten = slices.reduce((all, _slice, i) => all + point[at + i]!, 0);
        return sum + (scenarios[s]!.prob * eaten) / want;
      }, 0);
    }),
  );
  return { batches, eatenShare, roleCost: roleCostOf(parts, planting, point) };
}
