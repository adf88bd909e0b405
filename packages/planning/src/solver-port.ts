/** A mixed-integer linear program in column order (CSC), and how it may be solved. The solver is an argument. */
export interface LinearProgram {
  readonly colCost: Float64Array;
  readonly colLower: Float64Array;
  readonly colUpper: Float64Array;
  /** 1 where the column is whole. */
  readonly colWhole: Uint8Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
}

/**
 * More of a program: new rows, and new columns in column order whose indices may name old rows and new ones. An empty
 * program grown by it is a whole program, so the two have one shape.
 */
export type ProgramGrowth = LinearProgram;

export interface RelaxAnswer {
  readonly status: 'optimal' | 'infeasible' | 'failed';
  readonly colValue: Float64Array | null;
  readonly objective: number | null;
  readonly rowDual: Float64Array | null;
  readonly iterations: number;
}

/** `cost` null: as they were. */
export interface ColumnChanges {
  readonly columns: Int32Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly cost: Float64Array | null;
}

/** A relaxation that the solver keeps, to be made larger and solved again from where it stood. */
export interface KeptRelaxation {
  grow(growth: ProgramGrowth): Promise<void>;
  /** New bounds and costs of some columns, index by index. */
  change(columns: ColumnChanges): Promise<void>;
  /** `iterations` counts this call alone; 'failed' when stopped before its end. */
  relax(stopRequested: () => boolean): Promise<RelaxAnswer>;
  close(): Promise<void>;
}

export interface SolveLimits {
  readonly gapShare: number;
  /** Counted work, not seconds, so that the same program gives the same answer. */
  readonly nodes: number;
  /** Simplex iterations in all; null: not limited. */
  readonly lpIterations: number | null;
  readonly timeLimitSeconds: number | null;
  readonly randomSeed: number;
}

export interface SolverAnswer {
  readonly status: 'optimal' | 'gap' | 'limit' | 'time' | 'stopped' | 'infeasible' | 'failed';
  readonly colValue: Float64Array | null;
  readonly objective: number | null;
  /** Proven lower bound, null when none. */
  readonly bound: number | null;
  readonly iterations: number;
}

export interface SolverProgress {
  readonly objective: number;
  readonly bound: number;
}

export interface SolverPort {
  /** Solves; `start` is a feasible point or null. Progress and stop are polled between improvements. */
  solve(
    program: LinearProgram,
    limits: SolveLimits,
    start: Float64Array | null,
    onProgress: (progress: SolverProgress) => void,
    stopRequested: () => boolean,
  ): Promise<SolverAnswer>;
  /** The relaxation only (no whole columns): value, primal point and row duals; 'failed' when stopped before its end. */
  relax(program: LinearProgram, stopRequested: () => boolean): Promise<RelaxAnswer>;
  /** One kept relaxation at a time; other calls may come between its steps. */
  keepRelaxation(program: LinearProgram): Promise<KeptRelaxation>;
  dispose(): Promise<void>;
}
