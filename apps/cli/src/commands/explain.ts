import type { Day } from '@twelvemonth/basis';
import type { Command } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { findSowing } from '../run/find-sowing.ts';
import { sayWarnings } from '../run/load-garden.ts';
import { dayOption } from '../run/option-values.ts';
import { planToArgue } from '../run/plan-to-argue.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { partsText } from '../words/argue-text.ts';
import { sowingParts } from '../words/explain-words.ts';
import { commandHelp, explainWhat, fileArgument, optionHelp } from '../words/help-words.ts';

interface ExplainFlags {
  readonly plan?: string;
  readonly today?: Day;
  readonly json?: true;
}

async function runExplain(
  file: string,
  what: string,
  flags: ExplainFlags,
  terminal: Terminal,
): Promise<void> {
  const { open, sound } = await planToArgue(file, flags, 'make', terminal);
  const today = Math.max(open.problem.fromDay, flags.today ?? open.problem.fromDay);
  const explainSowing = await workflowFunction('explainSowing');
  const id = findSowing(open, what, today);
  const reasons = explainSowing(open, id, today);
  if (reasons === null) throw new CliFailure(`${what}: ${id} is in the plan but not in the garden file.`);
  if (flags.json === true) terminal.out(`${JSON.stringify(reasons, null, 2)}\n`);
  else {
    const { title, parts } = sowingParts(reasons);
    terminal.out(partsText(title, parts));
  }
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addExplain(program: Command, terminal: Terminal): void {
  program
    .command('explain')
    .summary(commandHelp.explain.about)
    .description(commandHelp.explain.about)
    .argument('<file>', fileArgument)
    .argument('<what>', explainWhat)
    .option('--plan <plan.json>', optionHelp.planToArgue)
    .option('--today <date>', optionHelp.todayArgue, dayOption)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.explain.example)
    .action((file: string, what: string, flags: ExplainFlags) => runExplain(file, what, flags, terminal));
}
