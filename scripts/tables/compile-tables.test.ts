import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const header = 'subject,parameter,value,low,high,unit,source,locator,basis,valid_for,note';
const folder = mkdtempSync(join(tmpdir(), 'tables-'));
const into = join(folder, 'catalogue.ts');

function compile(...more: string[]) {
  const args = ['scripts/compile-tables.mjs', '--tables', folder, '--into', into, ...more];
  const run = spawnSync('node', args, { encoding: 'utf8' });
  return { code: run.status, said: run.stdout + run.stderr };
}

const writeTable = (file: string, rows: readonly string[]): void =>
  writeFileSync(join(folder, file), `${[header, ...rows].join('\n')}\n`);

const wholeKind = [
  'kind:cress,crop,cress,,,text,,,practice,,',
  'kind:cress,family,Brassicaceae,,,text,,,practice,,',
  'kind:cress,name,cress,,,text,,,practice,,',
  'kind:cress,routes,tray,,,text,,,practice,,',
  'kind:cress,grows-in,sill,,,text,,,practice,,',
  'kind:cress,in-row-cm,1,,,cm,book,page 3,handbook,,',
  'kind:cress,between-row-cm,1,,,cm,book,page 3,handbook,,',
  'kind:cress,seeds-per-g,450,,,count-per-g,,,memory,,',
  'kind:cress,packet-seeds-count,2000,,,count,,,practice,,',
  'kind:cress,emergence-base-c,1,,,c,,,memory,,',
  'kind:cress,emergence-sum-c-days,40,,,c-days,,,memory,,',
  'kind:cress,emergence-optimum-c,22,,,c,,,memory,,',
  'kind:cress,emergence-ceiling-c,35,,,c,,,memory,,',
  'kind:cress,emergence-lowest-c,3,,,c,,,memory,,',
  'kind:cress,germination-share,0.9,,,share,,,memory,,',
  'kind:cress,seed-life-years,4,,,years,,,memory,,',
  'kind:cress,growth-base-c,0,,,c,,,memory,,',
  'kind:cress,growth-optimum-c,20,,,c,,,memory,,',
  'kind:cress,frost-soft-c,-2,,,c,,,memory,,',
  'kind:cress,frost-hardened-c,-4,,,c,,,memory,,',
  'kind:cress,rooting,shallow,,,text,,,practice,,',
  'kind:cress,harvests,leaves,,,text,,,practice,,',
  'kind:cress,harvest.leaves.role,salad-leaves,,,text,,,practice,,',
  'kind:cress,harvest.leaves.habit,once,,,text,,,practice,,',
  'kind:cress,harvest.leaves.start-days,10,,,days,,,memory,,',
  'kind:cress,harvest.leaves.window-days,7,,,days,,,memory,,',
  'kind:cress,harvest.leaves.full-days,12,,,days,,,memory,,',
  'kind:cress,harvest.leaves.yield-g-per-plant,0.5,0.3,0.8,g,,,memory,,',
  'kind:cress,harvest.leaves.edible-share,0.9,,,share,,,memory,,',
  'kind:cress,harvest.leaves.eat-within-weeks,1,,,weeks,,,memory,,',
  'kind:cress,harvest.leaves.ends-plant,yes,,,text,,,practice,,',
  'kind:cress,harvest.leaves.store.fridge.life-weeks,1,,,weeks,,,memory,,',
  'kind:cress,harvest.leaves.store.fridge.loss-per-week-share,0.2,,,share,,,memory,,',
];

beforeAll(() => {
  for (const file of ['defaults.csv', 'parameters.json'])
    copyFileSync(join('packages/growing/tables', file), join(folder, file));
  const defaults = readFileSync('packages/growing/tables/defaults.csv', 'utf8').trim().split('\n').slice(1);
  const named = defaults.map((line) => line.split(',')[6]!).filter((id) => id !== '');
  const sources = Object.fromEntries(
    ['book', ...named].map((id) => [id, { title: `${id}, a book`, year: 1950 }]),
  );
  writeFileSync(join(folder, 'sources.json'), JSON.stringify(sources));
});
afterAll(() => rmSync(folder, { recursive: true }));

