/**
 * Water in the ground: a bucket as deep as the roots reach (FAO-56 ch. 8), and when a bed can be worked.
 *
 *   Dr(i) = clip(Dr(i−1) − P + Ks Kc ET0, 0, TAW)     Ks = (TAW − Dr)/((1 − p) TAW), at most 1
 *   W(i) = max(0, W(i−1) + P − drain − Kc ET0)        unworkable where W > limit or the soil is frozen
 *
 * Dr what the root zone lacks, mm · P rain that reaches it · TAW available water = 1000 · 0.14 · root depth · p the share
 * taken up with ease · W water above field capacity, mm · ET0 Hargreaves, mm/day
 */
import type { Day } from '@twelvemonth/basis';
import type { Rooting } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';

const water = coversTable.water;
const roots = {
  shallow: coversTable['water-shallow'],
  middle: coversTable['water-middle'],
  deep: coversTable['water-deep'],
} as const;

/** Ks of each day as it begins, for ground that is full on the first. */
export function waterShares(
  rooting: Rooting,
  rainMm: ArrayLike<number>,
  et0Mm: ArrayLike<number>,
): Float64Array {
  const totalMm = water['available-mm-per-m'] * roots[rooting]['root-depth-m'];
  const readyFromMm = (1 - roots[rooting]['easy-share']) * totalMm;
  const shares = new Float64Array(rainMm.length);
  let lackMm = 0;
  for (let i = 0; i < shares.length; i++) {
    const share = Math.min(1, (totalMm - lackMm) / readyFromMm);
    shares[i] = share;
    const used = share * water['crop-coefficient'] * et0Mm[i]!;
    lackMm = Math.min(totalMm, Math.max(0, lackMm - rainMm[i]! + used));
  }
  return shares;
}

/** For each day the first day from it on that is neither frozen nor waterlogged; the day after the run if there is none. */
export function workableDays(
  startDay: Day,
  rainMm: ArrayLike<number>,
  et0Mm: ArrayLike<number>,
  soilC: ArrayLike<number>,
  wetPlace: boolean,
): Int32Array {
  const row = coversTable.waterlogging;
  const drainMm = row[wetPlace ? 'drain-wet-place-mm-per-day' : 'drain-mm-per-day'];
  const count = rainMm.length;
  const workable = new Uint8Array(count);
  let aboveMm = 0;
  for (let i = 0; i < count; i++) {
    aboveMm = Math.max(0, aboveMm + rainMm[i]! - drainMm - water['crop-coefficient'] * et0Mm[i]!);
    workable[i] = aboveMm <= row['too-wet-above-mm'] && soilC[i]! > row['frozen-below-soil-c'] ? 1 : 0;
  }
  const days = new Int32Array(count);
  let next = startDay + count;
  for (let i = count - 1; i >= 0; i--) {
    if (workable[i] === 1) next = startDay + i;
    days[i] = next;
  }
  return days;
}
