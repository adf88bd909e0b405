import { type SolverPort, solverContract } from '@twelvemonth/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plantingLikeProgram } from '../measure/planting-like-program.ts';
import { roundedStart } from '../measure/rounded-start.ts';
import { createHighsSolver, type HighsSolver } from './highs-solver.ts';

solverContract('HiGHS in a worker thread', () => createHighsSolver(), {
  describe,
  it,
  expect,
  clockMs: () => performance.now(),
});

const smallYear = plantingLikeProgram({
  seed: 5,
  candidateCount: 120,
  scenarioCount: 2,
  weekCount: 60,
  roleCount: 6,
  storableRoleCount: 2,
  groundClassCount: 2,
});
const limits = {
  gapShare: 0.0001,
  nodes: 1_000_000,
  lpIterations: null,
  timeLimitSeconds: null,
  randomSeed: 3,
};
const never = (): boolean => false;
const costOf = (point: Float64Array | null): number =>
  [...(point ?? [])].reduce((sum, v, j) => sum + v * smallYear.colCost[j]!, 0);

describe('HiGHS on a small planting-like year', () => {
  let solver: HighsSolver;
  beforeAll(async () => {
    solver = await createHighsSolver();
  });
  afterAll(() => solver.dispose());

  it('tells of the start first, then only of better points, and bounds below them', async () => {
    const start = await roundedStart(solver, smallYear);
    const told: { objective: number; bound: number }[] = [];
    const answer = await solver.solve(
      smallYear,
      { ...limits, gapShare: 0.01 },
      start,
      (p) => told.push(p),
      never,
    );
    expect(told[0]?.objective).toBeCloseTo(costOf(start), 4);
    expect(told.length).toBeGreaterThan(1);
    for (let i = 1; i < told.length; i++) expect(told[i]!.objective).toBeLessThan(told[i - 1]!.objective);
    expect(answer.status).toBe('gap');
    expect(costOf(answer.colValue)).toBeCloseTo(answer.objective ?? Number.NaN, 3);
    expect(answer.bound ?? 0).toBeLessThan(answer.objective ?? 0);
  });

  it('stops at counted LP iterations, the same twice', async () => {
    const start = await roundedStart(solver, smallYear);
    const few = { ...limits, lpIterations: 1_500 };
    const first = await solver.solve(smallYear, few, start, () => {}, never);
    const second = await solver.solve(smallYear, few, start, () => {}, never);
    expect(first.status).toBe('limit');
    expect(first.iterations).toBeGreaterThanOrEqual(1_500);
    expect(second).toEqual(first);
  });

  it('gives a relaxation whose duals price the rows: weak duality closes', async () => {
    const { objective, colValue, rowDual } = await solver.relax(smallYear, () => false);
    expect(costOf(colValue)).toBeCloseTo(objective ?? Number.NaN, 4);
    let dual = 0;
    rowDual?.forEach((price, i) => {
      const at = price > 0 ? smallYear.rowLower[i]! : smallYear.rowUpper[i]!;
      if (Math.abs(price) > 1e-9) dual += price * at;
    });
    for (let j = 0; j < smallYear.colCost.length; j++) {
      let reduced = smallYear.colCost[j]!;
      for (let k = smallYear.starts[j]!; k < smallYear.starts[j + 1]!; k++)
        reduced -= rowDual![smallYear.indices[k]!]! * smallYear.values[k]!;
      if (Math.abs(reduced) > 1e-7)
        dual += reduced * (reduced > 0 ? smallYear.colLower[j]! : smallYear.colUpper[j]!);
    }
    expect(dual).toBeCloseTo(objective ?? Number.NaN, 3);
  });

  it('takes two tasks at once and answers both', async () => {
    const [one, two] = await Promise.all([
      solver.relax(smallYear, () => false),
      solver.relax(smallYear, () => false),
    ]);
    expect(one.objective).toBe(two.objective);
  });

  it('refuses a program whose arrays do not agree', async () => {
    const wrong = { ...smallYear, colUpper: smallYear.colUpper.slice(1) };
    await expect(solver.solve(wrong, limits, null, () => {}, never)).rejects.toThrow('as long as the costs');
    await expect(async () => solver.relax(wrong, () => false)).rejects.toThrow('as long as the costs');
  });
});

it('refuses work after dispose', async () => {
  const solver: SolverPort = await createHighsSolver();
  await solver.dispose();
  await expect(async () => solver.relax(smallYear, () => false)).rejects.toThrow('after dispose');
});
