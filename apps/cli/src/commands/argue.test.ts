import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { planGarden } from '@twelvemonth/workflows';
import { beforeAll, expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import { inRepository, recordingTerminal } from '../testing/recording-terminal.ts';

const balcony = inRepository('examples/sill-and-balcony.jsonc');
const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-argue-'));
const plan = join(folder, 'plan.json');

beforeAll(async () => {
  const fromDay = dayFromIso('2026-03-01')!;
  const { garden } = parseGarden(readFileSync(balcony, 'utf8'), { today: fromDay });
  const options = { fromDay, weeks: 30, memberCount: 4, checkMemberCount: 4, seed: 1, effort: 0 };
  const ports = { solver: null, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
  const planned = await planGarden(garden!, { ...options, timeLimitSeconds: null }, ports, null);
  if (planned.kind !== 'done') throw new Error(planned.kind);
  writeFileSync(plan, JSON.stringify(planned.value));
});

async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}

test('a sowing is explained by number, by kind and by id alike', async () => {
  const byNumber = await run('explain', balcony, '1', '--plan', plan);
  expect(byNumber.code).toBe(0);
  for (const word of ['Feeds', 'Worth', 'Its ground']) expect(byNumber.shown).toContain(`\n${word} `);
  const { sowing } = JSON.parse((await run('explain', balcony, '1', '--plan', plan, '--json')).shown);
  expect(sowing.number).toBe(1);
  expect((await run('explain', balcony, sowing.id, '--plan', plan)).shown).toBe(byNumber.shown);
  expect((await run('explain', balcony, 'lambs lettuse', '--plan', plan)).said).toContain('meant?');
});

test('a week is explained role by role, and one role alone', async () => {
  const { shown, code } = await run('explain', balcony, '2026-06-10', '--plan', plan);
  expect(code).toBe(0);
  expect(shown).toContain('Week of 8 June 2026');
  expect(shown).toMatch(/Salad leaves .*servings/);
  const one = await run('explain', balcony, '2026-06-10', '--role', 'herbs', '--plan', plan, '--json');
  const bought = await run('explain', balcony, '2026-06-10', '--role', 'onions', '--plan', plan);
  expect(bought.shown).toContain('bought on purpose');
  expect(JSON.parse(one.shown).roles.map((r: { role: string }) => r.role)).toEqual(['herbs']);
});

test.each([
  [['explain', balcony, '999', '--plan', plan], 2, 'There is no sowing "999"'],
  [['explain', balcony, '2031-01-01', '--plan', plan], 1, 'outside the plan'],
  [['explain', balcony, '2026-06-10', '--role', 'hebrs', '--plan', plan], 2, 'Was "herbs" meant?'],
  [['explain', balcony, '1', '--role', 'herbs', '--plan', plan], 2, 'A role goes with a week'],
  [['explain', balcony, '1', '--plan', join(folder, 'none.json')], 1, 'none.json'],
  [['slots', balcony, '--kind', 'lettuce-leef'], 2, 'Was "lettuce-leaf" meant?'],
  [['slots', balcony, '--kind', 'rhubarb'], 1, 'stands for years'],
  [['slots', balcony], 2, '--kind'],
])('wrong use says what and how to mend it: %j', async (argv, code, words) => {
  const answer = await run(...argv);
  expect([answer.code, answer.shown]).toEqual([code, '']);
  expect(answer.said).toContain(words);
});

test('slots are told with a day to sow, a place, and what they fill', async () => {
  const { shown, code } = await run('slots', balcony, '--kind', 'lettuce-leaf');
  expect(code).toBe(0);
  expect(shown).toMatch(/\n1 +.*sow \d+ \w+ 202\d/);
  expect(shown).toContain('only what stands was reckoned');
  const none = await run('slots', balcony, '--kind', 'parsnip');
  expect(none.shown).toContain('It grows in nothing that this garden has');
});
