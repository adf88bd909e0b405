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
import { coversTable } from '../generated/covers.ts';

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
