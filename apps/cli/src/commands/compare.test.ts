import { copyFileSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import { comparisonSchema } from '../schema/comparison-schema.ts';
import { inventedPlan, inventedPlanPath, recordingTerminal } from '../testing/recording-terminal.ts';

async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}
const folder = (): string => mkdtempSync(join(tmpdir(), 'twelvemonth-compare-'));
const plan = inventedPlan();
const draft = plan.sowings.find((s) => s.state === 'draft')!;

function written(change: object): string {
  const path = join(folder(), 'plan.json');
  writeFileSync(path, JSON.stringify({ ...plan, ...change }));
  return path;
}

test('files and folders are taken, and what differs is said', async () => {
  const place = folder();
  copyFileSync(inventedPlanPath, join(place, 'plan.json'));
  const fewer = written({ sowings: plan.sowings.filter((s) => s.id !== draft.id) });
  const { code, shown } = await run('compare', place, fewer);
  expect(code).toBe(0);
  expect(shown).toContain('1 dropped');
  expect(shown).toContain(`(${draft.number})`);
  for (const line of shown.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
});

test('--json keeps to the published schema', async () => {
  const { code, shown } = await run('compare', inventedPlanPath, written({ sowings: [] }), '--json');
  expect(code).toBe(0);
  const value: unknown = JSON.parse(shown);
  expect(comparisonSchema.parse(value)).toEqual(value);
});

test('bad files end with 1 and a sentence', async () => {
  const broken = join(folder(), 'plan.json');
  writeFileSync(broken, '{"schemaVersion":');
  for (const [path, words] of [
    [join(folder(), 'none.json'), 'it is not there'],
    [folder(), 'it is not there'],
    [broken, 'not a whole JSON file'],
    [written({ schemaVersion: 9 }), 'not a plan of this program'],
  ] as const) {
    const { code, shown, said } = await run('compare', inventedPlanPath, path);
    expect([code, shown]).toEqual([1, '']);
    expect(said).toContain(words);
  }
});
