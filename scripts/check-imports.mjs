// Runs the import rules and asserts that modules were really read: a checker that reads nothing is green for the wrong reason.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';

const leastModules = 20;
const folders = ['packages', 'adapters', 'apps', 'truth', 'golden', 'bench', 'evaluation'];
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
const undeclared = undeclaredImports(modules);
for (const line of undeclared) console.error(`import rules: declared-only: ${line}`);
if (own < leastModules) {
  console.error(`import rules: only ${own} modules were read, at least ${leastModules} expected`);
  process.exit(1);
}
console.log(`import rules: ${own} modules read, ${summary.violations.length + undeclared.length} violations`);
process.exit(summary.violations.length + undeclared.length === 0 ? 0 : 1);

/** Every imported workspace or package is declared in the package.json of the workspace that imports it. */
function undeclaredImports(all) {
  const lines = [];
  for (const module of all) {
    const workspace = /^((?:packages|adapters|apps)\/[^/]+)\//.exec(module.source)?.[1];
    if (workspace === undefined || !existsSync(`${workspace}/package.json`)) continue;
    const { dependencies = {} } = JSON.parse(readFileSync(`${workspace}/package.json`, 'utf8'));
    const isTest = /\.test\.|\/fixture\//.test(module.source);
    for (const { module: name } of module.dependencies) {
      if (name.startsWith('.') || isBuiltin(name) || isTest) continue;
      const packageName = name
        .split('/')
        .slice(0, name.startsWith('@') ? 2 : 1)
        .join('/');
      if (!(packageName in dependencies))
        lines.push(
          `${module.source} imports ${packageName}, which ${workspace}/package.json does not declare`,
        );
    }
  }
  return lines;
}
