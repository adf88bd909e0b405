/**
 * Flowers, curds and pods are tenderer than leaves: from the day on which they show, a night below their own killing
 * temperature takes its share of the harvest, by the same spread as leaves (frost.ts).
 */
import type { Day } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { frostLostShare } from './frost.ts';
import type { PlaceClock } from './place-clock.ts';

/** A harvest taken whole carries every frost since its part appeared; one picked week by week only the last ones. */
const takenWhole = (harvest: Harvest): boolean => harvest.habit === 'once' || harvest.habit === 'stands';

/** Share of a harvest's flowers, curds or pods that frost has left sound on a day of taking it. */
export function partSoundShare(
  harvest: Harvest,
  bed: PlaceClock,
  groundDay: Day,
  firstDay: Day,
  day: Day,
  gainC: number,
): number {
  const { partFrostC, partFrostDays } = harvest;
  if (partFrostC === null) return 1;
  const shown = (takenWhole(harvest) ? firstDay : day) - partFrostDays;
  const minima = bed.weekMinima();
  const until = Math.min(minima.length, Math.floor((day - bed.startDay) / 7));
  let smallest = 99;
  for (let w = Math.max(0, Math.floor((Math.max(shown, groundDay) - bed.startDay) / 7)); w < until; w++)
    if (minima[w]! < smallest) smallest = minima[w]!;
  return 1 - frostLostShare(smallest - partFrostC + gainC);
}
