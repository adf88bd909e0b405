import { civilFromDay, dayFromIso } from '@twelvemonth/basis';
import {
  type HoursByWork,
  type MonthWork,
  type PlanReport,
  type ReportMaterials,
  workOf,
} from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { amountText, capital, countOf } from './number-words.ts';

const workWords: Readonly<Record<keyof HoursByWork, string>> = {
  sow: 'sowing',
  plant: 'planting',
  weed: 'weeding',
  water: 'watering',
  pick: 'picking',
  putBy: 'putting by',
  clear: 'clearing',
  visit: 'fetching and putting away tools',
};

/** "6 h", "20 min". */
const hoursText = (hours: number): string =>
  hours < 0.95 ? `${Math.max(5, Math.round(hours * 12) * 5)}\u00a0min` : `${amountText(hours)}\u00a0h`;

function capText(work: MonthWork): string {
  if (work.cap === null) return '';
  return ` of the ${hoursText(work.cap)} that you have`;
}

/** "About 4 h a week, most in the week of 14 April: 6 h, mainly planting." */
export function workText(work: MonthWork): string {
  const usual = `about ${hoursText(work.meanHours)} a week`;
  const when = dateWords.week(work.mostMonday).replace('Week', 'week');
  return `Work: ${usual}, most in the ${when}: ${hoursText(work.mostHours)}${capText(work)}, mainly ${workWords[work.mostBy]}.`;
}

/** Weeks in which what stands already, and the little that is left beside it, come to more than people have. */
function overText(report: PlanReport): string {
  const over = report.hours.filter(({ hours, cap }) => cap !== null && cap > 0 && hours > cap + 0.05);
  if (over.length === 0) return '';
  return ` In ${countOf(over.length, 'week')} what stands already asks for nearly all of that or more; with it the work comes to more than you have.`;
}

/** Of the whole plan: one line, or none where nothing is to be done. */
export function planWorkText(report: PlanReport): string | null {
  const work = workOf(report.hours);
  return work === null ? null : `${workText(work)}${overText(report)}`;
}

const partsOf = ({ trays, pots }: ReportMaterials): string[] => [
  ...(trays > 0 ? [countOf(trays, 'tray')] : []),
  ...(pots > 0 ? [countOf(pots, 'pot')] : []),
];

/** Litres are bought by the bag: nobody needs to know them closer than to five. */
const litresText = (litres: number): string => `${Math.max(5, Math.ceil(litres / 5) * 5)}\u00a0l`;

export function materialsText(month: ReportMaterials): string {
  const inUse = partsOf(month);
  const parts = [
    ...(month.compostLitres > 0 ? [`${litresText(month.compostLitres)} of compost`] : []),
    ...(inUse.length > 0 ? [`${inUse.join(' and ')} in use at once`] : []),
  ];
  return parts.length === 0 ? '' : `${capital(parts.join('; '))}.`;
}

/** "September 2026: 35 l, 75 l by then; 4 trays and 72 pots in use". */
export function materialsByText(month: ReportMaterials, litresBefore: number): string {
  const { year, month: number } = civilFromDay(dayFromIso(`${month.month}-01`) ?? 0);
  const all = litresText(litresBefore + month.compostLitres);
  const byThen = litresBefore > 0 ? `, ${all} by then` : '';
  const inUse = partsOf(month);
  const containers = inUse.length > 0 ? `; ${inUse.join(' and ')} in use` : '';
  return `${dateWords.month({ year, month: number })}: ${litresText(month.compostLitres)}${byThen}${containers}`;
}
