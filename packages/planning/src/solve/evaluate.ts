/** The program's own price of a plan with whole batches: batches fixed, food flow solved to the best. */

import type { Candidate, Choice } from '../problem.ts';
import type { PlantingProgram } from '../program/build-program.ts';
import type { LinearProgram, SolverPort } from '../solver-port.ts';

export interface PricedPlan {
  readonly choices: readonly Choice[];
  readonly cost: number;
  readonly point: Float64Array;
}

export function withFixed(
  program: LinearProgram,
  columnOf: readonly number[],
  batches: readonly number[],
): LinearProgram {
  const colLower = program.colLower.slice();
  const colUpper = program.colUpper.slice();
  const colWhole = new Uint8Array(program.colWhole.length);
  columnOf.forEach((column, c) => {
    colLower[column] = batches[c]!;
    colUpper[column] = batches[c]!;
  });
  return { ...program, colLower, colUpper, colWhole };
}

export function batchesOf(candidates: readonly Candidate[], choices: readonly Choice[]): number[] {
  const index = new Map(candidates.map((candidate, c) => [candidate, c]));
  const batches = candidates.map(() => 0);
  for (const { candidate, batches: n } of choices) {
    const c = index.get(candidate);
    if (c !== undefined) batches[c]! += n;
  }
  return batches;
}

export async function pricePlan(
  solver: SolverPort,
  planting: PlantingProgram,
  candidates: readonly Candidate[],
  choices: readonly Choice[],
): Promise<PricedPlan | null> {
  const fixed = withFixed(planting.program, planting.columnOf, batchesOf(candidates, choices));
  const answer = await solver.relax(fixed);
  if (answer.colValue === null || answer.objective === null) return null;
  return { choices, cost: answer.objective + planting.offset, point: answer.colValue };
}

export function choicesOfPoint(
  candidates: readonly Candidate[],
  columnOf: readonly number[],
  point: Float64Array,
): Choice[] {
  return candidates.flatMap((candidate, c) => {
    const batches = Math.round(point[columnOf[c]!]!);
    return batches > 0 ? [{ candidate, batches }] : [];
  });
}
