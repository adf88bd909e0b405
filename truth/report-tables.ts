/** The tables that people read. */
import type { Group } from './groups.ts';
import type { Target } from './targets.ts';
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

/** Three significant figures, plainly written. */
export function figure(value: number | null): string {
  if (value === null || !Number.isFinite(value)) return 'none';
  const size = Math.abs(value);
  if (size < 1e-6) return '0';
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

const percent = (share: number): string => `${Math.floor(100 * share)} %`;

const cellsOf = (group: Group | undefined): string[] =>
  group === undefined
    ? ['0', '', '', '', '']
    : [
        String(group.n),
        figure(group.meanError),
        figure(group.largestError) + (group.never > 0 ? `, ${group.never} never` : ''),
        percent(group.withinShare),
        String(group.dropped),
      ];

/** A line a group: the rows that a fit may see, and beside them those that are held out. */
export function groupsTable(seen: readonly Group[], heldOut: readonly Group[]): string {
  const blind = new Map(heldOut.map((group) => [group.name.replace(/, held out$/, ''), group]));
  const names = [...new Set([...seen.map((group) => group.name), ...blind.keys()])];
  const figures = ['rows', 'mean error', 'largest', 'within', 'dropped'];
  return markdownTable(
    ['group', 'unit', ...figures, ...figures.map((head) => `held out: ${head}`)],
    names.map((name) => {
      const [open, closed] = [seen.find((group) => group.name === name), blind.get(name)];
      return [name, (open ?? closed)!.unit, ...cellsOf(open), ...cellsOf(closed)];
    }),
  );
}

/** What was asked of the engine, and what it reaches. */
export const targetsTable = (targets: readonly Target[]): string =>
  markdownTable(
    ['what', 'rows', 'asked', 'reached', 'met'],
    targets.map((t) => [t.what, String(t.count), t.asked, t.got, t.reached ? 'yes' : 'no']),
  );

/** Each row in full. */
export const rowsTable = (rows: readonly TruthRow[]): string =>
  markdownTable(
    ['row', 'expected', 'got', 'tolerance', 'unit', 'met', 'engine'],
    rows.map((row) => [
      truthRowId(row),
      figure(row.expected),
      figure(row.got),
      figure(row.tolerance),
      row.unit,
      isMet(row) ? 'yes' : 'no',
      row.note ?? '',
    ]),
  );

/** Held-out rows with the size of their error and nothing that they could be tuned by. */
export const blindTable = (rows: readonly TruthRow[]): string =>
  markdownTable(
    ['row', 'size of the error', 'tolerance', 'unit'],
    rows.map((row) => [
      truthRowId(row),
      figure(Math.abs(row.got - row.expected)),
      figure(row.tolerance),
      row.unit,
    ]),
  );
