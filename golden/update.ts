/**
 * Writes what the cases give today into their files and says what moved. Tolerances are left alone: a new figure is
 * refused until somebody has written down (with any value) how far it may move.
 *
 *   node --import tsx golden/update.ts
 */
import { writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { ExpectedFigure } from './compare-figures.ts';
import { goldenFiles, readCase } from './golden-case.ts';
import { figuresOf, planInput } from './plan-figures.ts';

const decimals = 1e6;

for (const file of goldenFiles()) {
  const { input, expected } = readCase(file);
  const found = figuresOf(await planInput(input));
  const updated: Record<string, ExpectedFigure> = {};
  const withoutTolerance: string[] = [];
  for (const [name, now] of Object.entries(found)) {
    const before = expected[name];
    if (before === undefined) {
      withoutTolerance.push(name);
      continue;
    }
    const value = Math.round(now * decimals) / decimals;
    updated[name] = { value, tolerance: before.tolerance };
    if (value === before.value) continue;
    const far = Math.abs(value - before.value) > before.tolerance ? ', beyond its tolerance' : '';
    console.log(`${basename(file)} ${name}: ${before.value} → ${value}${far}`);
  }
  if (withoutTolerance.length > 0) {
    console.error(`${basename(file)} not written, no tolerance for: ${withoutTolerance.join(', ')}`);
    process.exitCode = 1;
    continue;
  }
  for (const name of Object.keys(expected))
    if (!(name in found)) console.log(`${basename(file)} ${name}: gone`);
  const lines = Object.entries(updated).map(
    ([name, figure]) => `    ${JSON.stringify(name)}: ${JSON.stringify(figure)}`,
  );
  const head = JSON.stringify(input, null, 2).replaceAll('\n', '\n  ');
  writeFileSync(file, `{\n  "input": ${head},\n  "expected": {\n${lines.join(',\n')}\n  }\n}\n`);
}
