/** One comparison of the engine with the outside world. `expected` comes from `source`, never from the engine. */
import { type Split, splitOf } from './split.ts';

export interface TruthRow {
  readonly quantity: string;
  readonly case: string;
  readonly expected: number;
  /** NaN: could not be computed (dropped). Infinite: the engine says never. */
  readonly got: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly source: string;
  /** What the engine said in full, for people: dates behind a difference in days. */
  readonly note?: string;
  /** The rows that are reported together, where that is not the quantity. */
  readonly group?: string;
  /** Id of the published figure, where several rows compare with the same one: they are held out together. */
  readonly figure?: string;
}

/** A row of one quantity and source, with the parts that repeat filled in once. */
export const truthRows =
  (quantity: string, unit: string, source: string) =>
  (name: string, expected: number, got: number, tolerance: number, note?: string): TruthRow => ({
    quantity,
    case: name,
    expected,
    got,
    tolerance,
    unit,
    source,
    ...(note === undefined ? {} : { note }),
  });

/** How a row is named in known-gaps.txt. It depends on quantity and case, never on what the engine says. */
export const truthRowId = (row: Pick<TruthRow, 'quantity' | 'case'>): string =>
  `${row.quantity}: ${row.case}`;

/** A fit may see the row, or the report alone. */
export const splitOfRow = (row: TruthRow): Split => splitOf(row.figure ?? truthRowId(row));

/** Room for the last bit of a sum. */
const lastBit = 1e-9;

/** A row that could not be computed (not a number) and one that never comes count as failed. */
export const isMet = (row: TruthRow): boolean => Math.abs(row.got - row.expected) <= row.tolerance + lastBit;
