import {
  cannot,
  civilFromDay,
  type Day,
  dayFromCivil,
  daysInMonth,
  done,
  type Outcome,
} from '@twelvemonth/basis';
import type { VagueDay } from '../records/garden.ts';
import { monthNames } from './month-names.ts';

/**
 * Days as people say them: "2026-04-12", "12 April", "mid April", "spring", "autumn 2025", "March to May". Without
 * a year it is the latest such time that has begun by the reference day (`past`), or the first that has not ended
 * before it (`next`). Something past cannot reach beyond the reference day: its end is cut there.
 */
export interface DayFrame {
  readonly reference: Day;
  readonly direction: 'past' | 'next';
  /** Seasons of the southern half: spring is September to November. */
  readonly southern: boolean;
}

export type VagueDayProblem = 'date-impossible' | 'date-not-understood';

/** A time that comes back each year, or null in years without it (29 February, 31 April). */
type Yearly = (year: number) => VagueDay | null;
type Said =
  | { readonly kind: 'fixed'; readonly time: VagueDay }
  | { readonly kind: 'yearly'; readonly inYear: Yearly };

const seasonFirstMonth: Readonly<Record<string, number>> = {
  spring: 3,
  summer: 6,
  autumn: 9,
  fall: 9,
  winter: 12,
};
const partOfWord: Readonly<Record<string, 0 | 1 | 2>> = {
  early: 0,
  'beginning of': 0,
  'start of': 0,
  mid: 1,
  middle: 1,
  'middle of': 1,
  late: 2,
  'end of': 2,
};
const partPattern = /^(early|beginning of|start of|middle of|middle|mid|late|end of)[ -]+/;
const firstYear = 1900;
const lastYear = 2199;

function monthOf(word: string): number | null {
  const name = word.replace(/\.$/, '');
  if (name.length < 3) return null;
  const index = monthNames.findIndex(
    (month) => month.startsWith(name) || (name === 'sept' && month === 'september'),
  );
  return index < 0 ? null : index + 1;
}

function monthTime(year: number, month: number, part: 0 | 1 | 2 | null): VagueDay {
  const toYear = year + Math.floor((month - 1) / 12);
  const toMonth = ((month - 1) % 12) + 1;
  const first = dayFromCivil(toYear, toMonth, 1);
  const length = daysInMonth(toYear, toMonth);
  if (part === null) return { fromDay: first, toDay: first + length - 1 };
  return { fromDay: first + part * 10, toDay: part === 2 ? first + length - 1 : first + part * 10 + 9 };
}

function seasonTime(year: number, firstMonth: number, part: 0 | 1 | 2 | null): VagueDay {
  if (part !== null) return monthTime(year, firstMonth + part, null);
  return {
    fromDay: monthTime(year, firstMonth, null).fromDay,
    toDay: monthTime(year, firstMonth + 2, null).toDay,
  };
}

