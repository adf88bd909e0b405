/** What the evaluation keeps: results.json, small.json and the generated blocks of docs/evaluation.md. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { replaceBlock } from '../scripts/marked-blocks.mjs';
import { type CaseFigures, type CaseSettings, smallSettings } from './figures.ts';
import { type SmallFigures, smallFiguresOf } from './small-set.ts';
import { summaryOf } from './summary.ts';
import { pageLines, type Run, smallLines } from './tables.ts';

const root = join(import.meta.dirname, '..');
const page = join(root, 'docs', 'evaluation.md');
export const resultsFile = join(import.meta.dirname, 'results.json');
export const smallFile = join(import.meta.dirname, 'small.json');

export interface SmallFile {
  readonly settings: CaseSettings;
  readonly cases: Readonly<Record<string, SmallFigures>>;
}

function writeWhole(file: string, text: string): void {
  writeFileSync(`${file}.part`, text);
  renameSync(`${file}.part`, file);
}

const decimals = 1e6;
const asText = (value: unknown): string =>
  `${JSON.stringify(value, (_, v) => (typeof v === 'number' ? Math.round(v * decimals) / decimals : v), 2)}\n`;

function readJson<T>(file: string): T | null {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : null;
}

export const readResults = (): Run | null => readJson(resultsFile);
export const readSmall = (): SmallFile | null => readJson(smallFile);

function writeBlock(name: string, lines: readonly string[]): void {
  writeWhole(page, replaceBlock(readFileSync(page, 'utf8'), name, lines.join('\n')));
}

export function writeRun(run: Run): void {
  writeWhole(resultsFile, asText(run));
  writeBlock('evaluation', pageLines(run, summaryOf(run.cases)));
}

export function writeSmall(found: readonly CaseFigures[]): void {
  const cases = Object.fromEntries(found.map((each) => [each.name, smallFiguresOf(each)]));
  writeWhole(smallFile, asText({ settings: smallSettings, cases }));
  writeBlock('evaluation-small', smallLines(smallSettings, cases));
}

export function commitDate(): string {
  return execFileSync('git', ['log', '-1', '--format=%cs'], { cwd: root, encoding: 'utf8' }).trim();
}
