/** Published figures as they lie in truth/calibration/NAME.csv and truth/held-out/NAME.csv: one a line, the id first. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import sources from './sources.json' with { type: 'json' };
import type { Split } from './split.ts';

/** Cells by column name; an empty cell is ''. */
export interface Figure {
  readonly id: string;
  readonly [column: string]: string;
}

/** Where the figures of a name and split lie. */
export const fileOf = (name: string, split: Split): URL => new URL(`./${split}/${name}.csv`, import.meta.url);

/** Names of all tables of figures. Every one has a file in truth/calibration. */
export const figureNames = (): string[] =>
  readdirSync(new URL('./calibration/', import.meta.url))
    .filter((file) => file.endsWith('.csv'))
    .map((file) => file.slice(0, -4))
    .sort();

/** What the hash is taken of: several rows may stand for one published figure, and are held out together. */
export const figureOf = (figure: Figure): string => figure.figure || figure.id;

/** The figures of one name and split; none where the split has no file of that name. Throws on a ragged line. */
export function readFigures(name: string, split: Split): readonly Figure[] {
  const file = fileOf(name, split);
  if (!existsSync(file)) return [];
  const parsed = Papa.parse<Figure>(readFileSync(file, 'utf8').trimEnd(), { header: true, newline: '\n' });
  const [fault] = parsed.errors;
  if (fault !== undefined)
    throw new Error(`truth/${split}/${name}.csv line ${(fault.row ?? 0) + 2}: ${fault.message}`);
  return parsed.data;
}

/** A cell that must hold a number. */
export function numberIn(figure: Figure, column: string): number {
  const text = figure[column] ?? '';
  const value = Number(text);
  if (text === '' || !Number.isFinite(value))
    throw new Error(`truth figure "${figure.id}": ${column} is "${text}", and a number is wanted`);
  return value;
}

/** The work behind a figure, as it is printed: its line in truth/sources.json. */
export function sourceText(figure: Figure): string {
  const text = (sources as Readonly<Record<string, string>>)[figure.source ?? ''];
  if (text === undefined)
    throw new Error(`truth figure "${figure.id}": source "${figure.source}" is not in truth/sources.json`);
  return text;
}
