import type { Day } from '@twelvemonth/basis';
import {
  type EatenPart,
  type MonthJob,
  type MonthLine,
  type MonthOrder,
  numberRuns,
} from '@twelvemonth/workflows';
import { dateWords, dayNear, partOfMonth } from './date-words.ts';
import { keepOrClearWords } from './decision-words.ts';
import {
  dayReasonWord,
  kitWord,
  plainCode,
  riskWord,
  seldomReasonWord,
  stageWord,
  startWord,
} from './garden-words.ts';
import { restWords } from './ground-words.ts';
import { amountText, capital, countOf, listText, servingsText } from './number-words.ts';

/** What one line of the month's sheet says in each of its cells. */

const orDash = (value: number | null): string => (value === null ? '–' : String(value));

export function amountWords({ amount, act, startsAs }: MonthLine): string {
  const { sow, plant, keep } = amount;
  if (amount.unit === 'trays') return countOf(sow ?? 1, 'tray');
  if (act === 'plant' && sow !== null) {
    const pieces = `${sow} ${startWord(startsAs, sow)}`;
    return keep === null ? pieces : `${pieces} / ${keep}`;
  }
  const unit = amount.unit === 'metres' ? ' m' : '';
  return `${orDash(sow)} / ${orDash(plant)} / ${orDash(keep)}${unit}`;
}

const routeWords: Readonly<Record<string, string>> = {
  direct: 'in drills, in place',
  planted: 'in place',
  module: 'in modules',
  warm: 'in modules, in the warm',
  tray: 'thickly in a tray',
};

export function howWords(line: MonthLine): string {
  const { inRow, betweenRow } = line.spacingCm;
  const spacing =
    line.route === 'direct'
      ? `rows ${betweenRow}\u00a0cm apart`
      : `${inRow}\u00a0×\u00a0${betweenRow}\u00a0cm`;
  if (line.act === 'plant-out') return `plant out, ${spacing}`;
  const route = routeWords[line.route] ?? plainCode(line.route);
  return line.route === 'tray' ? route : `${route}; ${spacing}`;
}

export const bedsWords = (beds: MonthLine['beds']): string =>
  beds
    .map((b) => `${b.placeName}${b.numbers.some((n) => n > 0) ? ` ${numberRuns(b.numbers)}` : ''}`)
    .join('; ');

export function whereWords(line: MonthLine): string {
  const beds = bedsWords(line.beds);
  const raised = line.path
    .filter((s) => s.stage !== 'bed' && s.stage !== 'tub')
    .map((s) => s.placeName || stageWord(s.stage));
  const stops = [...new Set(raised), ...(beds === '' ? [] : [beds])];
  const route = stops.length > 0 ? stops.join(' → ') : (line.path.at(-1)?.placeName ?? '');
  const clear = line.clearFirst.map((c) => `${c.kindName} (${c.number}) out by ${dayNear(c.by, line.day)}`);
  const between =
    line.between.length === 0
      ? []
      : [
          `between ${listText(line.between.map((b) => `${b.kindName} (${b.number})`))}, where it is cleared already`,
        ];
  const kit = [...new Set(line.kit.map((k) => `${kitWord(k.kit)} from ${dayNear(k.from, line.day)}`))];
  return [
    route,
    ...between,
    ...(clear.length > 0 ? [`first ${listText(clear)}`] : []),
    ...kit.slice(0, 2),
  ].join('; ');
}

const roughSpanDays = 35;

function firstWords(part: EatenPart, near: Day): string {
  if (part.firstFrom === null || part.firstTo === null) return '';
  const span =
    part.firstTo - part.firstFrom > roughSpanDays
      ? dateWords.roughly(part.firstFrom, part.firstTo)
      : dateWords.days(part.firstFrom, part.firstTo);
  const year = dayNear(part.firstTo, near).slice(dateWords.day(part.firstTo).length);
  return span + year;
}

export function eatenPartWords(part: EatenPart, near: Day, named: boolean): string {
  const first = firstWords(part, near);
  const name = named ? `${plainCode(part.harvest)}${first === '' ? ':' : ''} ` : '';
  if (first === '' && part.firstMiddle !== null)
    return `${name}from ${partOfMonth(part.firstMiddle)} or so; in some years ${seldomReasonWord(part.reason ?? 'not at all')}`;
  if (first === '')
    return `${name}${part.reason === null ? 'not in most years' : dayReasonWord(part.reason)}`;
  const last = part.lastMiddle;
  if (last === null || last - part.firstTo! < 14) return name + first;
  return `${name}from ${first}, to ${partOfMonth(last)}`;
}

export const eatenWords = (line: MonthLine): string =>
  line.eaten.map((part) => eatenPartWords(part, line.day, line.eaten.length > 1)).join('; ');

