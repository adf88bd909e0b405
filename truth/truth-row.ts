/** One comparison of the engine with the outside world. `expected` comes from `source`, never from the engine. */
export interface TruthRow {
  readonly quantity: string;
  readonly case: string;
  readonly expected: number;
  readonly got: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly source: string;
}

/** A row of one quantity and source, with the parts that repeat filled in once. */
export const truthRows =
  (quantity: string, unit: string, source: string) =>
  (name: string, expected: number, got: number, tolerance: number): TruthRow => ({
    quantity,
    case: name,
    expected,
    got,
    tolerance,
    unit,
    source,
  });
