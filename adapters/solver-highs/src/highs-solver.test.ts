import { solverContract } from '@twelvemonth/planning';
import { describe, expect, it } from 'vitest';
import { createHighsSolver } from './highs-solver.ts';

solverContract('HiGHS in a worker thread', () => createHighsSolver(), {
  describe,
  it,
  expect,
  clockMs: () => performance.now(),
});