export function changeWords(servings: number): string {
  if (servings > -0.5) return 'no loss';
  return `${servingsText(Math.round(-servings))} fewer`;
}

export function lastSafeWords(line: MonthLine): string {
  if (line.lastSafeDay === null) return '';
  const day = dayNear(line.lastSafeDay, line.day);
  return line.weekLateServings === null ? day : `${day} (a week late: ${changeWords(line.weekLateServings)})`;
}

export function mindWords(line: MonthLine): string {
  const risks = line.mind.slice(0, 2).map((m) => riskWord(m.code));
  const look =
    line.decision === null ? [] : [`make or break ${dayNear(line.decision.decisionDay, line.day)}`];
  return [...look, ...risks, ...line.rests.map(restWords)].join('; ');
}

const jobVerbs: Readonly<Record<MonthJob['code'], string>> = {
  'pot-on': 'Pot on',
  'plant-out': 'Plant out',
  'harden-off': 'Harden off',
  clear: 'Clear',
  'net-on': 'Net on',
  'net-off': 'Net off',
  'mesh-on': 'Mesh on',
  'mesh-off': 'Mesh off',
  'kit-move': 'Carry over to',
  feed: 'Compost for',
  lime: 'If the ground is acid, lime for',
  'fleece-night': 'Fleece at hand for',
  lift: 'Lift',
  order: 'Order',
  look: 'Make or break: look at',
  cure: 'Dry and cure',
};

function jobVerb(job: MonthJob): string {
  const { amount, kit, fromPlaceName } = job;
  if (job.code === 'feed' && amount !== undefined)
    return `${countOf(Math.max(0.5, Math.round(amount * 2) / 2), 'barrow')} of compost for`;
  if (job.code === 'kit-move' && amount !== undefined && kit !== undefined)
    return `Carry ${amountText(amount)}\u00a0m of ${kitWord(kit)} from ${fromPlaceName ?? ''} to`;
  return jobVerbs[job.code] ?? capital(plainCode(job.code));
}
const belowWord = (job: MonthJob): string =>
  job.belowC === undefined ? '' : ` below ${job.belowC < 0 ? '−' : ''}${Math.abs(job.belowC)}\u00a0°C`;
const jobCrop = (job: MonthJob): string =>
  `${job.kindName}${job.number === null ? '' : ` (${job.number})`}${belowWord(job)}`;

export const jobTitle = (job: MonthJob): string => `${jobVerb(job)} ${jobCrop(job)}`;

const countedJobs: readonly MonthJob['code'][] = ['pot-on', 'harden-off', 'lift'];

export function jobsWords(jobs: readonly MonthJob[]): string {
  const [first] = jobs;
  if (first === undefined) return '';
  const crops = jobs.map((job) =>
    job.count > 1 && countedJobs.includes(job.code) ? `${job.count} ${jobCrop(job)}` : jobCrop(job),
  );
  const place = first.placeName === '' ? '' : `, ${first.placeName}`;
  if ((first.code === 'kit-move' || first.code === 'look') && jobs.length > 1)
    return jobs.map((job) => jobsWords([job])).join('; ');
  const amount =
    first.amount === undefined ? first.amount : jobs.reduce((sum, job) => sum + (job.amount ?? 0), 0);
  return `${dateWords.day(first.day)}: ${jobVerb({ ...first, amount })} ${listText(crops)}${place}${first.decision === undefined ? '' : `; ${keepOrClearWords(first.decision)}`}`;
}

export const jobWords = (job: MonthJob): string => jobsWords([job]);

export function orderWords(order: MonthOrder): string {
  const what =
    order.startsAs === 'seed'
      ? countOf(order.packets, 'packet')
      : `${Math.ceil(order.needCount)} ${startWord(order.startsAs, 2)}`;
  return `${order.kindName}: ${what}, by ${dateWords.day(order.orderBy)}`;
}

export function eventTitle(line: MonthLine): string {
  const verb = { sow: 'Sow', plant: 'Plant', 'plant-out': 'Plant out' }[line.act];
  return `${verb} ${line.kindName} (${line.number})${line.state === 'draft' ? ', draft' : ''}`;
}

export const eventText = (line: MonthLine): string =>
  [
    `${line.act === 'plant' ? 'Plant / keep' : 'Sow / plant / keep'}: ${amountWords(line)}`,
    `How: ${howWords(line)}`,
    `Where: ${whereWords(line)}`,
    `Eaten, most years: ${eatenWords(line)}`,
    ...(line.lastSafeDay === null ? [] : [`Last safe day: ${lastSafeWords(line)}`]),
    ...(line.mind.length + line.rests.length === 0 ? [] : [`Mind: ${mindWords(line)}`]),
  ].join('\n');
