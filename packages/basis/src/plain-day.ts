/**
 * Calendar days as integers: days since 1970-01-01 in the proleptic Gregorian calendar, no time zones.
 * Civil conversion after Howard Hinnant's published algorithms (days_from_civil).
 */
export type Day = number;

export interface CivilDate {
  readonly year: number;
  /** 1–12 */
  readonly month: number;
  /** 1–31 */
  readonly dayOfMonth: number;
}

export function dayFromCivil(year: number, month: number, dayOfMonth: number): Day {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yoe = y - era * 400;
  const doy = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOfMonth - 1;
  const doe = yoe * 365 + Math.floor(yoe / 4) - Math.floor(yoe / 100) + doy;
  return era * 146097 + doe - 719468;
}

export function civilFromDay(day: Day): CivilDate {
  const z = day + 719468;
  const era = Math.floor(z / 146097);
  const doe = z - era * 146097;
  const yoe = Math.floor(
    (doe - Math.floor(doe / 1460) + Math.floor(doe / 36524) - Math.floor(doe / 146096)) / 365,
  );
  const doy = doe - (365 * yoe + Math.floor(yoe / 4) - Math.floor(yoe / 100));
  const mp = Math.floor((5 * doy + 2) / 153);
  const month = mp < 10 ? mp + 3 : mp - 9;
  return {
    year: yoe + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: doy - Math.floor((153 * mp + 2) / 5) + 1,
  };
}

/** 1–366. */
export function dayOfYear(day: Day): number {
  return day - dayFromCivil(civilFromDay(day).year, 1, 1) + 1;
}

export function daysInMonth(year: number, month: number): number {
  return (
    dayFromCivil(month === 12 ? year + 1 : year, month === 12 ? 1 : month + 1, 1) -
    dayFromCivil(year, month, 1)
  );
}

export function isoFromDay(day: Day): string {
  const { year, month, dayOfMonth } = civilFromDay(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

/** The day of an ISO date, or null when the text is not a real calendar date. */
export function dayFromIso(text: string): Day | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return null;
  const [year, month, dayOfMonth] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return null;
  return dayFromCivil(year, month, dayOfMonth);
}

/** The same day of the month `count` months on, held back to the month's last day where it is shorter. */
export function addMonths(day: Day, count: number): Day {
  const { year, month, dayOfMonth } = civilFromDay(day);
  const index = year * 12 + (month - 1) + count;
  const toYear = Math.floor(index / 12);
  const toMonth = index - toYear * 12 + 1;
  return dayFromCivil(toYear, toMonth, Math.min(dayOfMonth, daysInMonth(toYear, toMonth)));
}
