export { type HighsOptions, measuredOptions, type OptionValues } from './highs-options.ts';
export { createHighsSolver, type HighsLimits, type HighsSolver } from './highs-solver.ts';
