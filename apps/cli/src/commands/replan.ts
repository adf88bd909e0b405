import { basename } from 'node:path';
import { type Day, dayFromIso, isoFromDay } from '@twelvemonth/basis';
import type { Command } from 'commander';
import { CliFailure } from '../run/cli-failure.ts';
import { checkFolder } from '../run/files.ts';
import { lastPlanOf, sowingsNamed } from '../run/last-plan.ts';
import { sayWarnings, soundGarden } from '../run/load-garden.ts';
import { makePlan } from '../run/make-plan.ts';
import { dayOption, secondsOption, wholeOption } from '../run/option-values.ts';
import { planDefaults } from '../run/plan-defaults.ts';
import { writePlanFiles } from '../run/plan-files.ts';
import type { Terminal } from '../run/terminal.ts';
import { todayByTheClock } from '../run/today.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { commandHelp, fileArgument, optionHelp } from '../words/help-words.ts';
import { issueText } from '../words/issue-words.ts';
import { writtenText } from '../words/plan-words.ts';
import { afterLastPlanText, beforeLastPlanText, begunText } from '../words/replan-words.ts';

interface ReplanFlags {
  readonly from?: Day;
  readonly plan?: string;
  readonly notBegun?: string;
  readonly effort: number;
  readonly time?: number;
  readonly out?: string;
  readonly json?: true;
  readonly progress?: true;
}

async function runReplan(file: string, flags: ReplanFlags, terminal: Terminal): Promise<void> {
  if (flags.out !== undefined) checkFolder(flags.out);
  const fromDay = flags.from ?? todayByTheClock();
  const from = isoFromDay(fromDay);
  const sound = await soundGarden(file, fromDay, terminal);
  const last = await lastPlanOf(file, sound.garden, flags.plan);
  if (from < last.from) throw new CliFailure(beforeLastPlanText(from, last.from), 2);
  if (fromDay >= dayFromIso(last.from)! + last.weeksShown * 7)
    throw new CliFailure(afterLastPlanText(from, file), 2);
  const report = await makePlan(
    sound,
    {
      weeks: last.weeksShown,
      memberCount: last.members,
      seed: last.seed,
      effort: flags.effort,
      timeLimitSeconds: flags.time ?? null,
      last: { report: last, notBegun: sowingsNamed(last, flags.notBegun, from) },
    },
    { terminal, always: flags.progress === true },
  );
  const comparePlans = await workflowFunction('comparePlans');
  const seedListOf = await workflowFunction('seedListOf');
  const difference = comparePlans(last, report);
  const seeds = seedListOf(report, sound.garden);
  for (const issue of report.issues) terminal.say(issueText(issue, file));
  if (flags.out !== undefined) {
    const written = writePlanFiles(flags.out, report, seeds, fromDay);
    terminal.say(
      writtenText(
        flags.out,
        written.map((path) => basename(path)),
      ),
    );
  }
  if (flags.json === true) terminal.out(`${JSON.stringify({ difference, plan: report }, null, 2)}\n`);
  else {
    const { comparisonText } = await import('../words/comparison-words.ts');
    const { planText } = await import('./plan-text.ts');
    const kindOf = await workflowFunction('kindOf');
    const kindNameOf = (kind: string): string => kindOf(sound.garden, kind)?.name ?? kind;
    terminal.out(`${comparisonText(difference)}\n`);
    const begun = begunText(report);
    if (begun !== '') terminal.out(`${begun}\n`);
    terminal.out(planText(report, seeds, fromDay, kindNameOf));
  }
  sayWarnings(sound.warningsCount, file, terminal);
}

export function addReplan(program: Command, terminal: Terminal): void {
  program
    .command('replan')
    .summary(commandHelp.replan.about)
    .description(commandHelp.replan.about)
    .argument('<file>', fileArgument)
    .option('--from <date>', optionHelp.replanFrom, dayOption)
    .option('--plan <plan.json>', optionHelp.lastPlan)
    .option('--not-begun <numbers>', optionHelp.notBegun)
    .option('--effort <n>', optionHelp.effort, wholeOption(0, 1_000_000), planDefaults.effort)
    .option('--time <seconds>', optionHelp.time, secondsOption)
    .option('--out <dir>', optionHelp.outDir)
    .option('--json', optionHelp.replanJson)
    .option('--progress', optionHelp.progress)
    .addHelpText('after', commandHelp.replan.example)
    .action((file: string, flags: ReplanFlags) => runReplan(file, flags, terminal));
}
