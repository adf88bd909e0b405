/** Rows of one quantity in figures, and the tables that people read. */
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

export interface QuantitySummary {
  readonly quantity: string;
  readonly unit: string;
  readonly count: number;
  /** Mean size of the error over the rows that gave a number. */
  readonly meanError: number;
  /** Infinite when a row gave none. */
  readonly largestError: number;
  readonly smallestTolerance: number;
  readonly largestTolerance: number;
  readonly metCount: number;
}

export function summarise(rows: readonly TruthRow[]): QuantitySummary[] {
  const byQuantity = new Map<string, TruthRow[]>();
  for (const row of rows) {
    const those = byQuantity.get(row.quantity);
    if (those === undefined) byQuantity.set(row.quantity, [row]);
    else those.push(row);
  }
  return [...byQuantity].map(([quantity, those]) => {
    const errors = those.map((row) => Math.abs(row.got - row.expected));
    const finite = errors.filter(Number.isFinite);
    const tolerances = those.map((row) => row.tolerance);
    return {
      quantity,
      unit: those.every((row) => row.unit === those[0]!.unit) ? those[0]!.unit : 'several',
      count: those.length,
      meanError: finite.length === 0 ? Number.NaN : finite.reduce((a, b) => a + b, 0) / finite.length,
      largestError: finite.length < errors.length ? Number.POSITIVE_INFINITY : Math.max(...errors),
      smallestTolerance: Math.min(...tolerances),
      largestTolerance: Math.max(...tolerances),
      metCount: those.filter(isMet).length,
    };
  });
}

/** Three significant figures, plainly written. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return 'none';
  if (value === 0 || Math.abs(value) < 1e-9) return '0';
  const size = Math.abs(value);
  return size >= 100
    ? value.toFixed(0)
    : size < 1e-4
      ? value.toExponential(0)
      : String(Number(value.toPrecision(3)));
}

const markdownRow = (cells: readonly string[]): string =>
  `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;

export const markdownTable = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [markdownRow(head), markdownRow(head.map(() => '---')), ...rows.map(markdownRow)].join('\n');

export function summaryTable(rows: readonly TruthRow[]): string {
  return markdownTable(
    ['quantity', 'unit', 'rows', 'mean error', 'largest error', 'tolerance', 'met', 'not met'],
    summarise(rows).map((s) => [
      s.quantity,
      s.unit,
      String(s.count),
      figure(s.meanError),
      figure(s.largestError),
      s.smallestTolerance === s.largestTolerance
        ? figure(s.largestTolerance)
        : `${figure(s.smallestTolerance)} – ${figure(s.largestTolerance)}`,
      String(s.metCount),
      String(s.count - s.metCount),
    ]),
  );
}

/** Each row in full. */
export const rowsTable = (rows: readonly TruthRow[]): string =>
  markdownTable(
    ['case', 'expected', 'got', 'tolerance', 'unit', 'met', 'engine'],
    rows.map((row) => [
      row.case,
      figure(row.expected),
      figure(row.got),
      figure(row.tolerance),
      row.unit,
      isMet(row) ? 'yes' : 'no',
      row.note ?? '',
    ]),
  );

/** How many rows each quantity must have: a dropped sample is a failure, an added one has to be counted in. */
export function countProblems(
  rows: readonly TruthRow[],
  expected: Readonly<Record<string, number>>,
  file: string,
): string[] {
  const counts = new Map(summarise(rows).map((s) => [s.quantity, s.count]));
  const ids = rows.map(truthRowId);
  return [
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `${id}: two rows of that name`),
    ...[...new Set([...counts.keys(), ...Object.keys(expected)])].flatMap((quantity) => {
      const [got, due] = [counts.get(quantity) ?? 0, expected[quantity] ?? 0];
      if (got < due) return [`${quantity}: ${got} rows, ${due} expected: ${due - got} dropped`];
      return got > due ? [`${quantity}: ${got} rows, ${file} says ${due}: count the new ones in`] : [];
    }),
  ];
}
