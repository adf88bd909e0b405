/**
 * Measures narrowing before solving: whole columns kept to the two numbers around their relaxed value (and to nothing
 * where the relaxation uses none and has room to spare), solved first, and its answer given to the full program as a start.
 * npx tsx adapters/solver-highs/measure/measure-narrowing.ts [shapeSeed]
 */
import type { LinearProgram } from '@twelvemonth/planning';
import { createHighsSolver } from '../src/index.ts';
import { householdShape, plantingLikeProgram } from './planting-like-program.ts';
import { roundedStart } from './rounded-start.ts';

const program = plantingLikeProgram({
  ...householdShape,
  seed: Number(process.argv[2] ?? householdShape.seed),
});
const solver = await createHighsSolver();
const beganMs = performance.now();
const since = (): string => `${((performance.now() - beganMs) / 1_000).toFixed(1)} s`;

const relaxed = await solver.relax(program, () => false);
const around = relaxed.colValue ?? new Float64Array(program.colCost.length);
console.log(`relaxation ${relaxed.objective?.toFixed(2)} at ${since()}`);
const start = await roundedStart(solver, program);
const costOf = (point: Float64Array): number => point.reduce((sum, v, j) => sum + v * program.colCost[j]!, 0);
console.log(`rounded start ${costOf(start).toFixed(2)} at ${since()}`);

const kept = (j: number, v: number, roundTo: (x: number) => number): number =>
  program.colWhole[j] === 1 ? Math.min(program.colUpper[j]!, Math.max(0, roundTo(v))) : Number.NaN;
for (const [name, spread] of [
  ['the two numbers around', 0],
  ['and one more either way', 1],
] as const) {
  const narrowed: LinearProgram = {
    ...program,
    colLower: program.colLower.map((low, j) =>
      program.colWhole[j] === 1
        ? Math.min(
            start[j]!,
            kept(j, around[j]!, (x) => Math.floor(x + 1e-7) - spread),
          )
        : low,
    ),
    colUpper: program.colUpper.map((high, j) =>
      program.colWhole[j] === 1
        ? Math.max(
            start[j]!,
            kept(j, around[j]!, (x) => Math.ceil(x - 1e-7) + (around[j]! > 1e-7 ? spread : 0)),
          )
        : high,
    ),
  };
  const fromMs = performance.now();
  const told: string[] = [];
  const answer = await solver.solve(
    narrowed,
    { gapShare: 0.005, nodes: 1_000_000, timeLimitSeconds: 120, randomSeed: 1, lpIterations: 60_000 },
    start,
    ({ objective }) =>
      told.push(`${objective.toFixed(0)} at ${((performance.now() - fromMs) / 1_000).toFixed(1)} s`),
    () => false,
  );
  console.log(
    `narrowed to ${name}: ${answer.status} ${answer.objective?.toFixed(2)} over its own ${answer.bound?.toFixed(2)}, ` +
      `${answer.iterations} iterations, ${((performance.now() - fromMs) / 1_000).toFixed(1)} s; ${told.join(', ')}`,
  );
}
await solver.dispose();
