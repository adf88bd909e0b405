/** Collects columns, rows and coefficients, then lays them out in column order for the solver. */
import { invariant } from '@twelvemonth/basis';
import type { LinearProgram, ProgramGrowth } from '../solver-port.ts';

export interface ProgramBuilder {
  column(cost: number, lower: number, upper: number, whole: boolean): number;
  row(lower: number, upper: number): number;
  /** Adds to the coefficient of a column in a row. */
  add(row: number, column: number, value: number): void;
  readonly columnCount: number;
  readonly rowCount: number;
  build(): LinearProgram;
  /** Columns and rows since the last call; coefficients may have been added to new columns only. */
  growth(): ProgramGrowth;
}

/** Coefficients are rounded before the solver sees them, so that the last bits of a machine cannot choose the plan. */
const grain = 1024;
export const roundedCoefficient = (value: number): number => Math.round(value * grain) / grain;

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
  let told = { columns: 0, rows: 0, entries: 0 };

  const layOut = (from: typeof told): ProgramGrowth => {
    const entries = inColumnOrder(entryRow, entryColumn, entryValue, from.columns, cost.length, from.entries);
    return {
      colCost: Float64Array.from(cost.slice(from.columns)),
      colLower: Float64Array.from(lower.slice(from.columns)),
      colUpper: Float64Array.from(upper.slice(from.columns)),
      colWhole: Uint8Array.from(whole.slice(from.columns)),
      rowLower: Float64Array.from(rowLower.slice(from.rows)),
      rowUpper: Float64Array.from(rowUpper.slice(from.rows)),
      ...entries,
    };
  };
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
    get rowCount() {
      return rowLower.length;
    },
    build: () => layOut({ columns: 0, rows: 0, entries: 0 }),
    growth: () => {
      const grown = layOut(told);
      told = { columns: cost.length, rows: rowLower.length, entries: entryRow.length };
      return grown;
    },
  };
}

function inColumnOrder(
  entryRow: readonly number[],
  entryColumn: readonly number[],
  entryValue: readonly number[],
  fromColumn: number,
  toColumn: number,
  fromEntry: number,
): Pick<LinearProgram, 'starts' | 'indices' | 'values'> {
  const columns = toColumn - fromColumn;
  const next = new Int32Array(columns + 1);
  for (let e = fromEntry; e < entryColumn.length; e++) {
    const column = entryColumn[e]! - fromColumn;
    invariant(column >= 0, 'a coefficient belongs to a new column', { column: entryColumn[e]! });
    next[column + 1]!++;
  }
  for (let c = 0; c < columns; c++) next[c + 1]! += next[c]!;
  const bounds = next.slice();
  const order = new Int32Array(entryColumn.length - fromEntry);
  for (let e = fromEntry; e < entryColumn.length; e++) order[next[entryColumn[e]! - fromColumn]!++] = e;
  const starts = new Int32Array(columns + 1);
  const indices = new Int32Array(order.length);
  const values = new Float64Array(order.length);
  let filled = 0;
  const sum = new Map<number, number>();
  for (let c = 0; c < columns; c++) {
    starts[c] = filled;
    sum.clear();
    for (let i = bounds[c]!; i < bounds[c + 1]!; i++) {
      const e = order[i]!;
      sum.set(entryRow[e]!, (sum.get(entryRow[e]!) ?? 0) + entryValue[e]!);
    }
    for (const [row, value] of sum) {
      const v = roundedCoefficient(value);
      if (v === 0) continue;
      indices[filled] = row;
      values[filled++] = v;
    }
  }
  starts[columns] = filled;
  return { starts, indices: indices.slice(0, filled), values: values.slice(0, filled) };
}