test('a whole kind is compiled, and a file that is not of the tables fails the check', () => {
  writeTable('kinds-leaves.csv', wholeKind);
  const first = compile();
  expect(first.said).toContain('1 kinds whole, 0 problems');
  expect(first.code).toBe(0);
  expect(compile('--check').code).toBe(0);
  writeFileSync(into, readFileSync(into, 'utf8').replace('0.5', '0.6'));
  const stale = compile('--check');
  expect(stale.code).toBe(1);
  expect(stale.said).toContain('is not that of the tables');
});

const slips: readonly [row: string, complaint: string][] = [
  ['crop:cress,raising-dais,5,,,days,,,memory,,', 'did you mean "raising-days"'],
  ['crop:cress,raising-days,9,,,weeks,,,memory,,', 'raising-days is in days'],
  ['crop:cress,planting-check-days,95,,,days,,,memory,,', 'outside the plausible 0 to 30'],
  ['crop:cress,pot-room-days,10,12,20,days,,,memory,,', 'low 12 is above the value 10'],
  ['crop:cress,field-share,0.8,0.5,0.7,share,,,memory,,', 'is above high 0.7'],
  ['crop:cress,light-factor,0.9,,,factor,bok,,handbook,,', 'did you mean "book"'],
  ['crop:cress,reference-c,15,,,c,,,,,', 'no basis'],
  ['crop:cress,pace-spread-share,0.2,,,share,,,measured,,', 'measured without a source'],
  ['crop:cress,raising-loss-share,0.1,,,share,,,judged,,why', 'judged without a range'],
  ['crop:cress,growing-loss-share,0.1,0,0.2,share,,,judged,,', 'judged without a note'],
  ['kind:cress,in-row-cm,2,,,cm,,,memory,,', 'a second time'],
  ['crop:cress,harvest.leaves.store.attic.life-weeks,2,,,weeks,,,memory,,', '"attic" is no store'],
  ['crop:cress,harvest.roots.habit,heaps,,,text,,,memory,,', '"heaps" is not known here'],
  ['crop:cress,station-seeds-count,many,,,count,,,memory,,', '"many" is not a number'],
  ['shed:cress,pot-room-days,2,,,days,,,memory,,', '"shed:cress" is no subject'],
  ['crop:cress,smallest-batch-m2,0.2,,m2,,,memory,,', '10 fields where 11 belong'],
  ['hazard:rust,crops,cress|woad,,,text,,,memory,,', 'hits unknown crop "woad"'],
  ['calendar:woad/tray/sill,sow-from,1,,,day-of-year,,,memory,,', 'no kind "woad"'],
];

test('every slip is named with its file, its line and how to mend it', () => {
  writeTable('kinds-leaves.csv', [...wholeKind, ...slips.map(([row]) => row)]);
  const { code, said } = compile();
  expect(code).toBe(1);
  for (const [i, [row, complaint]] of slips.entries()) {
    const line = wholeKind.length + 2 + i;
    const about = said.split('\n').filter((text) => text.includes(`kinds-leaves.csv:${line}: `));
    expect(about.join('\n'), row).toContain(complaint);
    expect(about.join('\n'), row).toContain('Mend: ');
  }
  expect(said).toContain('there are rows of harvest "roots"');
  expect(said).toContain('not compiled: cress');
});

test('a kind that lacks a parameter is left out and the lack is named', () => {
  writeTable(
    'kinds-leaves.csv',
    wholeKind.filter((row) => !/full-days|growth-base-c/.test(row)),
  );
  const { code, said } = compile();
  expect(code).toBe(1);
  expect(said).toContain('kind:cress: "growth-base-c" is missing');
  expect(said).toContain('it is needed because harvest.leaves.habit is once');
  expect(said).toContain('not compiled: cress');
});

test('one source id with two contents is refused, an unused source is only a warning', () => {
  writeTable('kinds-leaves.csv', wholeKind);
  const other = join(folder, 'sources-leaves.json');
  writeFileSync(other, JSON.stringify({ book: { title: 'Another book' } }));
  expect(compile().said).toContain('source "book" says something else than in sources');
  writeFileSync(other, JSON.stringify({ leaflet: { title: 'A leaflet' } }));
  const { code, said } = compile();
  expect(said).toContain('no row names source "leaflet"');
  expect(code).toBe(0);
});
