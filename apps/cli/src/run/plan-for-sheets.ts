import { type Day, isoFromDay } from '@twelvemonth/basis';
import type { PlanReport, SeedListLine } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { sayWarnings, soundGarden } from './load-garden.ts';
import { makePlan } from './make-plan.ts';
import { planBeside, readStoredPlan } from './stored-plan.ts';
import type { Terminal } from './terminal.ts';
import { todayByTheClock } from './today.ts';
import { workflowFunction } from './workflow-functions.ts';

export interface PlanToPrint {
  readonly report: PlanReport;
  readonly seeds: readonly SeedListLine[];
  /** The day that the sheet is printed for. */
  readonly today: Day;
}

export interface PlanToPrintWishes {
  readonly plan?: string;
  readonly today?: Day;
  readonly progress?: true;
}

/** Today, or the first day of the plan where today lies outside it. */
function dayWithin(report: PlanReport, today: Day): Day {
  const from = dayOf(report.from);
  return today >= from && today < from + 7 * report.weeksShown ? today : from;
}

/** The plan given, else the one beside the garden file, else a new one. */
export async function planToPrint(
  file: string,
  wishes: PlanToPrintWishes,
  terminal: Terminal,
): Promise<PlanToPrint> {
  const sound = await soundGarden(file, null, terminal);
  const stored =
    wishes.plan === undefined
      ? await planBeside(file, sound.garden, terminal)
      : await readStoredPlan(wishes.plan);
  if (stored === null && terminal.sayIsTty)
    terminal.say(
      `Planning from ${isoFromDay(sound.fromDay)} first; keep the plan with: plan ${file} --out DIR`,
    );
  const report = stored ?? (await makePlan(sound, {}, { terminal, always: wishes.progress === true }));
  const seedListOf = await workflowFunction('seedListOf');
  sayWarnings(sound.warningsCount, file, terminal);
  return {
    report,
    seeds: seedListOf(report, sound.garden),
    today: wishes.today ?? dayWithin(report, stored === null ? sound.fromDay : todayByTheClock()),
  };
}
