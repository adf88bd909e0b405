/**
 * Late springs and dry Mays, found among the members themselves and not made: the members whose spring (March to May; in
 * the south September to November) is among the coldest fifth by mean temperature, or whose May (November) is among the
 * driest fifth by rain. A fifth: about one year in five, which is what gardeners call a late one. Judged; the share may
 * lie between a tenth and a third without changing what is meant.
 */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { DailyWeather } from './climate.ts';

export type SeasonExtreme = 'late-spring' | 'dry-may';

export const extremeShare = 0.2;

export interface Season {
  readonly fromDay: Day;
  /** Exclusive. */
  readonly toDay: Day;
}

const months: Readonly<Record<SeasonExtreme, readonly [first: number, count: number]>> = {
  'late-spring': [3, 3],
  'dry-may': [5, 1],
};

/** The first such season of which at least half lies on or after a day. */
export function seasonAfter(extreme: SeasonExtreme, day: Day, southern: boolean): Season {
  const [first, count] = months[extreme];
  const month = southern ? ((first + 5) % 12) + 1 : first;
  for (let year = civilFromDay(day).year - 1; ; year++) {
    const fromDay = dayFromCivil(year, month, 1);
    const last = month + count;
    const toDay = dayFromCivil(last > 12 ? year + 1 : year, last > 12 ? last - 12 : last, 1);
    if ((fromDay + toDay) / 2 >= day) return { fromDay, toDay };
  }
}

/** What makes the season what it is: mean temperature, °C, or rain, mm. Lower is more extreme. */
export function seasonValue(weather: DailyWeather, extreme: SeasonExtreme, season: Season): number {
  const from = Math.max(0, season.fromDay - weather.startDay);
  const to = Math.min(weather.tmaxC.length, season.toDay - weather.startDay);
  let sum = 0;
  for (let i = from; i < to; i++)
    sum += extreme === 'dry-may' ? weather.rainMm[i]! : (weather.tmaxC[i]! + weather.tminC[i]!) / 2;
  return extreme === 'dry-may' ? sum : sum / Math.max(1, to - from);
}

/** Indices of the most extreme fifth (at least one), rising. */
export function extremeOf(values: readonly number[]): number[] {
  const order = values.map((_, i) => i).sort((a, b) => values[a]! - values[b]! || a - b);
  return order.slice(0, Math.max(1, Math.round(values.length * extremeShare))).sort((a, b) => a - b);
}
