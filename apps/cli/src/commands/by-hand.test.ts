import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import { inRepository, inventedPlanPath, recordingTerminal } from '../testing/recording-terminal.ts';

const demo = inRepository('examples/marram-end.jsonc');
async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}

test('a kind that is nearly right is told the one that was meant', async () => {
  expect((await run('kinds', 'leeks')).said).toContain('Was "leek" meant?');
  expect((await run('forecast', demo, '--kind', 'parsly', '--sow', '2027-03-20')).said).toContain(
    'Was "parsley" meant?',
  );
  expect((await run('kinds', 'zzzzzz')).said).not.toContain('meant?');
});

test('the page for whoever waters needs its week', async () => {
  const { code, said } = await run('sheet', demo, '--plan', inventedPlanPath, '--neighbour');
  expect(code).toBe(2);
  expect(said).toContain('--fridge');
});

test.each([
  ['--month', '2035-01'],
  ['--fridge', '2035-01-01'],
])('a sheet outside the plan is refused, not printed empty: %s %s', async (option, when) => {
  const { code, shown, said } = await run('sheet', demo, '--plan', inventedPlanPath, option, when);
  expect([code, shown]).toEqual([1, '']);
  expect(said).toMatch(/outside the plan, whose weeks begin between 2026-08-\d\d and 2028-\d\d-\d\d/);
});

test('a place that cannot be written is told before the work begins, and nothing is left there', async () => {
  const place = mkdtempSync(join(tmpdir(), 'twelvemonth-hand-'));
  writeFileSync(join(place, 'file'), 'kept');
  const missing = join(place, 'no', 'sheet.txt');
  for (const argv of [
    ['plan', join(place, 'no-garden'), '--out', join(place, 'file', 'below')],
    ['sheet', join(place, 'no-garden'), '--out', missing],
    ['sheet', join(place, 'no-garden'), '--out', place],
    ['seeds', join(place, 'no-garden'), '--out', place],
  ]) {
    const { code, said } = await run(...argv);
    expect(code).toBe(1);
    expect(said).toMatch(/cannot be (made|written): .+\. Choose another with --out\./);
  }
  expect(readdirSync(place)).toEqual(['file']);
});

test('a wrong type is told in words', async () => {
  const { shown } = await run('check', inRepository('examples/broken/wrong-type.jsonc'));
  expect(shown).toContain('Here stands a text, but a number is needed. Write a number.');
});
