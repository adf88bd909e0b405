// npm test: every check in order, one line each, and the sum on the last line. A failing check shows what it said.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checks, commandOf } from './checks.mjs';
import { countTests } from './count-tests.mjs';
import { ensureChromium } from './ensure-chromium.mjs';
import { ensureInstalled } from './ensure-installed.mjs';
import { requireNode } from './node-version.mjs';

requireNode();
const root = join(import.meta.dirname, '..');
ensureInstalled(root);

const run = ([program, ...args], env = {}) =>
  spawnSync(program, args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });

function runVitest() {
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-tests-'));
  const file = join(folder, 'report.json');
  try {
    const { stdout, stderr } = run([
      'npx',
      '--no-install',
      'vitest',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile=${file}`,
    ]);
    const counts = existsSync(file)
      ? countTests(JSON.parse(readFileSync(file, 'utf8')))
      : { passed: 0, failed: 1, skipped: 0 };
    return { ...counts, said: `${stdout}${stderr}` };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function runOne(check) {
  if (check.vitest) return runVitest();
  const chromium = check.browser ? ensureChromium() : null;
  if (check.browser && chromium === null) return { passed: 0, failed: 1, said: 'no browser' };
  const { status, stdout, stderr, error } = run(
    commandOf(check),
    chromium === null ? {} : { TWELVEMONTH_CHROMIUM: chromium },
  );
  const good = status === 0;
  return { passed: good ? 1 : 0, failed: good ? 0 : 1, said: `${stdout ?? ''}${stderr ?? ''}${error ?? ''}` };
}

let passed = 0;
let failed = 0;
for (const check of checks) {
  if (check.script && !existsSync(join(root, check.script))) {
    console.log(`----  ${check.name}: ${check.script} is not there yet`);
    continue;
  }
  const begunMs = performance.now();
  const result = runOne(check);
  passed += result.passed;
  failed += result.failed;
  const seconds = ((performance.now() - begunMs) / 1_000).toFixed(1);
  const counts = check.vitest
    ? `, ${result.passed} passed, ${result.failed} failed, ${result.skipped} skipped`
    : '';
  console.log(`${result.failed === 0 ? 'ok  ' : 'FAIL'}  ${check.name} (${seconds} s${counts})`);
  if (result.failed > 0) console.log(result.said.trimEnd());
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
