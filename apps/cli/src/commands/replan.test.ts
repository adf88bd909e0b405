import { copyFileSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import {
  inRepository,
  inventedPlan,
  inventedPlanPath,
  recordingTerminal,
} from '../testing/recording-terminal.ts';

async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}

/** The balcony, with the invented plan beside it as if it were its own. */
function garden(): { file: string; plan: string } {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-replan-'));
  const file = join(folder, 'garden.jsonc');
  copyFileSync(inRepository('examples/sill-and-balcony.jsonc'), file);
  const text = readFileSync(file, 'utf8');
  const nameOf = (pattern: RegExp): string => pattern.exec(text)![1]!;
  const plan = inventedPlan();
  const own = {
    ...plan.garden,
    household: nameOf(/"household": \{\s+"name": "([^"]+)"/),
    site: nameOf(/"site": \{\s+"name": "([^"]+)"/),
  };
  const path = join(folder, 'last.json');
  writeFileSync(path, JSON.stringify({ ...plan, garden: own }));
  return { file, plan: path };
}
const later = '2026-10-01';

test('without a plan to go on from it says how to make one', async () => {
  const { code, said } = await run('replan', garden().file, '--from', later);
  expect(code).toBe(1);
  expect(said).toMatch(/There is no plan to go on from.+twelvemonth plan .+--plan/);
});

test('the plan of another garden is refused', async () => {
  const { code, said } = await run('replan', garden().file, '--from', later, '--plan', inventedPlanPath);
  expect(code).toBe(1);
  expect(said).toContain('is a plan for');
});

test.each([
  ['before the last plan', ['--from', '2026-08-01'], /lies before that/],
  ['after its end', ['--from', '2028-08-01'], /is over by 2028-08-01/],
  ['a sowing that it does not have', ['--from', later, '--not-begun', '4711'], /has no sowing "4711"/],
  ['no day', ['--from', 'soon'], /"soon" is not a day/],
])('wrong use ends with 2: %s', async (_what, flags, words) => {
  const { file, plan } = garden();
  const { code, shown, said } = await run('replan', file, '--plan', plan, ...flags);
  expect([code, shown]).toEqual([2, '']);
  expect(said).toMatch(words);
});

test('a sowing that is not due yet need not be taken out', async () => {
  const { file, plan } = garden();
  const last = inventedPlan().sowings.reduce((a, b) => (b.sow > a.sow ? b : a));
  const { code, said } = await run(
    'replan',
    file,
    '--plan',
    plan,
    '--from',
    '2026-08-25',
    '--not-begun',
    last.id,
  );
  expect(code).toBe(2);
  expect(said).toContain('need not be taken out');
});
