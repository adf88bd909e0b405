import type { PlanProgress, PlanReport, ReportShortage, ReportStock } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { plainCode, storeWord } from './garden-words.ts';
import { amountText, capital, countOf, percentText, servingsText } from './number-words.ts';

export const planHeader = (report: PlanReport): readonly string[] => [
  `${report.garden.household}, ${report.garden.site}: ${countOf(report.garden.eaters, 'person eats', 'people eat')} here`,
  ...(report.garden.invented ? ['Everything about this household is invented.'] : []),
  `${report.weeksShown} weeks from ${dateWords.dayInFull(dayOf(report.from))}; ${report.members} weather runs, seed ${report.seed}, tables ${report.tables}.`,
];

const bindsWords: Readonly<Record<string, string>> = {
  'too-late': 'it is too late to sow for these weeks',
  'ground-open': 'open ground is full',
  'ground-cover': 'ground under cover is full',
  bench: 'bench space for raising is full',
  hours: 'the hours of those weeks are full',
  season: 'nothing on offer is ready in this season',
  'not-worth-it': 'there is room, but so far it was not thought worth the work',
};

export const bindsWord = (code: string): string => bindsWords[code] ?? plainCode(code);

function remedyText(shortage: ReportShortage, kindNameOf: (kind: string) => string): string {
  const { remedy } = shortage;
  if (remedy === null) return 'nothing was found that would mend it';
  const by = remedy.by === null ? '' : ` by ${dateWords.day(dayOf(remedy.by))}`;
  const kind = remedy.kind === null ? '' : ` ${kindNameOf(remedy.kind)}`;
  const filled = `about ${servingsText(remedy.filled)}`;
  const size = `${amountText(remedy.m2)} m²`;
  switch (remedy.code) {
    case 'sow-more':
      return `sow ${size} more${kind}${by}: ${filled}`;
    case 'more-cover':
      return `${size} more under cover${by} would give ${filled}`;
    case 'more-ground':
      return `${size} more ground${by} would give ${filled}`;
    case 'more-bench':
      return `room on the bench for ${size} more of${kind}${by} would give ${filled}`;
    case 'more-hours':
      return `more time for ${size} of${kind}${by} would give ${filled}`;
    case 'substitute':
      return `sow ${size} of${kind || ' something else'}${by} to stand in for it: ${filled}`;
    case 'buy':
      return `buy ${filled.replace('about ', '')}`;
  }
}

export function shortageText(
  report: PlanReport,
  shortage: ReportShortage,
  kindNameOf: (kind: string) => string,
): string {
  const role = capital(report.roleNames[shortage.role] ?? plainCode(shortage.role));
  const when = dateWords.roughly(dayOf(shortage.from), dayOf(shortage.to) + 6);
  const why = bindsWord(shortage.binds);
  return `${role}, ${when}: ${servingsText(shortage.servingsMissing)} short in ${countOf(Math.round(shortage.leanWeeks), 'week')}; ${why}. ${capital(remedyText(shortage, kindNameOf))}.`;
}

export function stockText(lot: ReportStock): string {
  const { p10, p50, p90 } = lot.runsOut;
  const until =
    p10 !== null && p90 !== null
      ? `lasts to ${dateWords.days(dayOf(p10), dayOf(p90))}`
      : p50 !== null
        ? `lasts to about ${dateWords.day(dayOf(p50))}`
        : 'lasts beyond the weeks shown';
  return `${lot.kindName} (${storeWord(lot.store)}): ${amountText(lot.kg)} kg, ${servingsText(lot.servings)}; ${until}`;
}

/** One line that a gardener can use. */
export function proofText({ proof }: PlanReport): string {
  const perYear = 52 / Math.max(1, proof.countedWeeks);
  const year = (leanWeeks: number): string => amountText(leanWeeks * perYear);
  const rivals = `${year(proof.leanWeeksCheck)} lean role-weeks a year in weather it has not seen, where going by the calendar gives ${year(proof.rivals.calendar.leanWeeks)} and a practised hand ${year(proof.rivals.practised.leanWeeks)}`;
  if (proof.gapShare === null) return `A first plan, not proven: ${rivals}.`;
  const gain =
    proof.gapServingsPerYear === null
      ? `at most ${percentText(proof.gapShare)} could still be gained`
      : `at most ${servingsText(proof.gapServingsPerYear)} a year could still be gained`;
  const opening =
    proof.gapShare <= 0.1 ? 'About as good as this ground allows' : 'A fair plan, and perhaps not the best';
  return `${opening}: ${gain}; ${rivals}.`;
}

export const notReproducibleText =
  'The clock or a stop ended the search, so another run may end with another plan.';

const stepWords: Readonly<Record<PlanProgress['step'], string>> = {
  weather: 'drawing the weather',
  candidates: 'trying what could be sown',
  greedy: 'making a first plan',
  program: 'looking for a better one',
  beds: 'fitting it into the beds',
  check: 'checking it on other weather',
  explain: 'finding reasons and remedies',
};

export function progressText(progress: PlanProgress, seconds: number): string {
  const share = progress.doneShare === null ? '' : ` ${percentText(progress.doneShare)}`;
  const gap =
    progress.bestGapShare === null
      ? ''
      : `, within ${percentText(progress.bestGapShare)} of the best possible`;
  return `${stepWords[progress.step]}${share}${gap} (${Math.round(seconds)} s)`;
}

export const cannotText = (reason: string, detail: Readonly<Record<string, string | number>>): string => {
  const known: Readonly<Record<string, string>> = {
    'no-candidates':
      'Nothing on offer can grow here within the weeks asked for: lengthen --weeks or look at the wishes.',
    stopped: 'Stopped before there was any plan to show.',
    cancelled: 'Stopped before there was any plan to show.',
  };
  const values = Object.entries(detail).map(([name, value]) => `${plainCode(name)} ${value}`);
  return (
    known[reason] ??
    `No plan could be made: ${plainCode(reason)}${values.length > 0 ? ` (${values.join(', ')})` : ''}.`
  );
};

export const nothingWords: Readonly<Record<NonNullable<PlanReport['nothing']>, string>> = {
  'no-ground': 'This plan begins nothing: there is no ground. Add beds, tubs or benches under places.',
  'no-appetite':
    'This plan begins nothing: nobody wants anything from the garden. Look at household.appetite and boughtOnPurpose.',
  'all-forbidden':
    'This plan begins nothing: every kind is forbidden or disliked. Take some out of wishes and household.dislikes.',
  'nothing-worth-it':
    'This plan begins nothing: of what may be sown here, nothing brings more than it takes within these weeks. Lengthen --weeks, or look at places, wishes and appetite.',
};

export const headingShortages = 'Where it falls short';
export const headingStock = 'What lies in store, and how long it lasts';
export const noShortage = 'Nowhere in these weeks.';
export const violationText = (violation: string): string =>
  `The independent check does not agree with this plan: ${violation}.`;
export const writtenText = (folder: string, names: readonly string[]): string =>
  `Wrote to ${folder}: ${names.join(', ')}.`;
