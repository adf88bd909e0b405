import type { SolverPort } from '@twelvemonth/planning';
import type { LastPlanWish } from './replan/plan-again.ts';

export interface PlanOptions {
  readonly fromDay: number;
  readonly weeks: number;
  readonly memberCount: number;
  readonly checkMemberCount: number;
  readonly seed: number;
  /** Counted LP iterations allowed, in thousands. */
  readonly effort: number;
  /** Safety net by the clock, seconds; null: none. */
  readonly timeLimitSeconds: number | null;
  /** The plan so far, when it is made again. */
  readonly last?: LastPlanWish | null;
}

export interface PlanProgress {
  readonly step: 'weather' | 'candidates' | 'greedy' | 'program' | 'beds' | 'check' | 'explain';
  /** 0–1 within the step, or null where nobody can say. */
  readonly doneShare: number | null;
  readonly bestGapShare: number | null;
}

export interface PlanPorts {
  readonly solver: SolverPort | null;
  readonly progress: (progress: PlanProgress) => void;
  readonly stopRequested: () => boolean;
  /** Seconds since the run began: the app's clock, only for the safety net and the report. */
  readonly elapsedSeconds: () => number;
}
