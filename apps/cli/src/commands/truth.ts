import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Command } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { commandHelp, optionHelp, truthIsElsewhere } from '../words/help-words.ts';

/** The repository around this file, if there is one: from the source or from the bundle. */
function reportScript(): string | null {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (let up = 0; up < 5; up++) {
    const script = join(folder, 'truth', 'report.ts');
    if (existsSync(script)) return script;
    folder = dirname(folder);
  }
  return null;
}

/** The report is a program of its own: the command line imports nothing from truth/. */
function runTruth(asJson: boolean): Promise<number> {
  const script = reportScript();
  if (script === null) throw new CliFailure(truthIsElsewhere);
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...(asJson ? ['--json'] : [])], {
    cwd: dirname(dirname(script)),
    stdio: 'inherit',
  });
  return new Promise((resolve, reject) => {
    child.on('error', () => reject(new CliFailure(truthIsElsewhere)));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

export function addTruth(program: Command, exit: (code: number) => void): void {
  program
    .command('truth')
    .summary(commandHelp.truth.about)
    .description(commandHelp.truth.about)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.truth.example)
    .action(async (options: { json?: boolean }) =>
      exit((await runTruth(options.json === true)) === 0 ? 0 : 1),
    );
}
