export { type HighsOptions, measuredOptions } from './highs-options.ts';
export { createHighsSolver, type HighsLimits, type HighsSolver } from './highs-solver.ts';
