/** The program's own price of a plan with whole batches: batches fixed, food flow solved to the best. */
import type { Candidate, Choice } from '../problem.ts';
import { type PlantingProgram, type ProgramParts, plantingProgram } from '../program/build-program.ts';
import { slicePrice, slices } from '../program/price.ts';
import type { LinearProgram, SolverPort } from '../solver-port.ts';

export interface PricedPlan {
  readonly choices: readonly Choice[];
  readonly cost: number;
  /** What is missing, priced, by scenario and role. */
  readonly roleCost: readonly Float64Array[];
}

/**
 * The program with some batches given: their columns are taken out and what they use and bring goes into the bounds of
 * the rows.
 */
export function withGiven(
  program: LinearProgram,
  given: ReadonlyMap<number, number>,
): { readonly program: LinearProgram; readonly kept: Int32Array; readonly cost: number } {
  const rowLower = program.rowLower.slice();
  const rowUpper = program.rowUpper.slice();
  const kept: number[] = [];
  const starts: number[] = [];
  const indices: number[] = [];
  const values: number[] = [];
  let cost = 0;
  for (let column = 0; column < program.colCost.length; column++) {
    const amount = given.get(column);
    if (amount === undefined) {
      kept.push(column);
      starts.push(indices.length);
    } else cost += amount * program.colCost[column]!;
    if (amount === 0) continue;
    for (let e = program.starts[column]!; e < program.starts[column + 1]!; e++) {
      const row = program.indices[e]!;
      if (amount === undefined) {
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
      colWhole: Uint8Array.from(kept, (column) => program.colWhole[column]!),
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

/** Batches by index among the candidates, those taken only. */
export function batchesOf(parts: ProgramParts, choices: readonly Choice[]): Map<number, number> {
  const batches = new Map<number, number>();
  for (const { candidate, batches: n } of choices) {
    const c = parts.indexOf.get(candidate);
    if (c !== undefined && n > 0) batches.set(c, (batches.get(c) ?? 0) + n);
  }
  return batches;
}

export function choicesWith(
  candidates: readonly Candidate[],
  batches: ReadonlyMap<number, number>,
): Choice[] {
  return [...batches]
    .filter(([, n]) => n > 0)
    .sort((a, b) => a[0] - b[0])
    .map(([c, n]) => ({ candidate: candidates[c]!, batches: n }));
}

/** What is missing at a point, priced, by scenario and role. */
export function roleCostOf(
  { problem, scenarios }: ProgramParts,
  { flows }: PlantingProgram,
  point: Float64Array,
): Float64Array[] {
  const { roles, garden } = problem.appetite;
  return scenarios.map((_, s) =>
    Float64Array.from(roles, (_role, r) => {
      let cost = 0;
      flows[s]!.sliceColumn[r]!.forEach((column, w) => {
        if (column < 0) return;
        slices.forEach((slice, i) => {
          cost +=
            slicePrice(problem, r, w, slice.price) * (slice.share * garden[r]![w]! - point[column + i]!);
        });
      });
      return cost;
    }),
  );
}

/** The rest of a point when its batches are given: the program with them, and the cheapest food flow; null: none fits. */
export async function pointWith(
  solver: SolverPort,
  planting: PlantingProgram,
  batches: ReadonlyMap<number, number>,
): Promise<{ readonly point: Float64Array; readonly cost: number } | null> {
  const program = planting.builder.build();
  const given = new Map<number, number>();
  planting.columnOf.forEach((column, c) => {
    if (column >= 0) given.set(column, batches.get(c) ?? 0);
  });
  const flow = withGiven(program, given);
  const answer = await solver.relax(flow.program, () => false);
  if (answer.colValue === null || answer.objective === null) return null;
  const point = new Float64Array(program.colCost.length);
  flow.kept.forEach((column, k) => {
    point[column] = answer.colValue![k]!;
  });
  for (const [column, n] of given) point[column] = n;
  return { point, cost: answer.objective + flow.cost + planting.offset };
}

export async function pricePlan(
  solver: SolverPort,
  parts: ProgramParts,
  choices: readonly Choice[],
): Promise<PricedPlan | null> {
  const batches = batchesOf(parts, choices);
  const planting = plantingProgram(parts, batches.keys());
  const found = await pointWith(solver, planting, batches);
  if (found === null) return null;
  return { choices, cost: found.cost, roleCost: roleCostOf(parts, planting, found.point) };
}