const civilOrNull = (year: number, month: number, dayOfMonth: number): VagueDay | null => {
  if (dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return null;
  const day = dayFromCivil(year, month, dayOfMonth);
  return { fromDay: day, toDay: day };
};

function said(yearText: string | undefined, inYear: Yearly): Said | VagueDayProblem {
  if (yearText === undefined) return { kind: 'yearly', inYear };
  const year = Number(yearText);
  if (year < firstYear || year > lastYear) return 'date-impossible';
  const time = inYear(year);
  return time === null ? 'date-impossible' : { kind: 'fixed', time };
}

function readOne(text: string, frame: DayFrame): Said | VagueDayProblem {
  const thisYear = civilFromDay(frame.reference).year;
  const iso = /^(\d{4})-(\d{1,2})(?:-(\d{1,2}))?$/.exec(text);
  if (iso !== null) {
    const [, year, month, dayOfMonth] = iso;
    if (Number(month) < 1 || Number(month) > 12) return 'date-impossible';
    if (dayOfMonth === undefined) return said(year, (y) => monthTime(y, Number(month), null));
    return said(year, (y) => civilOrNull(y, Number(month), Number(dayOfMonth)));
  }
  if (/^\d{4}$/.test(text) || text === 'this year' || text === 'last year') {
    const year = text === 'this year' ? thisYear : text === 'last year' ? thisYear - 1 : Number(text);
    return said(String(year), (y) => ({ fromDay: dayFromCivil(y, 1, 1), toDay: dayFromCivil(y, 12, 31) }));
  }
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?(?: of)? ([a-z]+\.?)(?:,? (\d{4}))?$/.exec(text);
  const monthFirst = /^([a-z]+\.?) (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?$/.exec(text);
  const dated = dayFirst ?? monthFirst;
  if (dated !== null) {
    const month = monthOf((dayFirst === null ? dated[1] : dated[2]) ?? '');
    const dayOfMonth = Number(dayFirst === null ? dated[2] : dated[1]);
    if (month === null) return 'date-not-understood';
    return said(dated[3], (y) => civilOrNull(y, month, dayOfMonth));
  }
  const partMatch = partPattern.exec(text);
  const part = partMatch === null ? null : (partOfWord[partMatch[1] ?? ''] ?? null);
  const named = /^([a-z]+\.?)(?:,? (\d{4}))?$/.exec(
    partMatch === null ? text : text.slice(partMatch[0].length),
  );
  if (named === null) return 'date-not-understood';
  const [, name = '', year] = named;
  const season = Object.hasOwn(seasonFirstMonth, name) ? seasonFirstMonth[name] : undefined;
  if (season !== undefined) {
    const firstMonth = frame.southern ? ((season + 5) % 12) + 1 : season;
    return said(year, (y) => seasonTime(y, firstMonth, part));
  }
  const month = monthOf(name);
  return month === null ? 'date-not-understood' : said(year, (y) => monthTime(y, month, part));
}

function placeInTime(what: Said, frame: DayFrame): VagueDay | null {
  const { reference, direction } = frame;
  const cut = (time: VagueDay): VagueDay =>
    direction === 'past' && time.fromDay <= reference && time.toDay > reference
      ? { ...time, toDay: reference }
      : time;
  if (what.kind === 'fixed') return cut(what.time);
  const { year } = civilFromDay(reference);
  for (let step = 0; step <= 9; step++) {
    const time = what.inYear(direction === 'past' ? year + 1 - step : year - 1 + step);
    if (time === null) continue;
    if (direction === 'past' ? time.fromDay <= reference : time.toDay >= reference) return cut(time);
  }
  return null;
}

/** "mid to late April": the first half borrows what the second half is about. */
function splitRange(text: string): readonly [string, string] | null {
  const match = /^(?:between |from )?(.+?)(?: to | until | till | or | and | [-–] )(.+)$/.exec(text);
  if (match === null) return null;
  const [, first = '', second = ''] = match;
  if (!Object.hasOwn(partOfWord, first)) return [tidy(first), tidy(second)];
  return [`${first} ${tidy(second).replace(partPattern, '')}`, tidy(second)];
}

/** The latest such time that begins by the end of `end`. */
function startBefore(first: Said, end: VagueDay, frame: DayFrame): VagueDay | null {
  return placeInTime(first, { ...frame, reference: end.toDay, direction: 'past' });
}

/** Two ends as one time, so that "March to May" said in April is this year's. */
function joined(first: Said, second: Said, frame: DayFrame): Said | null {
  const join = (end: VagueDay | null): VagueDay | null => {
    const start = end === null ? null : startBefore(first, end, frame);
    return end === null || start === null || start.fromDay > end.toDay
      ? null
      : { fromDay: start.fromDay, toDay: end.toDay };
  };
  if (second.kind === 'yearly' && first.kind === 'yearly') {
    return { kind: 'yearly', inYear: (year) => join(second.inYear(year)) };
  }
  const after: DayFrame =
    first.kind === 'fixed' ? { ...frame, reference: first.time.fromDay, direction: 'next' } : frame;
  const time = join(second.kind === 'fixed' ? second.time : placeInTime(second, after));
  return time === null ? null : { kind: 'fixed', time };
}

const filler =
  /^(?:(?:about|around|roughly|sown|planted|some ?time|in|the|last|this|next|on)(?: |$)(?!year))+/;
const tidy = (text: string): string =>
  text
    .toLowerCase()
    .trim()
    .replace(/\s+/g, ' ')
    .replace(filler, '')
    .replace(/ of (?=\d{4}$)/, ' ');

export function readVagueDay(text: string, frame: DayFrame): Outcome<VagueDay, VagueDayProblem> {
  if (text.length > 80) return cannot('date-not-understood');
  const whole = tidy(text);
  const range = splitRange(whole);
  const first = readOne(range === null ? whole : range[0], frame);
  if (typeof first === 'string') return cannot(first);
  const second = range === null ? null : readOne(range[1], frame);
  if (typeof second === 'string') return cannot(second);
  const meant = second === null ? first : joined(first, second, frame);
  const time = meant === null ? null : placeInTime(meant, frame);
  return time === null ? cannot('date-impossible') : done(time);
}
