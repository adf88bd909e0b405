import { processTerminal } from './run/terminal.ts';
import { runCommandLine } from './run-command-line.ts';

/** A reader that has seen enough (`| head`) is no error. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

process.exitCode = await runCommandLine(process.argv.slice(2), processTerminal());
