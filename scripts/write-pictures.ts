// Plans the demo garden by the command line and keeps its year picture for the README.
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const out = mkdtempSync(join(tmpdir(), 'twelvemonth-'));
const run = spawnSync(
  process.execPath,
  ['apps/cli/bin/twelvemonth.mjs', 'plan', 'examples/marram-end.jsonc', '--out', out],
  { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] },
);
if (run.status !== 0) process.exit(run.status ?? 1);
mkdirSync(join(root, 'docs/pictures'), { recursive: true });
copyFileSync(join(out, 'year.svg'), join(root, 'docs/pictures/year.svg'));
rmSync(out, { recursive: true });
console.log('docs/pictures/year.svg: drawn from the demo plan');
