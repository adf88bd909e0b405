import { basename } from 'node:path';
import type { Day } from '@twelvemonth/basis';
import type { Command } from 'commander';
import { checkFolder } from '../run/files.ts';
import { sayWarnings, soundGarden } from '../run/load-garden.ts';
import { makePlan } from '../run/make-plan.ts';
import { dayOption } from '../run/option-values.ts';
import { writePlanFiles } from '../run/plan-files.ts';
import { withPlanSize } from '../run/plan-size-options.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { commandHelp, fileArgument, optionHelp } from '../words/help-words.ts';
import { issueText } from '../words/issue-words.ts';
import { writtenText } from '../words/plan-words.ts';

interface PlanFlags {
  readonly from?: Day;
  readonly weeks: number;
  readonly members: number;
  readonly seed: number;
  readonly effort: number;
  readonly time?: number;
  readonly out?: string;
  readonly json?: true;
  readonly progress?: true;
}

async function runPlan(file: string, flags: PlanFlags, terminal: Terminal): Promise<void> {
  if (flags.out !== undefined) checkFolder(flags.out);
  const sound = await soundGarden(file, flags.from ?? null, terminal);
  const wishes = {
    weeks: flags.weeks,
    memberCount: flags.members,
    seed: flags.seed,
    effort: flags.effort,
    timeLimitSeconds: flags.time ?? null,
  };
  const report = await makePlan(sound, wishes, { terminal, always: flags.progress === true });
  for (const issue of report.issues) terminal.say(issueText(issue, file));
  const seedListOf = await workflowFunction('seedListOf');
  const seeds = seedListOf(report, sound.garden);
  if (flags.out !== undefined) {
    const written = writePlanFiles(flags.out, report, seeds, sound.fromDay);
    terminal.say(
      writtenText(
        flags.out,
        written.map((path) => basename(path)),
      ),
    );
  }
  if (flags.json === true) terminal.out(`${JSON.stringify(report, null, 2)}\n`);
  else {
    const { planText } = await import('./plan-text.ts');
    const kindOf = await workflowFunction('kindOf');
    terminal.out(planText(report, seeds, sound.fromDay, (kind) => kindOf(sound.garden, kind)?.name ?? kind));
  }
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addPlan(program: Command, terminal: Terminal): void {
  const command = program
    .command('plan')
    .summary(commandHelp.plan.about)
    .description(commandHelp.plan.about)
    .argument('<file>', fileArgument)
    .option('--from <date>', optionHelp.from, dayOption);
  withPlanSize(command)
    .option('--out <dir>', optionHelp.outDir)
    .option('--json', optionHelp.json)
    .option('--progress', optionHelp.progress)
    .addHelpText('after', commandHelp.plan.example)
    .action((file: string, flags: PlanFlags) => runPlan(file, flags, terminal));
}
