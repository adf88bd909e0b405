import type { Day } from '@twelvemonth/basis';
import { plainSpaces } from '@twelvemonth/workflows';
import type { Command } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { sayWarnings, soundGarden } from '../run/load-garden.ts';
import { dayOption, wholeOption } from '../run/option-values.ts';
import { planDefaults } from '../run/plan-defaults.ts';
import type { Terminal } from '../run/terminal.ts';
import { unknownKind } from '../run/unknown-kind.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { forecastText } from '../words/forecast-words.ts';
import { commandHelp, fileArgument, optionHelp, routes } from '../words/help-words.ts';
import { issueText } from '../words/issue-words.ts';

interface ForecastFlags {
  readonly kind: string;
  readonly sow: Day;
  readonly route?: string;
  readonly place?: string;
  readonly count?: number;
  readonly members: number;
  readonly seed: number;
  readonly json?: true;
}

/** What was asked for came from an option, not from a line of the file. */
const optionOf = (where: string): string =>
  ['kind', 'sow', 'route', 'place', 'count'].includes(where) ? `--${where}` : where;

async function runForecast(file: string, flags: ForecastFlags, terminal: Terminal): Promise<void> {
  const sound = await soundGarden(file, null, terminal);
  const kindOf = await workflowFunction('kindOf');
  if (kindOf(sound.garden, flags.kind) === undefined) throw unknownKind(flags.kind);
  const forecastGarden = await workflowFunction('forecastGarden');
  const request = {
    kind: flags.kind,
    sowDay: flags.sow,
    route: flags.route ?? null,
    place: flags.place ?? null,
    count: flags.count ?? null,
    memberCount: flags.members,
    seed: flags.seed,
  };
  const { report, issues } = forecastGarden(sound.garden, request, sound.daily);
  for (const issue of issues)
    if (issue.severity !== 'note') terminal.say(issueText({ ...issue, where: optionOf(issue.where) }, file));
  if (report === null) throw new CliFailure(`${file}: no forecast could be made.`);
  if (flags.json === true) terminal.out(`${JSON.stringify(report, null, 2)}\n`);
  else terminal.out(plainSpaces(`${forecastText(report).join('\n')}\n`));
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addForecast(program: Command, terminal: Terminal): void {
  program
    .command('forecast')
    .summary(commandHelp.forecast.about)
    .description(commandHelp.forecast.about)
    .argument('<file>', fileArgument)
    .requiredOption('--kind <id>', optionHelp.kind)
    .requiredOption('--sow <date>', optionHelp.sow, dayOption)
    .option('--route <stages>', `${optionHelp.route}: ${routes.join(', ')}`)
    .option('--place <id>', optionHelp.place)
    .option('--count <n>', optionHelp.count, wholeOption(1, 100_000))
    .option('--members <n>', optionHelp.members, wholeOption(4, 200), planDefaults.memberCount)
    .option('--seed <n>', optionHelp.seed, wholeOption(0, 2_147_483_647), planDefaults.seed)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.forecast.example)
    .action((file: string, flags: ForecastFlags) => runForecast(file, flags, terminal));
}
