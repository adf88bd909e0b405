import type { LinearProgram, SolverPort } from '@twelvemonth/planning';

const roundUpFrom = 0.3;

/**
 * A quick feasible point for the planting-like program: the relaxation rounded down, then up again in order of the
 * fraction lost wherever ground and hours allow, then the continuous columns solved for these batches.
 */
export async function roundedStart(solver: SolverPort, program: LinearProgram): Promise<Float64Array> {
  const relaxed =
    (await solver.relax(program, () => false)).colValue ?? new Float64Array(program.colCost.length);
  const batches = Float64Array.from(relaxed, (v, j) =>
    program.colWhole[j] === 1 ? Math.floor(v + 1e-7) : 0,
  );
  const used = new Float64Array(program.rowLower.length);
  const change = (j: number, by: number): void => {
    batches[j]! += by;
    for (let k = program.starts[j]!; k < program.starts[j + 1]!; k++)
      used[program.indices[k]!]! += program.values[k]! * by;
  };
  const fits = (j: number): boolean => {
    for (let k = program.starts[j]!; k < program.starts[j + 1]!; k++) {
      const upper = program.rowUpper[program.indices[k]!]!;
      if (upper > 0 && upper < used[program.indices[k]!]!) return false;
    }
    return batches[j]! <= program.colUpper[j]!;
  };
  const whole = [...program.colWhole.keys()].filter((j) => program.colWhole[j] === 1);
  for (const j of whole) {
    const batchCount = batches[j]!;
    batches[j] = 0;
    change(j, batchCount);
  }
  const lost = (j: number): number => relaxed[j]! - Math.floor(relaxed[j]! + 1e-7);
  for (const j of whole.filter((j) => lost(j) >= roundUpFrom).sort((a, b) => lost(b) - lost(a))) {
    change(j, 1);
    if (!fits(j)) change(j, -1);
  }
  for (const j of whole.filter((j) => isSwitch(program, j))) {
    if (batches[j + 1]! < 2) batches[j + 1] = 0;
    batches[j] = batches[j + 1]! > 0 ? 1 : 0;
  }
  return completed(solver, program, batches);
}

/** On or off, for the candidate in the next column. */
const isSwitch = (program: LinearProgram, j: number): boolean =>
  program.colUpper[j] === 1 && program.starts[j + 1]! - program.starts[j]! === 2;

async function completed(
  solver: SolverPort,
  program: LinearProgram,
  batches: Float64Array,
): Promise<Float64Array> {
  const fixed = (bound: Float64Array) => bound.map((v, j) => (program.colWhole[j] === 1 ? batches[j]! : v));
  const { colValue } = await solver.relax(
    {
      ...program,
      colLower: fixed(program.colLower),
      colUpper: fixed(program.colUpper),
    },
    () => false,
  );
  if (colValue === null) throw new Error('the rounded batches do not fit');
  return colValue;
}
