import { civilFromDay, type Day, dayFromCivil, dayOfYear, isoFromDay } from '@twelvemonth/basis';
import { type ForecastContext, NEVER, standstillPeriod } from '@twelvemonth/growing';
import { dayBandOf } from '../forecast/day-band.ts';
import type { DayBand, PlanReport } from '../report/plan-report.ts';

/** The ten-hour standstill of each winter that the horizon touches. */
export function standstills(context: ForecastContext, fromDay: Day, weeks: number): PlanReport['standstill'] {
  const { shortDays } = standstillPeriod(context.site);
  if (shortDays === null) return [];
  const last = fromDay + weeks * 7;
  const found: { from: string; to: string }[] = [];
  for (let year = civilFromDay(fromDay).year - 1; year <= civilFromDay(last).year; year++) {
    const from = dayFromCivil(year, 1, 1) + shortDays.fromDayOfYear - 1;
    const to = from + shortDays.days - 1;
    if (to >= fromDay && from <= last) found.push({ from: isoFromDay(from), to: isoFromDay(to) });
  }
  return found;
}

/** Last air frost of spring and first of autumn over the members, in the year that begins at the plan. */
export function frostDays(
  context: ForecastContext,
  fromDay: Day,
): { lastSpring: DayBand; firstAutumn: DayBand } {
  const southern = context.site.latitudeDeg < 0;
  const season = (day: Day): number => (dayOfYear(day) + (southern ? 182 : 0)) % 365;
  const spring: number[] = [];
  const autumn: number[] = [];
  for (const member of context.members) {
    const { tminC, startDay } = member.outdoor;
    let last = NEVER;
    let first = NEVER;
    for (let day = fromDay; day < fromDay + 365; day++) {
      if (tminC[day - startDay]! >= 0) continue;
      if (season(day) < 195) last = day;
      else if (first === NEVER) first = day;
    }
    spring.push(last);
    autumn.push(first);
  }
  const none = spring.map(() => 'no-frost-in-most-years');
  return { lastSpring: dayBandOf(spring, none, 'earlier'), firstAutumn: dayBandOf(autumn, none) };
}
