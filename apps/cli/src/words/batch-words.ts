import type { BatchRow, BatchSummary } from '../batch/batch-records.ts';
import { amountText, countOf, percentText } from './number-words.ts';

/** What `batch` says. */

export const batchHelp = {
  about: 'plan every garden file of a folder, several at a time, and go on where an earlier run ended',
  dir: 'folder with garden files (*.jsonc, *.json)',
  out: 'folder for the plans, one folder a garden, and summary.json',
  workers: 'gardens planned at the same time (default: one a processor core)',
  example: `
Example:
  $ twelvemonth batch allotments --out plans --workers 2 --effort 10

What is done already with the same options and tables, and newer than its garden file, is passed over.
A file that cannot be planned never stops the rest; then the exit code is 1.
Ctrl-C once: end with what is finished, and the next run goes on from there. Twice: give up at once.`,
} as const;

export const noSuchFolder = (folder: string, problem: string): string =>
  `${folder}: the folder cannot be read: ${problem}. Name a folder that holds garden files.`;
export const noGardens = (folder: string): string =>
  `${folder}: there is no garden file in this folder (*.jsonc, *.json). Name the folder that holds them.`;
export const stoppedSentence = 'Stopped before its plan was made; run the batch again to go on.';
export const stoppingText = 'Stopping: finished plans stay. Ctrl-C again gives up at once.';

const stateWords: Readonly<Record<BatchRow['state'], string>> = {
  planned: 'planned',
  skipped: 'done before',
  failed: 'FAILED',
  stopped: 'stopped',
};

const figure = (value: number | null, text: (value: number) => string): string =>
  value === null ? '–' : text(value);

export const endedText = (row: BatchRow, ended: number, all: number): string =>
  `[${ended}/${all}] ${row.garden}: ${stateWords[row.state]}${
    row.sentence === null
      ? `, ${figure(row.leanWeeks, amountText)} lean weeks, ${row.seconds} s`
      : `. ${row.sentence}`
  }`;

export const underWayText = (ended: number, all: number, seconds: number): string =>
  `${ended} of ${countOf(all, 'garden')} done (${Math.round(seconds)} s)`;

const headings = ['Garden', 'State', 'Lean weeks', 'Missing', 'Gap', 'Seconds'] as const;

export function batchTable(summary: BatchSummary): string {
  const rows = summary.gardens.map((row) => [
    row.garden,
    stateWords[row.state],
    figure(row.leanWeeks, amountText),
    figure(row.servingsMissing, amountText),
    figure(row.gapShare, percentText),
    String(row.seconds),
  ]);
  const widths = headings.map((heading, i) => Math.max(heading.length, ...rows.map((row) => row[i]!.length)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => (i < 2 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!)))
      .join('  ')
      .trimEnd();
  const sentences = summary.gardens.flatMap((row) =>
    row.sentence === null ? [] : [`${row.garden}: ${row.sentence}`],
  );
  const { planned, skipped, failed, stopped } = summary;
  const counts = [
    `${planned} planned`,
    `${skipped} done before`,
    `${failed} failed`,
    ...(stopped > 0 ? [`${stopped} stopped`] : []),
  ];
  return [
    line(headings),
    ...rows.map(line),
    '',
    ...sentences,
    ...(sentences.length > 0 ? [''] : []),
    `${counts.join(', ')}; ${countOf(summary.workers, 'worker')}, ${summary.seconds} s. Lean weeks and servings missing: one year, in weather the plans had not seen.`,
    '',
  ].join('\n');
}
