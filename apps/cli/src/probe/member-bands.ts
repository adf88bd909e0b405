import { bandOf, type Day, isoFromDay } from '@twelvemonth/basis';
import { NEVER } from '@twelvemonth/growing';

/** Days over the members as dates, those that never come last: null where that many do not. */
export function dayBand(days: readonly Day[]): Readonly<Record<'p10' | 'p50' | 'p90', string | null>> {
  const { p10, p50, p90 } = bandOf(days);
  const written = (day: number): string | null => (day > NEVER / 1e6 ? null : isoFromDay(Math.round(day)));
  return { p10: written(p10), p50: written(p50), p90: written(p90) };
}

/** Numbers of days over the members; null where that many do not come. */
export function countBand(counts: readonly number[]): Readonly<Record<'p10' | 'p50' | 'p90', number | null>> {
  const band = bandOf(counts);
  const written = (count: number): number | null => (count > NEVER / 1e6 ? null : count);
  return { p10: written(band.p10), p50: written(band.p50), p90: written(band.p90) };
}
