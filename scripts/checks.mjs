// What `npm test` runs, in this order. A check whose `script` is not in the tree yet is named and left out.
const node = process.execPath;
const bin = (name) => ['npx', '--no-install', name];

export const checks = [
  { name: 'format and lint', command: [...bin('biome'), 'check', '--error-on-warnings', '.'] },
  { name: 'types', command: [...bin('tsc'), '-p', '.'] },
  { name: 'import rules', script: 'scripts/check-imports.mjs' },
  { name: 'crop tables', script: 'scripts/compile-tables.mjs', args: ['--check'] },
  { name: 'climate tables', script: 'scripts/compile-climate-tables.mjs', args: ['--check'] },
  { name: 'data sources page', script: 'scripts/write-data-sources.mjs', args: ['--check'] },
  { name: 'garden file schema', script: 'scripts/write-garden-schema.ts', args: ['--check'] },
  { name: 'plan and forecast schemas', script: 'apps/cli/src/schema/write-schemas.ts', args: ['--check'] },
  { name: 'truth report', script: 'truth/report.ts', args: ['--check'] },
  { name: 'probe page', script: 'apps/cli/src/probe/write-probe-page.ts', args: ['--check'] },
  { name: 'readme blocks', script: 'scripts/write-readme.mjs', args: ['--check'] },
  { name: 'tests', vitest: true },
  { name: 'printed sheets in a browser', script: 'scripts/browser-smoke.mjs', browser: true },
  { name: 'bench smoke', script: 'bench/smoke.mjs' },
  { name: 'small evaluation', script: 'evaluation/run.ts', args: ['--small'] },
];

/** TypeScript scripts and those that read TypeScript packages run through tsx. */
export const commandOf = (check) =>
  check.command ?? [node, '--import', 'tsx', check.script, ...(check.args ?? [])];
