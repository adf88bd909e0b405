import type { LinearProgram, SolveLimits, SolverPort } from '../solver-port.ts';
import {
  endlessProgram,
  linearInfeasible,
  smallGrowth,
  smallKnapsack,
  smallLinear,
  wholeInfeasible,
} from './contract-programs.ts';

/** The part of a test runner that the contract needs; the runner itself stays out of this package. */
export interface TestKit {
  /** Milliseconds from any fixed moment. */
  clockMs(): number;
  describe(name: string, body: () => void): void;
  it(name: string, body: () => Promise<void>): void;
  expect(value: unknown): {
    toBe(expected: unknown): void;
    toEqual(expected: unknown): void;
    toBeCloseTo(expected: number, digits?: number): void;
    toBeLessThanOrEqual(expected: number): void;
    toBeGreaterThan(expected: number): void;
    toBeNull(): void;
  };
}

const exact: SolveLimits = {
  gapShare: 0,
  nodes: 100_000,
  lpIterations: null,
  timeLimitSeconds: null,
  randomSeed: 1,
};
const onlyNodes = (nodes: number): SolveLimits => ({ ...exact, nodes });
const never = (): boolean => false;
const quiet = (): void => {};
const longestStopMs = 20_000;

/** What every solver adapter must do. Call it from a test file with the runner's own describe, it and expect. */
/** What the row duals prove: no point costs less. Reduced costs take the better bound of their column. */
function boundByDuals(program: LinearProgram, rowDual: Float64Array): number {
  const times = (factor: number, bound: number): number => (factor === 0 ? 0 : factor * bound);
  let bound = 0;
  rowDual.forEach((dual, row) => {
    bound += times(dual, dual > 0 ? program.rowLower[row]! : program.rowUpper[row]!);
  });
  program.colCost.forEach((cost, column) => {
    let reduced = cost;
    for (let e = program.starts[column]!; e < program.starts[column + 1]!; e++)
      reduced -= program.values[e]! * rowDual[program.indices[e]!]!;
    const settled = Math.abs(reduced) < 1e-9 ? 0 : reduced;
    bound += times(settled, settled > 0 ? program.colLower[column]! : program.colUpper[column]!);
  });
  return bound;
}

