import type {
  ColumnChanges,
  LinearProgram,
  ProgramGrowth,
  RelaxAnswer,
  SolveLimits,
  SolverAnswer,
  SolverProgress,
} from '@twelvemonth/planning';
import type { HighsOptions } from './highs-options.ts';

/**
 * What the calling thread and the worker (highs-worker.mjs) say to each other. The worker is plain JavaScript so that
 * the same file runs from source and beside a bundle; these types are its contract.
 */
export interface SolveTask {
  readonly kind: 'solve';
  readonly program: LinearProgram;
  readonly limits: SolveLimits;
  /** LP iterations over the whole search after which it stops, or null for no such limit. */
  readonly lpIterations: number | null;
  readonly start: Float64Array | null;
  readonly options: HighsOptions;
}

export interface RelaxTask {
  readonly kind: 'relax';
  readonly program: LinearProgram;
  readonly options: HighsOptions;
}

export interface KeepTask {
  readonly kind: 'keep';
  readonly program: LinearProgram;
  readonly options: HighsOptions;
}

export interface GrowTask {
  readonly kind: 'grow';
  readonly growth: ProgramGrowth;
}

export type WorkerTask =
  | SolveTask
  | RelaxTask
  | KeepTask
  | GrowTask
  | { readonly kind: 'change'; readonly changes: ColumnChanges }
  | { readonly kind: 'relax-kept' }
  | { readonly kind: 'drop-kept' };

/** A better point than any before, with the work done so far. */
export interface ImprovedPoint {
  readonly kind: 'improved';
  readonly progress: SolverProgress;
  readonly colValue: Float64Array | null;
  readonly iterations: number;
}

export type FinalMessage =
  | { readonly kind: 'solved'; readonly answer: SolverAnswer }
  | { readonly kind: 'relaxed'; readonly answer: RelaxAnswer }
  | { readonly kind: 'done' }
  | { readonly kind: 'refused'; readonly reason: string };

export type WorkerMessage = { readonly kind: 'ready' } | ImprovedPoint | FinalMessage;
