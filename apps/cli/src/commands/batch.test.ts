import { copyFileSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import { batchSummarySchema } from '../schema/batch-schema.ts';
import { planSchema } from '../schema/plan-schema.ts';
import { inRepository, recordingTerminal } from '../testing/recording-terminal.ts';

/** One tub and somebody who eats salad: planned in seconds. */
const tub = `{
  "schemaVersion": 1, "invented": true, "planFrom": "2026-03-01",
  "household": {
    "name": "One tub", "people": [{ "name": "the tenant" }],
    "appetite": { "salad-leaves": 2 },
    "boughtOnPurpose": { "potatoes": "all", "onions": "all", "leeks": "all", "cabbages": "all", "broccoli": "all",
      "sweet-roots": "all", "stalks": "all", "herbs": "all", "summer-fruits": "all", "cooked-greens": "all",
      "beans-peas": "all", "garlic": "all" }
  },
  "site": { "name": "Invented Court", "latitude": 48.1, "longitude": 11.5, "elevationM": 520, "climate": "muenchen" },
  "places": [{ "id": "tub", "name": "tub", "use": "tub", "count": 1, "litres": 40, "visitsPerWeek": 7 }]
}`;

async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}

test('a bad file never stops the rest, and a second run goes on where the first ended', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-batch-'));
  const out = join(folder, 'plans');
  writeFileSync(join(folder, 'one.jsonc'), tub);
  copyFileSync(inRepository('examples/broken/impossible-date.jsonc'), join(folder, 'two.jsonc'));
  const options = ['--effort', '0', '--members', '4', '--weeks', '20', '--workers', '2'];
  const first = await run('batch', folder, '--out', out, ...options);
  expect(first.code).toBe(1);
  expect(first.shown).toMatch(/one\.jsonc +planned/);
  expect(first.shown).toMatch(/two\.jsonc +FAILED/);
  expect(first.shown).toContain('There is no day "2026-02-30".');
  expect(readdirSync(out).sort()).toEqual(['one', 'summary.json']);
  const plan = JSON.parse(readFileSync(join(out, 'one', 'plan.json'), 'utf8'));
  expect(planSchema.safeParse(plan).success).toBe(true);
  const again = await run('batch', folder, '--out', out, ...options, '--json');
  const summary = batchSummarySchema.parse(JSON.parse(again.shown));
  expect(summary.gardens.map((row) => row.state)).toEqual(['skipped', 'failed']);
  expect(JSON.parse(readFileSync(join(out, 'summary.json'), 'utf8'))).toEqual(summary);
}, 120_000);

test('a folder without gardens, or none at all, is said', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-batch-'));
  const none = await run('batch', folder, '--out', join(folder, 'plans'));
  expect([none.code, none.shown]).toEqual([1, '']);
  expect(none.said).toContain('there is no garden file in this folder');
  expect(readdirSync(folder)).toEqual([]);
  expect((await run('batch', join(folder, 'nowhere'), '--out', folder)).said).toContain('it is not there');
  expect((await run('batch', folder)).code).toBe(2);
});
