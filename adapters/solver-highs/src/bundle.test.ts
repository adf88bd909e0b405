import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, it } from 'vitest';

const source = fileURLToPath(new URL('.', import.meta.url));

it('works from a bundle with the worker file beside it', async () => {
  const parent = join(source, '..', 'dist');
  mkdirSync(parent, { recursive: true });
  const folder = mkdtempSync(join(parent, 'bundle-'));
  try {
    const entry = join(folder, 'entry.ts');
    writeFileSync(
      entry,
      `import { createHighsSolver } from '../../src/index.ts';
       const solver = await createHighsSolver();
       const one = (x: number) => Float64Array.of(x);
       const { objective } = await solver.relax({
         colCost: one(2), colLower: one(0), colUpper: one(9), colWhole: Uint8Array.of(0), rowLower: one(3),
         rowUpper: one(8), starts: Int32Array.of(0, 1), indices: Int32Array.of(0), values: one(1),
       }, () => false);
       console.log(objective);
       await solver.dispose();`,
    );
    const outfile = join(folder, 'entry.mjs');
    await build({
      entryPoints: [entry],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      external: ['highs'],
      logLevel: 'silent',
    });
    copyFileSync(join(source, 'highs-worker.mjs'), join(folder, 'highs-worker.mjs'));
    const run = spawnSync(process.execPath, [outfile], { encoding: 'utf8', timeout: 60_000 });
    expect(run.stderr).toBe('');
    expect(run.stdout.trim()).toBe('6');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
