/**
 * Solves the planting-like program with one set of options after another, by counted work, through the adapter itself.
 * npx tsx adapters/solver-highs/measure/measure-options.ts [lpIterations] [shapeSeed] [name,name…]
 */
import { createHighsSolver, type HighsOptions, measuredOptions, type OptionValues } from '../src/index.ts';
import { householdShape, plantingLikeProgram } from './planting-like-program.ts';
import { roundedStart } from './rounded-start.ts';

const lpIterations = Number(process.argv[2] ?? 40_000);
const shapeSeed = Number(process.argv[3] ?? householdShape.seed);
const mipSets: Readonly<Record<string, OptionValues>> = {
  chosen: measuredOptions.mip,
  default: {},
  ipm: { mip_lp_solver: 'ipm' },
  'ipm-effort-0.2': { mip_lp_solver: 'ipm', mip_heuristic_effort: 0.2 },
  'ipm-effort-0.5': { mip_lp_solver: 'ipm', mip_heuristic_effort: 0.5 },
  'ipm-no-restart': { mip_lp_solver: 'ipm', mip_allow_restart: false },
  'ipm-no-symmetry': { mip_lp_solver: 'ipm', mip_detect_symmetry: false },
  'ipm-no-presolve': { mip_lp_solver: 'ipm', presolve: 'off' },
  'ipm-small-cut-pool': { mip_lp_solver: 'ipm', mip_pool_soft_limit: 500, mip_pool_age_limit: 5 },
  'ipm-no-root-sub-program': { mip_lp_solver: 'ipm', mip_heuristic_run_root_reduced_cost: false },
  'ipm-no-rens': { mip_lp_solver: 'ipm', mip_heuristic_run_rens: false },
};
const names = process.argv[4]?.split(',') ?? Object.keys(mipSets);

const program = plantingLikeProgram({ ...householdShape, seed: shapeSeed });
const seconds = (fromMs: number): string => ((performance.now() - fromMs) / 1_000).toFixed(1);
console.log(
  `${program.colCost.length} columns, ${program.rowLower.length} rows, ${program.values.length} entries, ` +
    `${program.colWhole.reduce((sum, whole) => sum + whole, 0)} whole`,
);

for (const [name, lp] of Object.entries({ ipm: { solver: 'ipm' }, simplex: { solver: 'simplex' } })) {
  const options: HighsOptions = { ...measuredOptions, lp };
  const solver = await createHighsSolver(options);
  const fromMs = performance.now();
  const relaxed = await solver.relax(program, () => false);
  console.log(`relaxation, ${name}: ${relaxed.status} ${relaxed.objective} in ${seconds(fromMs)} s`);
  await solver.dispose();
}

for (const name of names) {
  const solver = await createHighsSolver({ ...measuredOptions, mip: mipSets[name] ?? {} });
  const start = await roundedStart(solver, program);
  const fromMs = performance.now();
  const steps: string[] = [];
  const answer = await solver.solve(
    program,
    { gapShare: 0.002, nodes: 1_000_000, timeLimitSeconds: 600, randomSeed: 1, lpIterations },
    start,
    ({ objective }) => steps.push(`${objective.toFixed(0)} at ${seconds(fromMs)} s`),
    () => false,
  );
  const gapShare = ((answer.objective ?? 0) - (answer.bound ?? 0)) / Math.abs(answer.objective ?? 1);
  console.log(
    `${name}: ${answer.status}, ${answer.objective?.toFixed(2)} over ${answer.bound?.toFixed(2)}, ` +
      `gap ${(100 * gapShare).toFixed(2)} %, ${answer.iterations} iterations, ${seconds(fromMs)} s; ${steps.join(', ')}`,
  );
  await solver.dispose();
}
