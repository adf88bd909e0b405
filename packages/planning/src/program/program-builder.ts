/** Collects columns, rows and coefficients, then lays them out in column order for the solver. */
import { invariant } from '@twelvemonth/basis';
import type { LinearProgram } from '../solver-port.ts';

export interface ProgramBuilder {
  column(cost: number, lower: number, upper: number, whole: boolean): number;
  row(lower: number, upper: number): number;
  /** Adds to the coefficient of a column in a row. */
  add(row: number, column: number, value: number): void;
  readonly columnCount: number;
  build(): LinearProgram;
}

/** Coefficients are rounded before the solver sees them, so that the last bits of a machine cannot choose the plan. */
const grain = 1024;
const rounded = (value: number): number => Math.round(value * grain) / grain;

export function programBuilder(): ProgramBuilder {
  const cost: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const whole: number[] = [];
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  const entryRow: number[] = [];
  const entryColumn: number[] = [];
  const entryValue: number[] = [];

  return {
    column: (c, low, high, isWhole) => {
      cost.push(c);
      lower.push(low);
      upper.push(high);
      whole.push(isWhole ? 1 : 0);
      return cost.length - 1;
    },
    row: (low, high) => {
      rowLower.push(low);
      rowUpper.push(high);
      return rowLower.length - 1;
    },
    add: (row, column, value) => {
      if (value === 0) return;
      entryRow.push(row);
      entryColumn.push(column);
      entryValue.push(value);
    },
    get columnCount() {
      return cost.length;
    },
    build: () => layOut(cost, lower, upper, whole, rowLower, rowUpper, entryRow, entryColumn, entryValue),
  };
}

function layOut(
  cost: number[],
  lower: number[],
  upper: number[],
  whole: number[],
  rowLower: number[],
  rowUpper: number[],
  entryRow: number[],
  entryColumn: number[],
  entryValue: number[],
): LinearProgram {
  const columns = cost.length;
  const order = new Int32Array(entryRow.length);
  const counts = new Int32Array(columns + 1);
  for (const column of entryColumn) counts[column + 1]!++;
  for (let c = 0; c < columns; c++) counts[c + 1]! += counts[c]!;
  const next = counts.slice();
  for (let e = 0; e < entryColumn.length; e++) order[next[entryColumn[e]!]!++] = e;
  const starts = new Int32Array(columns + 1);
  const indices: number[] = [];
  const values: number[] = [];
  const sum = new Map<number, number>();
  for (let c = 0; c < columns; c++) {
    starts[c] = indices.length;
    sum.clear();
    for (let i = counts[c]!; i < counts[c + 1]!; i++) {
      const e = order[i]!;
      sum.set(entryRow[e]!, (sum.get(entryRow[e]!) ?? 0) + entryValue[e]!);
    }
    for (const [row, value] of sum) {
      const v = rounded(value);
      if (v === 0) continue;
      indices.push(row);
      values.push(v);
    }
  }
  starts[columns] = indices.length;
  invariant(indices.length === values.length, 'one value an index');
  return {
    colCost: Float64Array.from(cost),
    colLower: Float64Array.from(lower),
    colUpper: Float64Array.from(upper),
    colWhole: Uint8Array.from(whole),
    rowLower: Float64Array.from(rowLower),
    rowUpper: Float64Array.from(rowUpper),
    starts,
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}
