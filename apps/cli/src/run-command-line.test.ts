import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseGarden } from '@twelvemonth/garden';
import { expect, test, vi } from 'vitest';
import { todayByTheClock } from './run/today.ts';
import { runCommandLine } from './run-command-line.ts';
import { inRepository, inventedPlanPath, recordingTerminal } from './testing/recording-terminal.ts';

/** Commands on a stored plan need no engine: only what the workflows say about file and seeds is put in place here. */
vi.mock('@twelvemonth/workflows', async (original) => ({
  ...(await original<object>()),
  issuesOfGarden: () => [],
  seedListOf: () => [],
}));

const demo = inRepository('examples/marram-end.jsonc');
async function run(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(argv, terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}
const withoutStack = (text: string): void => expect(text).not.toMatch(/^\s+at .+:\d+/m);

test('every command explains itself with an example', async () => {
  const { shown } = await run('--help');
  for (const name of [
    'plan',
    'replan',
    'compare',
    'what-if',
    'batch',
    'forecast',
    'sheet',
    'check',
    'climate',
    'kinds',
    'seeds',
    'probe',
    'truth',
  ]) {
    expect(shown).toContain(`  ${name} `);
    const help = await run(name, '--help');
    expect(help.code).toBe(0);
    expect(help.shown).toMatch(/Example:\n {2}\$ twelvemonth /);
  }
});

test.each([
  [[]],
  [['pan', 'x']],
  [['plan']],
  [['plan', 'x', '--from', '2026-02-30']],
  [['plan', 'x', '--members', '-3']],
  [['plan', 'x', '--time', 'soon']],
  [['plan', 'x', '--no-such-thing']],
  [['forecast', 'x', '--kind', 'leek']],
  [['sheet', 'x', '--month', '2026-13']],
  [['sheet', 'x', '--month', '2026-09', '--dark-months']],
  [['sheet', 'x', '--dark-months', '--format', 'ics']],
  [['sheet', 'x', '--format', 'pdf']],
  [['kinds', 'no-such-kind']],
  [['what-if', 'x']],
  [['what-if', 'x', '--weather', 'mild']],
  [['probe']],
  [['probe', 'day-lenght', '--with', '{}']],
  [['probe', 'day-length']],
])('wrong use ends with 2: %j', async (argv) => {
  const { code, shown, said } = await run(...argv);
  expect(code).toBe(2);
  expect(shown === '' || argv.length === 0).toBe(true);
  withoutStack(said);
});

test('each broken example is told with its place and a remedy, and ends with 1 if it holds an error', async () => {
  const names = readdirSync(inRepository('examples/broken')).filter((name) => name.endsWith('.jsonc'));
  expect(names.length).toBeGreaterThan(20);
  for (const name of names) {
    const path = inRepository(`examples/broken/${name}`);
    const { issues } = parseGarden(readFileSync(path, 'utf8'), { today: todayByTheClock() });
    const { code, shown } = await run('check', path);
    const wrong = issues.some((issue) => issue.severity === 'error') || shown.includes('weather file');
    expect(code, name).toBe(wrong ? 1 : 0);
    expect(
      shown.split('\n').filter((line) => /^(error|warning|note): .+: .+\. .+/.test(line)).length,
      name,
    ).toBeGreaterThanOrEqual(issues.length);
    withoutStack(shown);
  }
});

test('a file with errors stops the other commands with 1 and nothing on standard output', async () => {
  const broken = inRepository('examples/broken/impossible-date.jsonc');
  for (const argv of [
    ['plan', broken, '--json'],
    ['climate', broken],
    ['seeds', broken],
    ['sheet', broken],
  ]) {
    const { code, shown, said } = await run(...argv);
    expect([code, shown]).toEqual([1, '']);
    expect(said).toContain('There is no day "2026-02-30".');
  }
});

test('sheets of a stored plan come in every format', async () => {
  const stored = ['--plan', inventedPlanPath, '--today', '2026-08-20'];
  const sheet = (...more: string[]) => run('sheet', demo, ...stored, ...more);
  expect((await sheet('--month', '2026-09')).shown).toMatch(/^September 2026\n/);
  expect((await sheet()).shown).toContain('Still waiting from before');
  expect((await sheet('--month', '2026-09', '--format', 'html')).shown).toMatch(/^<!doctype html>/);
  expect((await sheet('--month', '2026-09', '--format', 'ics')).shown).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect((await sheet('--month', '2026-09', '--format', 'csv')).shown).toMatch(/^area,week_of,/);
  expect((await sheet('--dark-months')).shown).toMatch(/^The dark months, December 2026 to May 2027\n/);
  expect((await sheet('--fridge', '2026-08-26')).shown).toMatch(/^This week, 24–30 Aug\n/);
  expect((await sheet('--fridge', '2026-08-26', '--neighbour')).shown).toMatch(/^For whoever waters, /);
  expect((await run('seeds', demo, ...stored)).shown).toMatch(/^Seeds, sets and tubers\n/);
});

test('a plan that is none is refused in a sentence', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-plan-'));
  const path = join(folder, 'plan.json');
  for (const text of [
    '',
    '{',
    '[]',
    '{"schemaVersion":1}',
    readFileSync(inventedPlanPath, 'utf8').slice(0, 5000),
  ]) {
    writeFileSync(path, text);
    const { code, said } = await run('sheet', demo, '--plan', path);
    expect(code).toBe(1);
    expect(said).toMatch(/plan\.json: this is not a .+Make /);
  }
});

test('a sheet goes into a file only whole', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-sheet-'));
  const garden = join(folder, 'garden.jsonc');
  copyFileSync(demo, garden);
  const out = join(folder, 'september.html');
  const { code, shown } = await run(
    'sheet',
    garden,
    '--plan',
    inventedPlanPath,
    '--month',
    '2026-09',
    '--format',
    'html',
    '--out',
    out,
  );
  expect([code, shown]).toEqual([0, '']);
  expect(readFileSync(out, 'utf8')).toMatch(/<\/html>\n$/);
  expect(readdirSync(folder).sort()).toEqual(['garden.jsonc', 'september.html']);
});

test('the installed command answers with exit codes and no stack', () => {
  const command = inRepository('apps/cli/bin/twelvemonth.mjs');
  const codes = [
    ['--version'],
    ['check', inRepository('examples/broken/cut-off.jsonc')],
    ['check', join(tmpdir(), 'no-such-garden.jsonc')],
    ['plan', 'x', '--weeks', 'many'],
  ].map((argv) => {
    const { status, stderr } = spawnSync(process.execPath, [command, ...argv], { encoding: 'utf8' });
    withoutStack(stderr);
    return status;
  });
  expect(codes).toEqual([0, 1, 1, 2]);
});
