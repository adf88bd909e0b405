import { expect, it } from 'vitest';
import { smallKnapsack } from './contract-programs.ts';
import { stubSolver } from './stub-solver.ts';

const limits = { gapShare: 0, nodes: 1, lpIterations: null, timeLimitSeconds: null, randomSeed: 1 };

it('gives back the start with its price', async () => {
  const told: number[] = [];
  const start = Float64Array.of(1, 0, 0, 1);
  const answer = await stubSolver().solve(
    smallKnapsack,
    limits,
    start,
    (p) => told.push(p.objective),
    () => false,
  );
  expect(answer.status).toBe('limit');
  expect(answer.objective).toBe(-60);
  expect(answer.colValue).toEqual(start);
  expect(answer.colValue).not.toBe(start);
  expect(told).toEqual([-60]);
});

it('has nothing to give without a start', async () => {
  const answer = await stubSolver().solve(
    smallKnapsack,
    limits,
    null,
    () => {},
    () => false,
  );
  expect(answer.status).toBe('failed');
  expect(answer.colValue).toBeNull();
});
