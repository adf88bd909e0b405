import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import { type ForecastContext, NEVER } from '@twelvemonth/growing';
import { dayBandOf } from '../forecast/day-band.ts';
import type { DayBand } from '../report/plan-report.ts';

/** Frosts of one cold season lie within this many days after midsummer, or before the next. */
const coldSeasonDays = 270;

/** The midsummer (15 July, in the south 15 January) on or before a day. */
export function midsummerBefore(day: Day, southern: boolean): Day {
  const { year } = civilFromDay(day);
  const month = southern ? 1 : 7;
  const here = dayFromCivil(year, month, 15);
  return here <= day ? here : dayFromCivil(year - 1, month, 15);
}

/**
 * Last air frost of spring and first of autumn over the members. In the months before midsummer that spring and the
 * autumn behind it, otherwise the autumn that comes and the spring after it.
 */
export function frostDays(
  context: ForecastContext,
  fromDay: Day,
): { readonly lastSpring: DayBand; readonly firstAutumn: DayBand } {
  const southern = context.site.latitudeDeg < 0;
  const before = midsummerBefore(fromDay, southern);
  const next = midsummerBefore(before + 380, southern);
  const inSpring = fromDay - before > 365 / 2;
  const autumnFrom = inSpring ? next : before;
  const spring: Day[] = [];
  const autumn: Day[] = [];
  for (const { outdoor } of context.members) {
    const isFrost = (day: Day): boolean => (outdoor.tminC[day - outdoor.startDay] ?? 1) < 0;
    let last = next;
    while (last > next - coldSeasonDays && !isFrost(last)) last--;
    let first = autumnFrom;
    while (first < autumnFrom + coldSeasonDays && !isFrost(first)) first++;
    spring.push(isFrost(last) ? last : NEVER);
    autumn.push(isFrost(first) ? first : NEVER);
  }
  const none = spring.map(() => 'no-frost-in-most-years');
  return { lastSpring: dayBandOf(spring, none, 'earlier'), firstAutumn: dayBandOf(autumn, none) };
}
