import type { LinearProgram, ProgramGrowth } from '../solver-port.ts';

/** A program written as rows, for small cases that a reader can check by hand. */
export interface WrittenProgram {
  readonly cost: readonly number[];
  readonly upper: readonly number[];
  readonly whole: readonly boolean[];
  readonly rows: readonly { readonly of: readonly number[]; readonly from: number; readonly to: number }[];
}

export function programOf(written: WrittenProgram): LinearProgram {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (let j = 0; j < written.cost.length; j++) {
    written.rows.forEach((row, i) => {
      const value = row.of[j] ?? 0;
      if (value === 0) return;
      indices.push(i);
      values.push(value);
    });
    starts.push(indices.length);
  }
  return {
    colCost: Float64Array.from(written.cost),
    colLower: new Float64Array(written.cost.length),
    colUpper: Float64Array.from(written.upper),
    colWhole: Uint8Array.from(written.whole, (w) => (w ? 1 : 0)),
    rowLower: Float64Array.from(written.rows, (row) => row.from),
    rowUpper: Float64Array.from(written.rows, (row) => row.to),
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}

const anything = Number.POSITIVE_INFINITY;

/** min −3x − 2y, x + y ≤ 4, x + 3y ≤ 6, x ≤ 3: by hand x = 3, y = 1, cost −11, and both x ≤ 3 and the first row bind. */
export const smallLinear = programOf({
  cost: [-3, -2],
  upper: [3, anything],
  whole: [false, false],
  rows: [
    { of: [1, 1], from: -anything, to: 4 },
    { of: [1, 3], from: -anything, to: 6 },
  ],
});

/** Added to it: z at cost −5 in the first row, and a new row z ≤ 2. By hand z = 2, which leaves x + y ≤ 2: x = 2, y = 0, cost −16. */
export const smallGrowth: ProgramGrowth = {
  ...programOf({ cost: [-5], upper: [anything], whole: [false], rows: [] }),
  rowLower: Float64Array.from([-anything]),
  rowUpper: Float64Array.from([2]),
  starts: Int32Array.from([0, 2]),
  indices: Int32Array.from([0, 2]),
  values: Float64Array.from([1, 1]),
};

/** A knapsack of 10 with weights 5, 4, 6, 3 and worth 10, 40, 30, 50: the best is the second and the fourth, worth 90. */
export const smallKnapsack = programOf({
  cost: [-10, -40, -30, -50],
  upper: [1, 1, 1, 1],
  whole: [true, true, true, true],
  rows: [{ of: [5, 4, 6, 3], from: -anything, to: 10 }],
});

/** 2x + 2y = 3 has fractional points only. */
export const wholeInfeasible = programOf({
  cost: [1, 1],
  upper: [5, 5],
  whole: [true, true],
  rows: [{ of: [2, 2], from: 3, to: 3 }],
});

/** x ≥ 2 and x ≤ 1. */
export const linearInfeasible = programOf({
  cost: [1],
  upper: [1],
  whole: [false],
  rows: [{ of: [1], from: 2, to: anything }],
});

const splitRowCount = 7;
const splitColCount = 60;

/**
 * Market split (Cornuéjols & Dawande 1999): share out `splitColCount` lots so that every row is halved exactly, at the
 * price of what is off. Small to write, and far beyond reach of branch and bound: it goes on until told to stop.
 */
export function endlessProgram(): { readonly program: LinearProgram; readonly start: Float64Array } {
  const rows = Array.from({ length: splitRowCount }, (_, i) => {
    const weights = Array.from({ length: splitColCount }, (_, j) => (((i + 3) * (j + 7) * 7919) % 101) - 1);
    const half = Math.floor(weights.reduce((sum, w) => sum + w, 0) / 2);
    const off = Array.from({ length: 2 * splitRowCount }, (_, k) =>
      k === 2 * i ? 1 : k === 2 * i + 1 ? -1 : 0,
    );
    return { of: [...weights, ...off], from: half, to: half };
  });
  const offCount = 2 * splitRowCount;
  const program = programOf({
    cost: [...Array(splitColCount).fill(0), ...Array(offCount).fill(1)],
    upper: [...Array(splitColCount).fill(1), ...Array(offCount).fill(anything)],
    whole: [...Array(splitColCount).fill(true), ...Array(offCount).fill(false)],
    rows,
  });
  const start = new Float64Array(splitColCount + offCount);
  rows.forEach((row, i) => {
    start[splitColCount + 2 * i] = row.to;
  });
  return { program, start };
}
