import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { tablesVersion } from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { finishedRow, gardenFilesIn, sweepParts, writeStamp, writeWholeFolder } from './batch-folder.ts';
import type { BatchOptions, BatchRow } from './batch-records.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'twelvemonth-batch-'));
const options: BatchOptions = {
  weeks: 30,
  memberCount: 6,
  effort: 0,
  timeLimitSeconds: null,
  seed: 1,
  fromDay: null,
};

test('gardens are the garden files of the folder itself, each with a folder of its own', () => {
  const place = folder();
  for (const name of [
    'b.jsonc',
    'a.json',
    'a.jsonc',
    'plan.json',
    'summary.json',
    'notes.txt',
    '.hidden.json',
  ])
    writeFileSync(join(place, name), '{}');
  mkdirSync(join(place, 'old.json'));
  expect(gardenFilesIn(place).map((g) => [g.name, g.folderName])).toEqual([
    ['a.json', 'a.json'],
    ['a.jsonc', 'a.jsonc'],
    ['b.jsonc', 'b'],
  ]);
  expect(() => gardenFilesIn(join(place, 'none'))).toThrow(
    /none: the folder cannot be read: it is not there/,
  );
});

test('done is what is whole, of the same options and tables, and newer than all it was made from', () => {
  const place = folder();
  const out = join(place, 'out');
  writeFileSync(join(place, 'a.jsonc'), '{}');
  writeFileSync(join(place, 'weather.csv'), 'day');
  const [garden] = gardenFilesIn(place);
  const row: BatchRow = {
    garden: 'a.jsonc',
    state: 'planned',
    sentence: null,
    folder: 'a',
    household: 'h',
    warnings: 0,
    leanWeeks: 1,
    servingsMissing: 2,
    gapShare: 0.1,
    seconds: 3,
  };
  const stamp = {
    schemaVersion: 1,
    options,
    tables: tablesVersion,
    inputs: [join(place, 'weather.csv')],
    row,
  } as const;
  const past = new Date(Date.now() - 60_000);
  const age = (): void => {
    for (const name of ['a.jsonc', 'weather.csv']) utimesSync(join(place, name), past, past);
  };
  const write = (tables: string): void =>
    writeWholeFolder(out, 'a', (part) => {
      writeFileSync(join(part, 'plan.json'), '{}');
      writeStamp(part, { ...stamp, tables });
    });
  age();
  expect(finishedRow(out, garden!, options)).toBeNull();
  write(tablesVersion);
  expect(finishedRow(out, garden!, options)).toEqual({ ...row, state: 'skipped' });
  expect(finishedRow(out, garden!, { ...options, effort: 1 })).toBeNull();
  const now = new Date(Date.now() + 60_000);
  utimesSync(join(place, 'weather.csv'), now, now);
  expect(finishedRow(out, garden!, options)).toBeNull();
  age();
  write('older');
  expect(finishedRow(out, garden!, options)).toBeNull();
  writeFileSync(join(out, 'a', 'batch.json'), '{"schemaVersion":1');
  expect(finishedRow(out, garden!, options)).toBeNull();
});

test('a folder is put in place whole or not at all', () => {
  const out = folder();
  writeWholeFolder(out, 'a', (part) => writeFileSync(join(part, 'plan.json'), 'first'));
  expect(() =>
    writeWholeFolder(out, 'a', (part) => {
      writeFileSync(join(part, 'plan.json'), 'second');
      throw new Error('cut off');
    }),
  ).toThrow(/cannot be written/);
  expect(readdirSync(out)).toEqual(['a']);
  expect(readFileSync(join(out, 'a', 'plan.json'), 'utf8')).toBe('first');
  writeWholeFolder(out, 'a', (part) => writeFileSync(join(part, 'plan.json'), 'third'));
  expect(readFileSync(join(out, 'a', 'plan.json'), 'utf8')).toBe('third');
  expect(readdirSync(out)).toEqual(['a']);
});

test('what a dead run left is swept, an old plan that it had put aside comes back', () => {
  const out = folder();
  const noSuchProcess = 2 ** 22 + 1;
  mkdirSync(join(out, `.a.${noSuchProcess}.part`));
  mkdirSync(join(out, `.b.${noSuchProcess}.old`));
  mkdirSync(join(out, `.c.${process.ppid}.part`));
  sweepParts(out);
  expect(readdirSync(out).sort()).toEqual([`.c.${process.ppid}.part`, 'b']);
  expect(existsSync(join(out, 'a'))).toBe(false);
});
