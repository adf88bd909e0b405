/** Rows that belong together, in figures: what `twelvemonth truth --json` prints. */
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

export interface WorstRow {
  readonly id: string;
  /** Size of the error; null when the row could not be computed or the engine says never. */
  readonly error: number | null;
  readonly tolerance: number;
  readonly unit: string;
  /** Held-out rows keep these two to themselves, so that nobody tunes to them by reading the report. */
  readonly expected?: number;
  readonly got?: number | null;
}

export interface Group {
  readonly name: string;
  readonly n: number;
  readonly unit: string;
  /** Mean size of the error over the rows that gave a number; null when none did. */
  readonly meanError: number | null;
  /** Largest size of a finite error. */
  readonly largestError: number | null;
  /** Rows within their own tolerance, of all n. */
  readonly withinShare: number;
  /** Rows that could not be computed. They count as not within. */
  readonly dropped: number;
  /** Rows not within their tolerance, worst first, at most this many. */
  readonly worst: readonly WorstRow[];
  /** Rows where the engine says never and the source says when. In n, not within, in no mean. */
  readonly never: number;
  readonly heldOut: boolean;
}

const worstCount = 5;

/** Four significant figures: what is left of a number in what is printed, so that it is the same on every machine. */
export const rounded = (value: number): number | null =>
  Number.isFinite(value) ? Number(value.toPrecision(4)) + 0 : null;

const errorOf = (row: TruthRow): number => Math.abs(row.got - row.expected);

/** How many tolerances a row is off; rows without a number come first. */
const badness = (row: TruthRow): number => {
  const error = errorOf(row);
  return Number.isFinite(error) ? error / Math.max(row.tolerance, 1e-9) : Number.POSITIVE_INFINITY;
};

function worstOf(rows: readonly TruthRow[], heldOut: boolean): WorstRow[] {
  return rows
    .filter((row) => !isMet(row))
    .toSorted((a, b) => badness(b) - badness(a) || (truthRowId(a) < truthRowId(b) ? -1 : 1))
    .slice(0, worstCount)
    .map((row) => ({
      id: truthRowId(row),
      error: rounded(errorOf(row)),
      tolerance: row.tolerance,
      unit: row.unit,
      ...(heldOut ? {} : { expected: row.expected, got: rounded(row.got) }),
    }));
}

export const groupNameOf = (row: TruthRow): string => row.group ?? row.quantity;

/** The rows of one split by group, in the order in which groups first appear. */
export function groupsOf(rows: readonly TruthRow[], heldOut: boolean): Group[] {
  const byName = new Map<string, TruthRow[]>();
  for (const row of rows) {
    const name = groupNameOf(row);
    byName.set(name, [...(byName.get(name) ?? []), row]);
  }
  return [...byName].map(([name, those]) => {
    const finite = those.map(errorOf).filter(Number.isFinite);
    const units = new Set(those.map((row) => row.unit));
    return {
      name: heldOut ? `${name}, held out` : name,
      n: those.length,
      unit: units.size === 1 ? those[0]!.unit : 'several',
      meanError: rounded(finite.reduce((a, b) => a + b, 0) / finite.length),
      largestError: finite.length === 0 ? null : rounded(Math.max(...finite)),
      withinShare: rounded(those.filter(isMet).length / those.length)!,
      dropped: those.filter((row) => Number.isNaN(row.got)).length,
      worst: worstOf(those, heldOut),
      never: those.filter((row) => Math.abs(row.got) === Number.POSITIVE_INFINITY).length,
      heldOut,
    };
  });
}
