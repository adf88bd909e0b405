/**
 * Seedlings that get too little light for the warmth they stand in are all stem. What counts is light per day-degree
 * while they are raised (the photothermal quotient of Nix 1976; as a measure of sturdy plants: common practice):
 *
 *   W = Σ max(0, T − stretch)      Q = Σ R / W
 *   leggy = 0 for Q ≥ sturdy · 1 for Q ≤ spindly · straight line between
 *   yield share = 1 − loss · leggy      planting check · (1 + leggy)
 *
 * | symbol | meaning | unit |
 * | T | daily mean where they stand | °C |
 * | R | light on the leaves | MJ/m²/day |
 * | stretch | stems hardly stretch below it; 8, range 6–10, *judged* | °C |
 * | sturdy, spindly | 0.45 (0.3–0.6) and 0.1 (0.05–0.2), *judged* | MJ/m² per °C·d |
 * | loss | part of the crop that is lost where plants are all stem: a row of the kind | 1 |
 *
 * Range: benches, sills and mats, 5 to 25 °C. Known weakness: crowding, and light from one side only, are not in it;
 * a leggy week early on counts as much as a late one, though plants make up for it on a light bench.
 */
import type { Day } from '@twelvemonth/basis';
import { coversTable } from '../generated/covers.ts';
import { NEVER, type RunningSum } from './running-sum.ts';

const {
  'stretch-above-c': stretchAboveC,
  'sturdy-mj-per-c-day': sturdyMJPerCDay,
  'spindly-mj-per-c-day': spindlyMJPerCDay,
} = coversTable.raising;

export const stretchingCDays = (tminC: number, tmaxC: number): number =>
  Math.max(0, (tminC + tmaxC) / 2 - stretchAboveC);

/** How leggy plants get, 0 sturdy – 1 all stem, by the light they had (MJ/m²) and the warmth to stretch in (°C·d). */
export function leggyShare(lightMJPerM2: number, warmthCDays: number): number {
  if (lightMJPerM2 >= sturdyMJPerCDay * warmthCDays) return 0;
  const quotient = lightMJPerM2 / warmthCDays;
  return quotient <= spindlyMJPerCDay
    ? 1
    : (sturdyMJPerCDay - quotient) / (sturdyMJPerCDay - spindlyMJPerCDay);
}

interface LitPlace {
  readonly startDay: Day;
  readonly dayCount: number;
  light(): RunningSum;
  stretching(): RunningSum;
}

/** The same for plants that stood in one place from `fromDay` up to (not with) `toDay`. */
export function leggyShareBetween(place: LitPlace, fromDay: Day, toDay: Day): number {
  if (fromDay >= NEVER) return 0;
  const at = (day: Day): number => Math.min(Math.max(0, day - place.startDay), place.dayCount);
  const [from, to] = [at(fromDay), at(toDay)];
  const [light, warmth] = [place.light(), place.stretching()];
  return leggyShare(light[to]! - light[from]!, warmth[to]! - warmth[from]!);
}
