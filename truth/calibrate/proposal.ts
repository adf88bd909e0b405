/** What a fit proposes, for a human to accept: changed table rows with the evidence in their note. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { constantId } from './constant.ts';
import type { Fit, FittedConstant } from './fit-constants.ts';

export const tablesFolder = 'packages/growing/tables';

/** Three significant digits: more would pretend. */
export const roundedValue = (value: number): string => String(Number(value.toPrecision(3)));

export const isChanged = ({ constant, value }: FittedConstant): boolean =>
  roundedValue(value) !== roundedValue(constant.value);

const evidenceNote = (fit: Fit, { evidence }: FittedConstant): string =>
  `calibrated (${fit.problem}) on ${evidence.length} rows; misfit ${fit.misfitBefore.toFixed(2)} to ${fit.misfitAfter.toFixed(2)} sd`;

function withoutOldEvidence(note: string): string {
  return note.replace(/(; )?calibrated \([^)]*\) on \d+ rows; misfit [\d.]+ to [\d.]+ sd/, '').trim();
}

/** The tables' text with the proposed rows in place of the old ones; what did not change keeps every byte. */
export function proposedTables(
  fits: readonly Fit[],
  folder: string = tablesFolder,
): ReadonlyMap<string, string> {
  const changes = new Map(
    fits.flatMap((fit) =>
      fit.fitted.filter(isChanged).map((fitted) => [constantId(fitted.constant), { fit, fitted }] as const),
    ),
  );
  const texts = new Map<string, string>();
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.csv'))) {
    const text = readFileSync(join(folder, file), 'utf8');
    const lines = text.split('\n').map((line) => {
      const cells = Papa.parse<string[]>(line).data[0] ?? [];
      const change = changes.get(`${cells[0]} ${cells[1]}`);
      if (change === undefined) return line;
      const note = [withoutOldEvidence(cells[10] ?? ''), evidenceNote(change.fit, change.fitted)];
      const changed = [...cells.slice(0, 2), roundedValue(change.fitted.value), ...cells.slice(3, 10)];
      return Papa.unparse([[...changed, note.filter((part) => part !== '').join('; ')]]);
    });
    const proposed = lines.join('\n');
    if (proposed !== text) texts.set(join(folder, file), proposed);
  }
  return texts;
}

export function writeProposal(fits: readonly Fit[]): readonly string[] {
  const texts = proposedTables(fits);
  for (const [path, text] of texts) writeFileSync(path, text);
  return [...texts.keys()];
}
