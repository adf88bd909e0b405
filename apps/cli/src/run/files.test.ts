import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { changedAtMs, makeFolder, readTextFile, writeWholeFile } from './files.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'twelvemonth-files-'));

test('a file is written whole, in place of the old one, and nothing is left beside it', () => {
  const place = folder();
  const path = join(place, 'plan.json');
  writeFileSync(path, 'old');
  writeWholeFile(path, 'naïve – text');
  expect(readFileSync(path, 'utf8')).toBe('naïve – text');
  expect(readdirSync(place)).toEqual(['plan.json']);
});

test('what cannot be written is said in a sentence, and leaves nothing behind', () => {
  const place = folder();
  mkdirSync(join(place, 'taken', 'inside'), { recursive: true });
  expect(() => writeWholeFile(join(place, 'taken'), 'x')).toThrow(
    /taken: cannot be written: .+ Choose another place/,
  );
  expect(() => writeWholeFile(join(place, 'no', 'such', 'folder.txt'), 'x')).toThrow(/it is not there/);
  expect(readdirSync(place)).toEqual(['taken']);
});

test('a folder that cannot be made is said in a sentence', () => {
  const place = folder();
  writeFileSync(join(place, 'file'), '');
  expect(() => makeFolder(join(place, 'file', 'below'))).toThrow(/the folder cannot be made: .+--out/);
});

test('reading says what is the matter', () => {
  expect(() => readTextFile(join(folder(), 'none'), 'garden file')).toThrow(
    /the garden file cannot be read: it is not there/,
  );
  expect(() => readTextFile(folder(), 'garden file')).toThrow(/it is a folder, not a file/);
  expect(changedAtMs(folder())).toBeNull();
});
