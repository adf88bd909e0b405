import type { KindOf } from './changed-kinds.ts';
import type { Constant } from './constant.ts';

/** One observation of the outside world; never one of truth/held-out. */
export interface Observation {
  readonly id: string;
  readonly expected: number;
  /** How far off it may lie for a model that is right: the row's tolerance taken as two standard deviations. */
  readonly sd: number;
  readonly source: string;
}

/** Constants that are fitted together to observations, and how the engine answers them. */
export interface CalibrationProblem {
  readonly name: string;
  readonly about: string;
  readonly constants: readonly Constant[];
  readonly observations: readonly Observation[];
  /** The engine's answers in the order of the observations. */
  predict(kindOf: KindOf): readonly number[];
}
