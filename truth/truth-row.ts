/** One comparison of the engine with the outside world. `expected` comes from `source`, never from the engine. */
export interface TruthRow {
  readonly quantity: string;
  readonly case: string;
  readonly expected: number;
  readonly got: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly source: string;
  /** What the engine said in full, for people: dates behind a difference in days. */
  readonly note?: string;
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

/** How a row is named in known-gaps.txt. */
export const truthRowId = (row: TruthRow): string => `${row.quantity}: ${row.case}`;

/** A row that could not be computed (not a number, never) counts as failed. */
export const isMet = (row: TruthRow): boolean => Math.abs(row.got - row.expected) <= row.tolerance;
