/** Options as HiGHS names them. */
export type OptionValues = Readonly<Record<string, string | number | boolean>>;

export interface HighsOptions {
  /** For programs without whole columns, and for relaxations. */
  readonly lp: OptionValues;
  /** From the first growth of a kept relaxation on. */
  readonly grownLp: OptionValues;
  /** For programs with whole columns. */
  readonly mip: OptionValues;
}

/** Chosen by measurement: docs/decisions/0002-solver-options.md. */
export const measuredOptions: HighsOptions = {
  lp: { solver: 'simplex', presolve: 'off' },
  grownLp: { simplex_strategy: 4 },
  mip: {},
};
