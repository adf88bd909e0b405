import type { PlanReport } from '@twelvemonth/workflows';
import { dayOf, plainSpaces, wrapText } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { capital, countOf } from './number-words.ts';

const width = 80;

export const noLastPlanText = (gardenFile: string, path: string): string =>
  `There is no plan to go on from: ${path} is not there. Make one with: twelvemonth plan ${gardenFile} --out DIR, and name it with --plan DIR.`;

export const otherGardensPlanText = (path: string, theirs: string, ours: string): string =>
  `${path} is a plan for "${theirs}", and this garden is of "${ours}". Name the plan of this garden with --plan, or make one with: twelvemonth plan.`;

export const beforeLastPlanText = (from: string, lastFrom: string): string =>
  `The last plan begins on ${lastFrom}, and ${from} lies before that. Give --from a day on or after it, or make a plan from the beginning with: twelvemonth plan.`;

export const afterLastPlanText = (from: string, path: string): string =>
  `The last plan is over by ${from}: nothing of it can be gone on with. Make a new one with: twelvemonth plan ${path}.`;

export const unknownSowingText = (name: string, nearest: string): string =>
  `The last plan has no sowing "${name}".${nearest === '' ? '' : ` Was "${nearest}" meant?`} Name sowings by the number on their label or by their id.`;

export const notDueText = (kindName: string, number: number, sow: string, from: string): string =>
  `${capital(kindName)} (${number}) is to be begun on ${sow}, which is not before ${from}: it need not be taken out.`;

/** What was assumed about the time between the two plans: people may know better. */
export function begunText(report: PlanReport): string {
  const begun = report.sowings.filter((sowing) => sowing.begun !== undefined);
  const cleared = report.cleared?.length ?? 0;
  if (begun.length === 0 && cleared === 0) return '';
  const names = begun.map((s) => `${s.kindName} (${s.number}), ${dateWords.day(dayOf(s.sow))}`);
  const parts = [
    ...(begun.length === 0
      ? []
      : [
          `Taken as begun as planned: ${names.join('; ')}. If one was not, say so with --not-begun and its number; if it went otherwise, write it under standing in the garden file.`,
        ]),
    ...(cleared === 0
      ? []
      : [
          `${countOf(cleared, 'crop')} of the garden file ${cleared === 1 ? 'is' : 'are'} taken as cleared, as planned. What still stands: give it a mayClearFrom that is yet to come.`,
        ]),
  ];
  return plainSpaces(`${parts.map((part) => wrapText(part, width).join('\n')).join('\n')}\n`);
}
