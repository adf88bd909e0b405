import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { civilFromDay, dayFromIso, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { assembleKind } from '../../packages/growing/src/crops/assemble-kind.ts';
import { effectiveRows } from '../../packages/growing/src/crops/effective-rows.ts';
import type { CompiledTables } from '../../packages/growing/src/crops/table-types.ts';
import { runSowing } from '../../packages/growing/src/index.ts';
import { contextAt, noStores, sowingPlan } from '../../truth/garden-under-test.ts';

const folder = mkdtempSync(join(tmpdir(), 'add-a-crop-'));
const into = join(folder, 'catalogue.ts');
afterAll(() => rmSync(folder, { recursive: true }));

/** The lines that docs/how-to/add-a-crop.md tells a reader to write. */
const page = readFileSync('docs/how-to/add-a-crop.md', 'utf8');
const lines = /```csv\n([\s\S]*?)```/.exec(page)![1]!;

function compileWithThem(): string {
  cpSync('packages/growing/tables', folder, { recursive: true });
  appendFileSync(join(folder, 'kinds-roots.csv'), lines);
  const args = ['scripts/compile-tables.mjs', '--tables', folder, '--into', into];
  const run = spawnSync('node', args, { encoding: 'utf8' });
  return `${run.status} ${run.stderr.replace(/^warning.*\n/gm, '')}`;
}

test('the crop of the how-to page is added by its lines alone, and grows', async () => {
  expect(compileWithThem()).toBe('0 ');
  const { tables } = (await import(pathToFileURL(into).href)) as { tables: CompiledTables };
  expect(tables.kindIds).toContain('scorzonera');
  const rows = effectiveRows(tables.rowsBySubject, 'scorzonera');
  const { kind, issues } = assembleKind('scorzonera', rows, tables.parameters.kind);
  expect(issues).toEqual([]);

  const context = contextAt('dublin');
  const plan = sowingPlan(kind, 'direct', 'open', dayFromIso('2027-04-15')!);
  const firsts = context.members.map(
    (member) => runSowing(context, member, plan, noStores).harvests[0]!.firstDay,
  );
  const { month } = civilFromDay(quantileOfSorted(Float64Array.from(firsts).sort(), 0.5));
  expect([8, 9, 10, 11]).toContain(month); // handbooks dig it from October; common practice
});
