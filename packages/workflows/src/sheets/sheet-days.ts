import {
  civilFromDay,
  type Day,
  dayFromCivil,
  dayFromIso,
  invariant,
  mondayOf,
  weekOfDay,
} from '@twelvemonth/basis';

/** Days of a report are ISO text that the engine wrote: anything else is our bug. */
export function dayOf(iso: string): Day {
  const day = dayFromIso(iso);
  invariant(day !== null, 'a report holds ISO dates', { iso });
  return day;
}

export const dayOrNull = (iso: string | null): Day | null => (iso === null ? null : dayOf(iso));

export const mondayBefore = (day: Day): Day => mondayOf(weekOfDay(day));

export interface CalendarMonth {
  readonly year: number;
  /** 1–12 */
  readonly month: number;
}

export function monthFromText(text: string): CalendarMonth | null {
  const match = /^(\d{4})-(\d{2})$/.exec(text);
  if (match === null) return null;
  const [year, month] = [Number(match[1]), Number(match[2])];
  return month >= 1 && month <= 12 ? { year, month } : null;
}

/** A week belongs to the month that holds its Thursday, so that each week stands on one sheet only. */
export function monthOfWeek(monday: Day): CalendarMonth {
  const { year, month } = civilFromDay(monday + 3);
  return { year, month };
}

export function addToMonth({ year, month }: CalendarMonth, count: number): CalendarMonth {
  const index = year * 12 + (month - 1) + count;
  const toYear = Math.floor(index / 12);
  return { year: toYear, month: index - toYear * 12 + 1 };
}

/** First Monday and last Sunday of the month's weeks. */
export function daysOfMonthWeeks(month: CalendarMonth): { readonly from: Day; readonly to: Day } {
  const firstMonday = (m: CalendarMonth): Day => mondayBefore(dayFromCivil(m.year, m.month, 1) + 3);
  return { from: firstMonday(month), to: firstMonday(addToMonth(month, 1)) - 1 };
}
