import { type Day, dayFromIso, isoOfWeek, weekOfDay } from '@twelvemonth/basis';
import { nearestName, type OpenPlan } from '@twelvemonth/workflows';
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
import {
  commandHelp,
  explainWhat,
  fileArgument,
  noSuchRoleText,
  optionHelp,
  outsidePlanText,
  roleNeedsWeek,
} from '../words/help-words.ts';
import { weekParts } from '../words/week-words.ts';

interface ExplainFlags {
  readonly plan?: string;
  readonly role?: string;
  readonly today?: Day;
  readonly json?: true;
}

async function explainDay(
  open: OpenPlan,
  warningsCount: number,
  day: Day,
  today: Day,
  file: string,
  flags: ExplainFlags,
  terminal: Terminal,
): Promise<void> {
  const { appetite, fromWeek, weekCount, roles } = open.problem;
  const role = flags.role === undefined ? null : roleMeant(flags.role, appetite.roles, roles);
  const explainWeek = await workflowFunction('explainWeek');
  const reasons = explainWeek(open, weekOfDay(day), role, today);
  if (reasons === null)
    throw new CliFailure(outsidePlanText(isoOfWeek(fromWeek), isoOfWeek(fromWeek + weekCount - 1)));
  if (flags.json === true) terminal.out(`${JSON.stringify(reasons, null, 2)}\n`);
  else {
    const { title, parts } = weekParts(reasons);
    terminal.out(partsText(title, parts));
  }
  sayWarnings(warningsCount, file, terminal);
}

/** By id or by name; what the household does not eat is told apart from what nobody knows. */
function roleMeant(
  text: string,
  eaten: readonly string[],
  rows: readonly { readonly id: string; readonly name: string }[],
): string {
  const row = rows.find(({ id, name }) => id === text || name.toLowerCase() === text.toLowerCase());
  if (row !== undefined && eaten.includes(row.id)) return row.id;
  const nearest = nearestName(
    text,
    rows.flatMap(({ id, name }) => [id, name]),
  );
  throw new CliFailure(noSuchRoleText(text, row !== undefined, nearest, eaten), 2);
}

async function runExplain(
  file: string,
  what: string,
  flags: ExplainFlags,
  terminal: Terminal,
): Promise<void> {
  const { open, sound } = await planToArgue(file, flags, 'make', terminal);
  const today = Math.max(open.problem.fromDay, flags.today ?? open.problem.fromDay);
  const day = dayFromIso(what);
  if (day !== null) return explainDay(open, sound.warningsCount, day, today, file, flags, terminal);
  if (flags.role !== undefined) throw new CliFailure(roleNeedsWeek, 2);
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
    .option('--role <id>', optionHelp.role)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.explain.example)
    .action((file: string, what: string, flags: ExplainFlags) => runExplain(file, what, flags, terminal));
}
