/** The program's own price of a plan with whole batches: batches fixed, food flow solved to the best. */

import type { Candidate, Choice } from '../problem.ts';
import type { PlantingProgram } from '../program/build-program.ts';
import type { LinearProgram, SolverPort } from '../solver-port.ts';

export interface PricedPlan {
  readonly choices: readonly Choice[];
  readonly cost: number;
  readonly point: Float64Array;
}

/**
 * The program with its batches given: their columns are taken out and what they use and bring goes into the bounds of
 * the rows, which leaves the food flow alone.
 */
export function foodFlowOf(
  program: LinearProgram,
  columnOf: readonly number[],
  batches: readonly number[],
): { readonly program: LinearProgram; readonly kept: Int32Array; readonly cost: number } {
  const given = new Float64Array(program.colCost.length).fill(Number.NaN);
  columnOf.forEach((column, c) => {
    given[column] = batches[c]!;
  });
  const rowLower = program.rowLower.slice();
  const rowUpper = program.rowUpper.slice();
  const kept: number[] = [];
  const starts: number[] = [];
  const indices: number[] = [];
  const values: number[] = [];
  let cost = 0;
  for (let column = 0; column < given.length; column++) {
    const amount = given[column]!;
    const isKept = Number.isNaN(amount);
    if (isKept) {
      kept.push(column);
      starts.push(indices.length);
    } else cost += amount * program.colCost[column]!;
    if (!isKept && amount === 0) continue;
    for (let e = program.starts[column]!; e < program.starts[column + 1]!; e++) {
      const row = program.indices[e]!;
      if (isKept) {
        indices.push(row);
        values.push(program.values[e]!);
      } else {
        rowLower[row]! -= amount * program.values[e]!;
        rowUpper[row]! -= amount * program.values[e]!;
      }
    }
  }
  starts.push(indices.length);
  const pick = (all: Float64Array): Float64Array => Float64Array.from(kept, (column) => all[column]!);
  return {
    program: {
      colCost: pick(program.colCost),
      colLower: pick(program.colLower),
      colUpper: pick(program.colUpper),
      colWhole: new Uint8Array(kept.length),
      rowLower,
      rowUpper,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    },
    kept: Int32Array.from(kept),
    cost,
  };
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
  const batches = batchesOf(candidates, choices);
  const flow = foodFlowOf(planting.program, planting.columnOf, batches);
  const answer = await solver.relax(flow.program, () => false);
  if (answer.colValue === null || answer.objective === null) return null;
  const point = new Float64Array(planting.program.colCost.length);
  flow.kept.forEach((column, k) => {
    point[column] = answer.colValue![k]!;
  });
  planting.columnOf.forEach((column, c) => {
    point[column] = batches[c]!;
  });
  return { choices, cost: answer.objective + flow.cost + planting.offset, point };
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
