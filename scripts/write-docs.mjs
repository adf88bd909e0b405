// npm run docs: rewrites everything in the tree that is made by a program, in the order in which one needs another.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const writers = [
  'scripts/compile-tables.mjs',
  'scripts/compile-climate-tables.mjs',
  'scripts/write-data-sources.mjs',
  'scripts/write-garden-schema.ts',
  'apps/cli/src/schema/write-schemas.ts',
  'apps/cli/src/probe/write-probe-page.ts',
  'truth/report.ts',
  'scripts/write-pictures.ts',
  'scripts/write-readme.mjs',
];

for (const writer of writers) {
  if (!existsSync(join(root, writer))) continue;
  console.log(`docs: ${writer}`);
  const run = spawnSync(process.execPath, ['--import', 'tsx', writer], { cwd: root, stdio: 'inherit' });
  if (run.status !== 0) process.exit(run.status ?? 1);
}
