/**
 * The weather of each member. From normals: member k is a drawn run of its own (keyed by seed, purpose and k, whatever
 * the number of members). From daily records: the record is cut into weather years at the start day's anniversaries;
 * `plan` has the even ones and `check` the odd ones, so that they share no day. Member k begins in the k-th year of its
 * purpose, unbroken for a year from the start day, goes on with the next year of the same purpose, and wraps to the
 * first. Dates stay aligned: 29 February takes 28 February's weather where the record's year has none.
 */
import { civilFromDay, type Day, dayFromCivil, daysInMonth, invariant, streamFor } from '@twelvemonth/basis';
import type { DailyWeather, MemberPurpose, WeatherMembersRequest } from './climate.ts';
import { normalYear } from './normal-year.ts';
import { generateWeather } from './weather-generator.ts';

/** Where weather years are cut: the start day, 28 February for 29 February. */
function anniversaryOf(startDay: Day): { year: number; month: number; dayOfMonth: number } {
  const { year, month, dayOfMonth } = civilFromDay(startDay);
  return { year, month, dayOfMonth: month === 2 ? Math.min(28, dayOfMonth) : dayOfMonth };
}

/** First calendar years of the whole weather years that the record holds when cut at this start day. */
export function weatherYearsIn(record: DailyWeather, startDay: Day): number[] {
  const { month, dayOfMonth } = anniversaryOf(startDay);
  const cut = (year: number): Day => dayFromCivil(year, month, dayOfMonth);
  const endDay = record.startDay + record.tmaxC.length;
  const years: number[] = [];
  for (let year = civilFromDay(record.startDay).year; cut(year + 1) <= endDay; year++) {
    if (cut(year) >= record.startDay) years.push(year);
  }
  return years;
}

function yearsFor(years: readonly number[], purpose: MemberPurpose): readonly number[] {
  if (years.length < 2) return years;
  return years.filter((_, position) => position % 2 === (purpose === 'plan' ? 0 : 1));
}

/** For each day of the run: how many weather years after the start it lies, and its month and day of month. */
function calendarOf(startDay: Day, dayCount: number) {
  const first = anniversaryOf(startDay);
  const yearIndex = new Int32Array(dayCount);
  const afterNewYear = new Int32Array(dayCount);
  const months = new Uint8Array(dayCount);
  const days = new Uint8Array(dayCount);
  for (let i = 0; i < dayCount; i++) {
    const { year, month, dayOfMonth } = civilFromDay(startDay + i);
    const before = month < first.month || (month === first.month && dayOfMonth < first.dayOfMonth);
    yearIndex[i] = year - first.year - (before ? 1 : 0);
    afterNewYear[i] = before ? 1 : 0;
    months[i] = month;
    days[i] = dayOfMonth;
  }
  return { yearIndex, afterNewYear, months, days };
}

function recordMembers(request: WeatherMembersRequest, record: DailyWeather): DailyWeather[] {
  const { startDay, dayCount, memberCount, purpose } = request;
  const years = yearsFor(weatherYearsIn(record, startDay), purpose);
  invariant(years.length > 0, 'a daily record holds at least one whole year from the start day', {
    startDay,
    recordStart: record.startDay,
    recordDays: record.tmaxC.length,
  });
  const calendar = calendarOf(startDay, dayCount);
  const members: DailyWeather[] = [];
  for (let k = 0; k < memberCount; k++) {
    const member = emptyWeather(startDay, dayCount);
    for (let i = 0; i < dayCount; i++) {
      const year = years[(k + calendar.yearIndex[i]!) % years.length]! + calendar.afterNewYear[i]!;
      const month = calendar.months[i]!;
      const day = month === 2 ? Math.min(calendar.days[i]!, daysInMonth(year, 2)) : calendar.days[i]!;
      const at = dayFromCivil(year, month, day) - record.startDay;
      member.tmaxC[i] = record.tmaxC[at]!;
      member.tminC[i] = record.tminC[at]!;
      member.rainMm[i] = record.rainMm[at]!;
      member.radiationMJPerM2Day[i] = record.radiationMJPerM2Day[at]!;
    }
    members.push(member);
  }
  return members;
}

const emptyWeather = (startDay: Day, dayCount: number): DailyWeather => ({
  startDay,
  tmaxC: new Float64Array(dayCount),
  tminC: new Float64Array(dayCount),
  rainMm: new Float64Array(dayCount),
  radiationMJPerM2Day: new Float64Array(dayCount),
});

export function weatherMembers(request: WeatherMembersRequest): DailyWeather[] {
  const { site, source, seed, purpose, memberCount, startDay, dayCount } = request;
  if (source.kind === 'daily') return recordMembers(request, source.record);
  const year = normalYear(site, source.normals);
  return Array.from({ length: memberCount }, (_, k) =>
    generateWeather(year, streamFor(seed, `weather/${purpose}`, k), startDay, dayCount),
  );
}
