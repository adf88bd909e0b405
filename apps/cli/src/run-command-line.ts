import { Command, CommanderError } from 'commander';
import { addBatch } from './commands/batch.ts';
import { addCheck } from './commands/check.ts';
import { addClimate } from './commands/climate.ts';
import { addCompare } from './commands/compare.ts';
import { addExplain } from './commands/explain.ts';
import { addForecast } from './commands/forecast.ts';
import { addKinds } from './commands/kinds.ts';
import { addPlan } from './commands/plan.ts';
import { addProbe } from './commands/probe.ts';
import { addReplan } from './commands/replan.ts';
import { addSeeds } from './commands/seeds.ts';
import { addSheet } from './commands/sheet.ts';
import { addSlots } from './commands/slots.ts';
import { addTruth } from './commands/truth.ts';
import { addWhatIf } from './commands/what-if.ts';
import { CliFailure } from './run/cli-failure.ts';
import type { Terminal } from './run/terminal.ts';
import { brokenText, programHelp } from './words/help-words.ts';

function programOf(terminal: Terminal, exit: (code: number) => void): Command {
  const program = new Command('twelvemonth')
    .description(programHelp.about)
    .version('0.1.0')
    .showHelpAfterError('(add --help for what can be said here)')
    .showSuggestionAfterError()
    .configureHelp({ helpWidth: 80 })
    .configureOutput({
      writeOut: (text) => terminal.out(text),
      writeErr: (text) => terminal.say(text.trimEnd()),
    })
    .exitOverride()
    .addHelpText('after', programHelp.start);
  addPlan(program, terminal);
  addReplan(program, terminal);
  addCompare(program, terminal);
  addWhatIf(program, terminal);
  addBatch(program, terminal, exit);
  addForecast(program, terminal);
  addExplain(program, terminal);
  addSheet(program, terminal);
  addSlots(program, terminal);
  addCheck(program, terminal, exit);
  addClimate(program, terminal);
  addKinds(program, terminal);
  addSeeds(program, terminal);
  addProbe(program, terminal, exit);
  addTruth(program, exit);
  for (const command of program.commands) command.copyInheritedSettings(program);
  return program;
}

/** Runs one command and answers with its exit code. Never throws. */
export async function runCommandLine(argv: readonly string[], terminal: Terminal): Promise<number> {
  let exitCode = 0;
  try {
    const program = programOf(terminal, (code) => {
      exitCode = code;
    });
    if (argv.length === 0) {
      program.outputHelp();
      return 2;
    }
    await program.parseAsync([...argv], { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (process.env.TWELVEMONTH_DEBUG !== undefined && error instanceof Error)
      terminal.say(error.stack ?? error.message);
    if (error instanceof CliFailure) {
      terminal.say(error.message);
      return error.exitCode;
    }
    terminal.say(brokenText(error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error)));
    return 1;
  }
}
