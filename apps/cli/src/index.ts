export type { Terminal } from './run/terminal.ts';
export { runCommandLine } from './run-command-line.ts';
