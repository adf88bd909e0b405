import type { Day } from '@twelvemonth/basis';
import { plainSpaces, wrapText } from '@twelvemonth/workflows';
import { type Command, Option } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { sayWarnings, soundGarden } from '../run/load-garden.ts';
import { makePlan } from '../run/make-plan.ts';
import { dayOption, wholeOption } from '../run/option-values.ts';
import { planBeside, readStoredPlan } from '../run/stored-plan.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { fileArgument, optionHelp } from '../words/help-words.ts';
import { whatIfHelp } from '../words/what-if-help.ts';
import { type WhatIfSection, whatIfRefusal, whatIfSections } from '../words/what-if-words.ts';

interface WhatIfFlags {
  readonly lose?: string;
  readonly cover?: string;
  readonly weather?: 'late-spring' | 'dry-may';
  readonly on?: Day;
  readonly plan?: string;
  readonly members?: number;
  readonly json?: true;
}

/** A fifth of the members must be enough of them. */
const membersUsed = { usual: 30, weather: 60 } as const;
const width = 80;

const sectionText = ({ heading, lines }: WhatIfSection): string =>
  heading === null
    ? `${lines.map((line) => wrapText(line, width).join('\n')).join('\n')}\n`
    : `${heading}\n${'='.repeat(width)}\n${lines.map((line) => wrapText(`- ${line}`, width, 2).join('\n')).join('\n')}\n`;

const wrongUse = new Set([
  'nothing-asked',
  'sowing-unknown',
  'cover-unknown',
  'cover-indoors',
  'day-outside-plan',
]);

async function runWhatIf(file: string, flags: WhatIfFlags, terminal: Terminal): Promise<void> {
  if (flags.lose === undefined && flags.cover === undefined && flags.weather === undefined)
    throw new CliFailure(whatIfRefusal('nothing-asked', {}), 2);
  const sound = await soundGarden(file, null, terminal);
  const stored =
    flags.plan === undefined
      ? await planBeside(file, sound.garden, terminal)
      : await readStoredPlan(flags.plan);
  const report = stored ?? (await makePlan(sound, {}, { terminal, always: false }));
  const whatIfGarden = await workflowFunction('whatIfGarden');
  const request = {
    lose: flags.lose ?? null,
    cover: flags.cover ?? null,
    weather: flags.weather ?? null,
    onDay: flags.on ?? null,
  };
  const members = flags.members ?? (flags.weather === undefined ? membersUsed.usual : membersUsed.weather);
  const ports = {
    progress: (step: string) => {
      if (terminal.sayIsTty) terminal.status(`what if: ${step}`);
    },
    stopRequested: () => false,
  };
  const outcome = whatIfGarden(sound.garden, report, request, members, sound.daily, ports);
  terminal.status(null);
  if (outcome.kind === 'cannot')
    throw new CliFailure(whatIfRefusal(outcome.reason, outcome.detail), wrongUse.has(outcome.reason) ? 2 : 1);
  if (flags.json === true) terminal.out(`${JSON.stringify(outcome.value, null, 2)}\n`);
  else terminal.out(plainSpaces(whatIfSections(outcome.value).map(sectionText).join('\n')));
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addWhatIf(program: Command, terminal: Terminal): void {
  program
    .command('what-if')
    .summary(whatIfHelp.about)
    .description(whatIfHelp.about)
    .argument('<file>', fileArgument)
    .option('--lose <sowing>', whatIfHelp.lose)
    .option('--cover <name>', whatIfHelp.cover)
    .addOption(new Option('--weather <what>', whatIfHelp.weather).choices(['late-spring', 'dry-may']))
    .option('--on <date>', whatIfHelp.on, dayOption)
    .option('--plan <file>', whatIfHelp.plan)
    .option('--members <n>', whatIfHelp.members, wholeOption(4, 200))
    .option('--json', optionHelp.json)
    .addHelpText('after', whatIfHelp.example)
    .action((file: string, flags: WhatIfFlags) => runWhatIf(file, flags, terminal));
}
