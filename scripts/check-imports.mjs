// Runs the import rules and asserts that modules were really read: a checker that reads nothing is green for the wrong reason.
import { spawnSync } from 'node:child_process';

const leastModules = 20;
const folders = ['packages', 'adapters', 'apps', 'truth', 'golden', 'bench'];
const run = spawnSync(
  'npx',
  ['depcruise', '--config', '.dependency-cruiser.cjs', '--output-type', 'json', ...folders],
  { encoding: 'utf8', maxBuffer: 1 << 28 },
);
let cruised;
try {
  cruised = JSON.parse(run.stdout);
} catch {
  console.error(`import rules: the checker gave no answer\n${run.stderr}`);
  process.exit(1);
}
const { summary, modules } = cruised;
const own = modules.filter((m) => !m.source.includes('node_modules')).length;
for (const v of summary.violations) console.error(`import rules: ${v.rule.name}: ${v.from} -> ${v.to}`);
if (own < leastModules) {
  console.error(`import rules: only ${own} modules were read, at least ${leastModules} expected`);
  process.exit(1);
}
console.log(`import rules: ${own} modules read, ${summary.violations.length} violations`);
process.exit(summary.violations.length === 0 ? 0 : 1);
