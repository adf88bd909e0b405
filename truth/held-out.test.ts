import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');
const folders = ['packages', 'adapters', 'apps', 'bench', 'golden', 'scripts', 'truth'];
/** Who may name the rows that are held out: the report, what sorts them, and the compiler of the rivals' calendar. */
const allowed = new Set([
  'scripts/tables/read-tables.mjs',
  'truth/facts.ts',
  'truth/figures.ts',
  'truth/held-out.test.ts',
  'truth/known-gaps.test.ts',
  'truth/report.ts',
  'truth/split-calendar.ts',
  'truth/split-figures.ts',
  'truth/split.ts',
  'truth/trade/harvest-middle.ts',
]);

it('held-out rows are named by the report and what sorts them, and by no fit', () => {
  const code = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|mjs)$/.test(file) && !file.includes('node_modules') && !file.includes('dist/'))
      .map((file) => `${folder}/${file}`),
  );
  expect(code.length).toBeGreaterThan(300);
  const naming = code.filter((file) => /['"/]held-out['"/]/.test(readFileSync(join(root, file), 'utf8')));
  expect(naming).toContain('truth/report.ts');
  expect(naming.filter((file) => !allowed.has(file))).toEqual([]);
});
