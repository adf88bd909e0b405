import type { Day } from '@twelvemonth/basis';
import {
  type CalendarMonth,
  darkMonthsCsv,
  darkMonthsOf,
  dayOf,
  eventsOfMonth,
  fridgeCsv,
  fridgePageOf,
  mondayBefore,
  monthCsv,
  monthOfWeek,
  monthSheetOf,
  type Printable,
  printDarkMonths,
  printFridge,
  printMonth,
  printNeighbour,
  renderHtml,
  renderIcs,
  renderText,
} from '@twelvemonth/workflows';
import { type Command, Option } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { checkFileCanBeWritten, writeWholeFile } from '../run/files.ts';
import { dayOption, monthOption } from '../run/option-values.ts';
import { type PlanToPrint, planToPrint } from '../run/plan-for-sheets.ts';
import type { Terminal } from '../run/terminal.ts';
import {
  commandHelp,
  fileArgument,
  icsForMonthsOnly,
  neighbourNeedsWeek,
  optionHelp,
  outsidePlanText,
} from '../words/help-words.ts';
import { sheetWords } from '../words/sheet-words.ts';

type Format = 'text' | 'html' | 'csv' | 'ics';

interface SheetFlags {
  readonly month?: CalendarMonth;
  readonly darkMonths?: true;
  readonly fridge?: Day;
  readonly neighbour?: true;
  readonly format: Format;
  readonly plan?: string;
  readonly out?: string;
  readonly today?: Day;
  readonly progress?: true;
}

function inFormat(
  format: Format,
  printable: Printable,
  csv: () => string,
  ics: (() => string) | null,
): string {
  switch (format) {
    case 'text':
      return renderText(printable);
    case 'html':
      return renderHtml(printable);
    case 'csv':
      return csv();
    case 'ics':
      if (ics === null) throw new CliFailure(icsForMonthsOnly, 2);
      return ics();
  }
}

function sheetText(flags: SheetFlags, { report, seeds, today }: PlanToPrint): string {
  const weeks = report.weeks.map((week) => dayOf(week.weekOf));
  const outside = (): CliFailure =>
    new CliFailure(outsidePlanText(report.weeks[0]?.weekOf ?? '', report.weeks.at(-1)?.weekOf ?? ''));
  if (flags.darkMonths === true) {
    const page = darkMonthsOf(report, today);
    return inFormat(flags.format, printDarkMonths(page, sheetWords), () => darkMonthsCsv(page), null);
  }
  if (flags.fridge !== undefined) {
    if (!weeks.includes(mondayBefore(flags.fridge))) throw outside();
    const page = fridgePageOf(report, flags.fridge, today);
    const print = flags.neighbour === true ? printNeighbour : printFridge;
    return inFormat(flags.format, print(page, sheetWords), () => fridgeCsv(page), null);
  }
  const month = flags.month ?? monthOfWeek(mondayBefore(today));
  const known = weeks.map(monthOfWeek);
  if (!known.some((m) => m.year === month.year && m.month === month.month)) throw outside();
  const sheet = monthSheetOf(report, { month, today, seeds });
  const medium = flags.format === 'html' ? 'page' : 'text';
  return inFormat(
    flags.format,
    printMonth(sheet, sheetWords, medium),
    () => monthCsv(sheet),
    () =>
      renderIcs(
        eventsOfMonth(sheet, sheetWords),
        report.garden.household,
        dayOf(report.from),
        sheetWords.language,
      ),
  );
}

async function runSheet(file: string, flags: SheetFlags, terminal: Terminal): Promise<void> {
  const noMonth = flags.darkMonths === true || flags.fridge !== undefined;
  if (flags.format === 'ics' && noMonth) throw new CliFailure(icsForMonthsOnly, 2);
  if (flags.neighbour === true && flags.fridge === undefined) throw new CliFailure(neighbourNeedsWeek, 2);
  if (flags.out !== undefined) checkFileCanBeWritten(flags.out);
  const text = sheetText(flags, await planToPrint(file, flags, terminal));
  if (flags.out === undefined) terminal.out(text);
  else writeWholeFile(flags.out, text);
}

export function addSheet(program: Command, terminal: Terminal): void {
  program
    .command('sheet')
    .summary(commandHelp.sheet.about)
    .description(commandHelp.sheet.about)
    .argument('<file>', fileArgument)
    .addOption(
      new Option('--month <month>', optionHelp.month)
        .argParser(monthOption)
        .conflicts(['darkMonths', 'fridge']),
    )
    .addOption(new Option('--dark-months', optionHelp.dark).conflicts(['month', 'fridge']))
    .addOption(
      new Option('--fridge <date>', optionHelp.fridge)
        .argParser(dayOption)
        .conflicts(['month', 'darkMonths']),
    )
    .addOption(new Option('--neighbour', optionHelp.neighbour).conflicts(['month', 'darkMonths']))
    .addOption(
      new Option('--format <format>', optionHelp.format)
        .choices(['text', 'html', 'csv', 'ics'])
        .default('text'),
    )
    .option('--plan <plan.json>', optionHelp.plan)
    .option('--out <file>', optionHelp.outFile)
    .option('--today <date>', optionHelp.today, dayOption)
    .option('--progress', optionHelp.progress)
    .addHelpText('after', commandHelp.sheet.example)
    .action((file: string, flags: SheetFlags) => runSheet(file, flags, terminal));
}
