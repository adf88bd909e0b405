import type { Day } from '@twelvemonth/basis';
import type { Command } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { sayWarnings } from '../run/load-garden.ts';
import { dayOption, wholeOption } from '../run/option-values.ts';
import { planToArgue } from '../run/plan-to-argue.ts';
import type { Terminal } from '../run/terminal.ts';
import { unknownKind } from '../run/unknown-kind.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { partsText } from '../words/argue-text.ts';
import { commandHelp, fileArgument, optionHelp, standsForYearsText } from '../words/help-words.ts';
import { slotsParts } from '../words/slots-words.ts';

interface SlotsFlags {
  readonly kind: string;
  readonly plan?: string;
  readonly count?: number;
  readonly most: number;
  readonly today?: Day;
  readonly json?: true;
}

const usualMost = 5;

async function runSlots(file: string, flags: SlotsFlags, terminal: Terminal): Promise<void> {
  const { open, sound } = await planToArgue(file, flags, 'standing-alone', terminal);
  const kindOf = await workflowFunction('kindOf');
  const kind = kindOf(sound.garden, flags.kind);
  if (kind === undefined) throw unknownKind(flags.kind);
  if (kind.perennial) throw new CliFailure(standsForYearsText(kind.name));
  const slotsFor = await workflowFunction('slotsFor');
  const { fromDay } = open.problem;
  const report = slotsFor(open, {
    kind: kind.id,
    plants: flags.count ?? null,
    most: flags.most,
    today: Math.max(fromDay, flags.today ?? fromDay),
  });
  if (report === null) throw unknownKind(flags.kind);
  if (flags.json === true) terminal.out(`${JSON.stringify(report, null, 2)}\n`);
  else {
    const { title, parts } = slotsParts(report);
    terminal.out(partsText(title, parts));
  }
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addSlots(program: Command, terminal: Terminal): void {
  program
    .command('slots')
    .summary(commandHelp.slots.about)
    .description(commandHelp.slots.about)
    .argument('<file>', fileArgument)
    .requiredOption('--kind <id>', optionHelp.kind)
    .option('--plan <plan.json>', optionHelp.planToArgue)
    .option('--count <n>', optionHelp.slotPlants, wholeOption(1, 100_000))
    .option('--most <n>', optionHelp.slotMost, wholeOption(1, 50), usualMost)
    .option('--today <date>', optionHelp.todayArgue, dayOption)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.slots.example)
    .action((file: string, flags: SlotsFlags) => runSlots(file, flags, terminal));
}
