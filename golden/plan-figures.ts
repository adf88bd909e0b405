/** Plans a garden file with the greedy alone and reads off the figures that a golden case freezes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dayFromIso } from '../packages/basis/src/index.ts';
import { parseGarden } from '../packages/garden/src/index.ts';
import { type PlanReport, planGarden } from '../packages/workflows/src/index.ts';

export interface GoldenInput {
  /** Garden file, from the root of the tree. */
  readonly file: string;
  readonly seed: number;
  readonly weeks: number;
  readonly members: number;
  readonly checkMembers: number;
}

export type Figures = Readonly<Record<string, number>>;

const countedFrom = 13;
const countedTo = 65;

export async function planInput(input: GoldenInput): Promise<PlanReport> {
  const text = readFileSync(join(import.meta.dirname, '..', input.file), 'utf8');
  const { garden } = parseGarden(text, { today: 0 });
  const fromDay = garden?.planFrom;
  if (garden === null || typeof fromDay !== 'number') throw new Error(`${input.file} cannot be planned`);
  const { seed, weeks, members: memberCount, checkMembers: checkMemberCount } = input;
  const answer = await planGarden(
    garden,
    { fromDay, weeks, memberCount, checkMemberCount, seed, effort: 0, timeLimitSeconds: null },
    { solver: null, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 },
    null,
  );
  if (answer.kind !== 'done') throw new Error(`${input.file} cannot be planned: ${answer.kind}`);
  return answer.value;
}

function daysAfter(from: string, day: string | null): number {
  const [a, b] = [dayFromIso(from), day === null ? null : dayFromIso(day)];
  if (a === null || b === null) throw new Error(`no day in ${from} … ${day}`);
  return b - a;
}

/** Forecast of what stands already: days from the first day to its first harvest, and its servings, middle member. */
function standingFigures(report: PlanReport): Record<string, number> {
  const figures: Record<string, number> = {};
  for (const { kind, state, harvests } of report.sowings) {
    if (state === 'draft') continue;
    for (const { id, first, servings } of harvests) {
      if (first.p50 !== null)
        figures[`standing/${kind}/${id}/firstAfterDays`] = daysAfter(report.from, first.p50);
      figures[`standing/${kind}/${id}/servings`] = servings.p50;
    }
  }
  return figures;
}

function roleFigures(report: PlanReport): Record<string, number> {
  const figures: Record<string, number> = {};
  for (const { roles } of report.weeks.slice(countedFrom, countedTo))
    for (const [role, { eaten, appetite, bought }] of Object.entries(roles)) {
      if (appetite - bought <= 0) continue;
      const key = `role/${role}/eatenServings`;
      figures[key] = (figures[key] ?? 0) + eaten.p50;
    }
  return figures;
}

export function figuresOf(report: PlanReport): Figures {
  const { proof, sowings } = report;
  const drafts = sowings.filter((s) => s.state === 'draft');
  return {
    candidatesCount: proof.candidates,
    violationsCount: proof.violations.length,
    draftSowingsCount: drafts.length,
    draftKindsCount: new Set(drafts.map((s) => s.kind)).size,
    shortagesCount: report.shortages.length,
    'check/leanWeeks': proof.check.leanWeeks,
    'check/servingsMissing': proof.check.servingsMissing,
    'check/servingsEaten': proof.check.servingsEaten,
    'check/wastedServings': proof.check.wasted,
    'check/groundIdleShare': proof.check.groundIdleShare,
    'check/hours': proof.check.hours,
    'calendarRival/leanWeeks': proof.rivals.calendar.leanWeeks,
    'calendarRival/servingsMissing': proof.rivals.calendar.servingsMissing,
    'practisedRival/leanWeeks': proof.rivals.practised.leanWeeks,
    'practisedRival/servingsMissing': proof.rivals.practised.servingsMissing,
    ...roleFigures(report),
    ...standingFigures(report),
  };
}
