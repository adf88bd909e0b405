/**
 * Tables speak of days of the northern common year (1–365). The south has each season half a year later; 29 February
 * counts as the day before.
 */
import { civilFromDay, type Day, dayOfYear } from '@twelvemonth/basis';

export const southernShiftDays = 182;

/** Day of the northern year (1–365) with the season of the given day. */
export function seasonDayOfYear(day: Day, southern: boolean): number {
  const northern = southern ? day + southernShiftDays : day;
  const at = dayOfYear(northern);
  if (at < 60) return at;
  const { year } = civilFromDay(northern);
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return isLeap ? at - 1 : at;
}

/** Whether a day lies in a season of the tables, both ends included; it may run over New Year. */
export function inSeasonDays(
  day: Day,
  fromDayOfYear: number,
  toDayOfYear: number,
  southern: boolean,
): boolean {
  const at = seasonDayOfYear(day, southern);
  return fromDayOfYear <= toDayOfYear
    ? at >= fromDayOfYear && at <= toDayOfYear
    : at >= fromDayOfYear || at <= toDayOfYear;
}
