/** When a sowing is up in the weather of its place, and how much of it: emergence.ts and germination-share.ts together. */
import type { Day } from '@twelvemonth/basis';
import type { CropType } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';
import { dayOfSum, NEVER, type PlaceClock, sumBetween } from './place-clock.ts';

const { 'longest-emergence-days': longestEmergenceDays } = coversTable.raising;
/** Share of the seed coming up under which a sowing counts as never up. */
export const leastGerminatingShare: number = coversTable.seed['least-germinating-share'];

/** Sets and cloves carry their own start: their growth counts from planting. */
export const growsFromEmergence = (kind: CropType): boolean =>
  kind.startsAs === 'seed' || kind.startsAs === 'tuber';

/**
 * Share of the seed that comes up at the warmth it meets, 0–1 against the best: each day's progress weighs with the
 * share that its temperature lets up. Sets and the like: 1. `emergenceDay` lies after `sownDay`, and before NEVER.
 */
export function shareUpBetween(clock: PlaceClock, kind: CropType, sownDay: Day, emergenceDay: Day): number {
  if (kind.startsAs !== 'seed') return 1;
  const up = sumBetween(clock, clock.seedlings(kind), sownDay, emergenceDay);
  return up / sumBetween(clock, clock.emergence(kind), sownDay, emergenceDay);
}

export interface Emerged {
  /** NEVER when it takes too long, or too little of it comes. */
  readonly emergenceDay: Day;
  /** Of the seed that can germinate; 1 for sets and the like and for `counted` plants. */
  readonly germinatingShare: number;
}

const neverUp: Emerged = { emergenceDay: NEVER, germinatingShare: 0 };

export function emerge(clock: PlaceClock, kind: CropType, sownDay: Day, counted: boolean): Emerged {
  const emergenceDay = dayOfSum(clock, clock.emergence(kind), sownDay, 1);
  if (growsFromEmergence(kind) && emergenceDay - sownDay > longestEmergenceDays) return neverUp;
  if (counted) return { emergenceDay, germinatingShare: 1 };
  const germinatingShare = shareUpBetween(clock, kind, sownDay, emergenceDay);
  return germinatingShare < leastGerminatingShare ? neverUp : { emergenceDay, germinatingShare };
}
