/** Who may import whom (docs/architecture.md). Type imports count: tsPreCompilationDeps. */
const only = (from, allowed) => ({
  name: `${from.replaceAll('/', '-')}-imports`,
  severity: 'error',
  comment: `${from} may import only ${allowed.join(', ') || 'nothing of ours'}`,
  from: { path: `^${from}/` },
  to: {
    path: '^(packages|adapters|apps|truth|golden|bench|evaluation|examples)/',
    pathNot: [`^${from}/`, ...allowed.map((a) => `^${a}/`)],
  },
});
module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    only('packages/basis', []),
    only('packages/growing', ['packages/basis']),
    only('packages/planning', ['packages/basis', 'packages/growing']),
    only('packages/garden', ['packages/basis']),
    only('packages/workflows', [
      'packages/basis',
      'packages/growing',
      'packages/planning',
      'packages/garden',
    ]),
    only('adapters/solver-highs', ['packages/basis', 'packages/planning']),
    {
      name: 'apps-outer-only',
      severity: 'error',
      from: { path: '^apps/' },
      to: { path: '^(truth|golden|bench|evaluation|examples)/' },
    },
    {
      name: 'index-only',
      severity: 'error',
      comment: 'nothing deeper than the index.ts of another workspace',
      from: { path: '^(packages|adapters|apps)/([^/]+)/' },
      to: { path: '^(packages|adapters)/[^/]+/src/(?!index\\.ts$)', pathNot: '^$1/$2/' },
    },
    {
      name: 'solver-only-in-adapter',
      severity: 'error',
      from: { pathNot: '^adapters/solver-highs/' },
      to: { path: 'node_modules/highs/' },
    },
    { name: 'unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'held-out',
      severity: 'error',
      from: { pathNot: '^truth/report' },
      to: { path: '^truth/held-out/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default', 'node'],
      mainFields: ['main', 'types'],
    },
    exclude: { path: '/dist/' },
  },
};