export function solverContract(name: string, makeSolver: () => Promise<SolverPort>, kit: TestKit): void {
  const { describe, it, expect, clockMs } = kit;
  const withSolver = (body: (solver: SolverPort) => Promise<void>) => async () => {
    const solver = await makeSolver();
    try {
      await body(solver);
    } finally {
      await solver.dispose();
    }
  };

  describe(`solver contract: ${name}`, () => {
    it(
      'finds the known optimum of a linear program',
      withSolver(async (solver) => {
        const answer = await solver.solve(smallLinear, exact, null, quiet, never);
        expect(answer.status).toBe('optimal');
        expect(answer.objective).toBeCloseTo(-11, 6);
        expect(answer.bound).toBeCloseTo(-11, 6);
        expect(rounded(answer.colValue)).toEqual([3, 1]);
      }),
    );
    it(
      'gives the relaxation with duals that prove it',
      withSolver(async (solver) => {
        const relaxed = await solver.relax(smallLinear, () => false);
        expect(relaxed.status).toBe('optimal');
        expect(relaxed.objective).toBeCloseTo(-11, 6);
        expect(boundByDuals(smallLinear, relaxed.rowDual!)).toBeCloseTo(-11, 6);
      }),
    );
    it(
      'grows a kept relaxation by rows and columns and solves it again, with other work in between',
      withSolver(async (solver) => {
        const kept = await solver.keepRelaxation(smallLinear);
        expect((await kept.relax(never)).objective).toBeCloseTo(-11, 6);
        await solver.relax(smallKnapsack, never);
        await kept.grow(smallGrowth);
        const grown = await kept.relax(never);
        expect(rounded(grown.colValue)).toEqual([2, 0, 2]);
        expect(grown.objective).toBeCloseTo(-16, 6);
        await kept.change({
          columns: Int32Array.of(0, 2),
          lower: Float64Array.of(0, 0),
          upper: Float64Array.of(1, 2),
          cost: Float64Array.of(-3, 0),
        });
        const changed = await kept.relax(never);
        expect(rounded(changed.colValue).slice(0, 2)).toEqual([1, 1.66667]);
        expect(changed.objective).toBeCloseTo(-19 / 3, 6);
        await kept.close();
        expect((await solver.relax(smallLinear, never)).objective).toBeCloseTo(-11, 6);
      }),
    );
    it(
      'finds the known optimum over whole columns, exactly whole',
      withSolver(async (solver) => {
        const answer = await solver.solve(smallKnapsack, exact, null, quiet, never);
        expect(answer.status).toBe('optimal');
        expect(answer.objective).toBeCloseTo(-90, 6);
        expect([...(answer.colValue ?? [])]).toEqual([0, 1, 0, 1]);
      }),
    );
    it(
      'relaxes whole columns: the relaxation is a bound on the whole optimum',
      withSolver(async (solver) => {
        const relaxed = await solver.relax(smallKnapsack, () => false);
        expect(relaxed.objective).toBeCloseTo(-105, 6);
      }),
    );
    it(
      'says infeasible, whole or linear, without a point',
      withSolver(async (solver) => {
        for (const program of [wholeInfeasible, linearInfeasible]) {
          const answer = await solver.solve(program, exact, null, quiet, never);
          expect(answer.status).toBe('infeasible');
          expect(answer.colValue).toBeNull();
          expect(answer.objective).toBeNull();
        }
        expect((await solver.relax(linearInfeasible, () => false)).status).toBe('infeasible');
      }),
    );
    it(
      'takes a start: with next to no work allowed the answer is no worse, feasible and above its bound',
      withSolver(async (solver) => {
        const { program, start } = endlessProgram();
        const answer = await solver.solve(program, onlyNodes(1), start, quiet, never);
        expect(answer.objective ?? Number.NaN).toBeLessThanOrEqual(costOf(program, start));
        expect(answer.objective).toBeCloseTo(costOf(program, answer.colValue ?? new Float64Array(0)), 4);
        expect(largestViolation(program, answer.colValue)).toBeLessThanOrEqual(1e-5);
        expect(answer.bound ?? 0).toBeLessThanOrEqual((answer.objective ?? Number.NaN) + 1e-6);
      }),
    );
    it(
      'stops at counted work and says so, the same twice for one seed',
      withSolver(async (solver) => {
        const { program } = endlessProgram();
        const first = await solver.solve(program, onlyNodes(40), null, quiet, never);
        await solver.relax(smallKnapsack, () => false);
        const second = await solver.solve(program, onlyNodes(40), null, quiet, never);
        expect(first.status).toBe('limit');
        expect(first.iterations).toBeGreaterThan(0);
        expect(first.colValue === null).toBe(false);
        expect([...(second.colValue ?? [])]).toEqual([...(first.colValue ?? [])]);
        expect([second.objective, second.bound, second.iterations]).toEqual([
          first.objective,
          first.bound,
          first.iterations,
        ]);
      }),
    );
    it(
      'stops soon when asked, with the best point so far, and works on afterwards',
      withSolver(async (solver) => {
        const { program, start } = endlessProgram();
        let improvements = 0;
        const begunMs = clockMs();
        const answer = await solver.solve(
          program,
          { ...exact, nodes: 2_000_000_000 },
          start,
          () => {
            improvements++;
          },
          () => clockMs() - begunMs > 300,
        );
        expect(answer.status).toBe('stopped');
        expect(clockMs() - begunMs).toBeLessThanOrEqual(longestStopMs);
        expect(improvements).toBeGreaterThan(0);
        expect(largestViolation(program, answer.colValue)).toBeLessThanOrEqual(1e-5);
        const next = await solver.solve(smallKnapsack, exact, null, quiet, never);
        expect(next.objective).toBeCloseTo(-90, 6);
      }),
    );
  });
}

const rounded = (point: Float64Array | null): number[] =>
  [...(point ?? [])].map((v) => Math.round(v * 1e5) / 1e5 + 0);

function costOf(program: LinearProgram, point: Float64Array): number {
  return program.colCost.reduce((sum, cost, j) => sum + cost * (point[j] ?? Number.NaN), 0);
}

function largestViolation(program: LinearProgram, point: Float64Array | null): number {
  if (point === null) return Number.POSITIVE_INFINITY;
  const rowValue = new Float64Array(program.rowLower.length);
  let worst = 0;
  point.forEach((value, j) => {
    worst = Math.max(worst, program.colLower[j]! - value, value - program.colUpper[j]!);
    if (program.colWhole[j] === 1) worst = Math.max(worst, Math.abs(value - Math.round(value)));
    for (let k = program.starts[j]!; k < program.starts[j + 1]!; k++)
      rowValue[program.indices[k]!]! += program.values[k]! * value;
  });
  rowValue.forEach((value, i) => {
    worst = Math.max(worst, program.rowLower[i]! - value, value - program.rowUpper[i]!);
  });
  return worst;
}
