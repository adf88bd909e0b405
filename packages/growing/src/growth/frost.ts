/**
 * Frost loss. A plant dies when the minimum falls below its own killing temperature; plants differ, so the share lost
 * is a logistic of the margin, and repeated nights of the same cold kill no more than the coldest of them: the loss up
 * to a day follows the smallest margin so far. The killing temperature moves between soft and hardened with the
 * hardening of the place (Tamura 2000, 2002; Fennell & Li). Seedlings die at a minimum some degrees higher.
 *
 *   T50 = soft + (hardened − soft)·h + young;  lost = 1 / (1 + exp(margin / spread)),  margin = Tmin − T50 + gain
 *
 * | symbol | meaning | unit |
 * | h | hardened share of the place, 0–1, as the day before left it | – |
 * | young | how much less a seedling stands, until its reference days are over | °C |
 * | gain | what a rigid cover or a night's fleece is worth | °C |
 * | spread | how much plants differ (tables/covers.csv, frost) | °C |
 *
 * Flowers, curds, heads and pods are spoiled at a minimum of their own, which does not harden: `part-frost-c`, over the
 * days for which that part stands in the weather. Known weakness: ice on roots, heaving and the speed of the thaw are
 * not there; repeated frosts do no more harm than the worst.
 */
import type { Day } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';
import type { PlaceClock } from './place-clock.ts';

export interface FrostTraits {
  readonly frostSoftC: number;
  readonly frostHardenedC: number;
}

const spreadC = coversTable.frost['plant-spread-c'];

export function frostThresholdC(traits: FrostTraits, hardenedShare: number): number {
  return traits.frostSoftC + (traits.frostHardenedC - traits.frostSoftC) * hardenedShare;
}

export function frostLostShare(smallestMarginC: number): number {
  if (smallestMarginC > 6) return 0;
  return 1 / (1 + Math.exp(smallestMarginC / spreadC));
}

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
