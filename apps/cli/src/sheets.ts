/** The one place where the command line takes its sheets from. */
export * from '../../../packages/workflows/src/sheets/index.ts';
