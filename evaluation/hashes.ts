/** What a table was made with: SHA-256 over the names and bytes of the files that decide the figures. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

export interface MadeWith {
  /** packages/growing/tables. */
  readonly tables: string;
  /** Sources of packages and of the solver's adapter, with the locked versions of what they use. */
  readonly code: string;
  /** The gardens. */
  readonly cases: string;
  /** The programs of this folder that measure. */
  readonly measures: string;
}

const root = join(import.meta.dirname, '..');

/** Programs that decide figures; how they are shown is not among them. */
const measureFiles = ['cases.ts', 'compared-weeks.ts', 'figures.ts', 'measure-case.ts', 'summary.ts'];

function filesIn(folder: string, fits: (name: string) => boolean): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => fits(name) && !/(^|[/\\])(node_modules|dist)[/\\]/.test(name))
    .map((name) => join(root, folder, name));
}

/** Order and line ends are those of no machine in particular. */
export function hashOf(files: readonly string[]): string {
  const hash = createHash('sha256');
  const named = files.map((file) => ({ name: relative(root, file).split(sep).join('/'), file }));
  for (const { name, file } of named.sort((a, b) => (a.name < b.name ? -1 : 1)))
    hash.update(`${name}\n${readFileSync(file, 'utf8').replaceAll('\r\n', '\n')}\n`);
  return hash.digest('hex');
}

const isSource = (name: string): boolean =>
  /\.(ts|mjs)$/.test(name) && !/\.test\.ts$/.test(name) && !/(^|[/\\])(fixture|generated)[/\\]/.test(name);

export function madeWithNow(): MadeWith {
  return {
    tables: hashOf(filesIn('packages/growing/tables', (name) => /\.(csv|json)$/.test(name))),
    code: hashOf([
      ...filesIn('packages', isSource),
      ...filesIn('adapters/solver-highs', isSource),
      join(root, 'package-lock.json'),
    ]),
    cases: hashOf(filesIn('evaluation/cases', (name) => name.endsWith('.jsonc'))),
    measures: hashOf(measureFiles.map((name) => join(root, 'evaluation', name))),
  };
}

export function changedSince(then: MadeWith, now: MadeWith): (keyof MadeWith)[] {
  return (Object.keys(now) as (keyof MadeWith)[]).filter((part) => then[part] !== now[part]);
}
