// npm start: the packages, then a plan for the invented household at Marram End.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureInstalled } from './ensure-installed.mjs';
import { requireNode } from './node-version.mjs';

requireNode();
const root = join(import.meta.dirname, '..');
ensureInstalled(root);
const command = [
  'apps/cli/bin/twelvemonth.mjs',
  'plan',
  'examples/marram-end.jsonc',
  ...process.argv.slice(2),
];
const run = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
process.exit(run.status ?? 1);
