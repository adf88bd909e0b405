import { invariant } from '@twelvemonth/basis';
import type { LinearProgram, RelaxAnswer, SolverAnswer, SolverPort } from '../solver-port.ts';

/** A solver that improves nothing: it prices the start and gives it back. For tests of what stands around a solver. */
export function stubSolver(): SolverPort {
  return {
    solve: (program, _limits, start, onProgress) => {
      if (start === null) return Promise.resolve(nothingFound);
      const objective = costOf(program, start);
      onProgress({ objective, bound: Number.NEGATIVE_INFINITY });
      return Promise.resolve({ ...nothingFound, status: 'limit', colValue: start.slice(), objective });
    },
    relax: () => Promise.resolve(notRelaxed),
    keepRelaxation: () =>
      Promise.resolve({
        grow: () => Promise.resolve(),
        change: () => Promise.resolve(),
        relax: () => Promise.resolve(notRelaxed),
        close: () => Promise.resolve(),
      }),
    dispose: () => Promise.resolve(),
  };
}

const notRelaxed: RelaxAnswer = {
  status: 'failed',
  colValue: null,
  objective: null,
  rowDual: null,
  iterations: 0,
};

const nothingFound: SolverAnswer = {
  status: 'failed',
  colValue: null,
  objective: null,
  bound: null,
  iterations: 0,
};

function costOf(program: LinearProgram, point: Float64Array): number {
  invariant(point.length === program.colCost.length, 'a start has one value a column', {
    columns: program.colCost.length,
    values: point.length,
  });
  let cost = 0;
  for (let j = 0; j < point.length; j++) cost += program.colCost[j]! * point[j]!;
  return cost;
}
