import { civilFromDay, type Day, dayFromCivil, isoFromDay } from '@twelvemonth/basis';
import { type ForecastContext, standstillPeriod } from '@twelvemonth/growing';
import type { PlanReport } from '../report/plan-report.ts';

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
