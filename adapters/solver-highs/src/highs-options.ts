/** Options as HiGHS names them. */
export type OptionValues = Readonly<Record<string, string | number | boolean>>;

export interface HighsOptions {
  /** For programs without whole columns, and for relaxations. */
  readonly lp: OptionValues;
  /** After a growth of a kept relaxation, or new costs: its point still fits. */
  readonly grownLp: OptionValues;
  /** After new bounds alone: its prices still hold. */
  readonly boundedLp: OptionValues;
  /** For programs with whole columns. */
  readonly mip: OptionValues;
}

/** Chosen by measurement: docs/decisions/0002-solver-options.md. */
export const measuredOptions: HighsOptions = {
  lp: { solver: 'simplex', presolve: 'off' },
  grownLp: { simplex_strategy: 4 },
  boundedLp: { simplex_strategy: 1 },
  mip: { presolve: 'off' },
};
