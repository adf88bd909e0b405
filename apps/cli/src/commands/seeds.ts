import type { Day } from '@twelvemonth/basis';
import { printSeeds, renderHtml, renderText, seedCsv, seedSheetOf } from '@twelvemonth/workflows';
import { type Command, Option } from 'commander';
import { checkFileCanBeWritten, writeWholeFile } from '../run/files.ts';
import { dayOption } from '../run/option-values.ts';
import { planToPrint } from '../run/plan-for-sheets.ts';
import type { Terminal } from '../run/terminal.ts';
import { commandHelp, fileArgument, optionHelp } from '../words/help-words.ts';
import { sheetWords } from '../words/sheet-words.ts';

interface SeedFlags {
  readonly format: 'text' | 'html' | 'csv';
  readonly plan?: string;
  readonly out?: string;
  readonly today?: Day;
  readonly progress?: true;
}

async function runSeeds(file: string, flags: SeedFlags, terminal: Terminal): Promise<void> {
  if (flags.out !== undefined) checkFileCanBeWritten(flags.out);
  const { report, seeds, today } = await planToPrint(file, flags, terminal);
  const sheet = seedSheetOf(report, seeds, today);
  const printable = printSeeds(sheet, sheetWords);
  const text =
    flags.format === 'csv'
      ? seedCsv(sheet)
      : flags.format === 'html'
        ? renderHtml(printable)
        : renderText(printable);
  if (flags.out === undefined) terminal.out(text);
  else writeWholeFile(flags.out, text);
}

export function addSeeds(program: Command, terminal: Terminal): void {
  program
    .command('seeds')
    .summary(commandHelp.seeds.about)
    .description(commandHelp.seeds.about)
    .argument('<file>', fileArgument)
    .addOption(
      new Option('--format <format>', optionHelp.seedFormat).choices(['text', 'html', 'csv']).default('text'),
    )
    .option('--plan <plan.json>', optionHelp.plan)
    .option('--out <file>', optionHelp.outFile)
    .option('--today <date>', optionHelp.today, dayOption)
    .option('--progress', optionHelp.progress)
    .addHelpText('after', commandHelp.seeds.example)
    .action((file: string, flags: SeedFlags) => runSeeds(file, flags, terminal));
}
