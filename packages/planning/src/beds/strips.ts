/**
 * Real beds: each sowing gets strips of half a metre for its weeks. Strips of a class are alike, and a week never asks
 * for more than there are, so taking sowings in the order in which they begin always finds room; what is chosen is
 * which strips: side by side in one bed, not after the same family if another bed will do, in the bed that is left
 * fullest. What stands keeps its bed.
 */
import type { Week } from '@twelvemonth/basis';
import type { Bed, GroundClass } from '../problem.ts';

export interface Booking {
  readonly id: string;
  readonly family: string;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly stripsCount: number;
  /** Where it stands now, if anywhere. */
  readonly place: string | null;
  readonly placeNumber: number | null;
}

export interface Placement {
  readonly booking: string;
  readonly bed: Bed;
  /** First strip, 1-based. */
  readonly stripsFrom: number;
  readonly stripsCount: number;
  /** Bookings that stood there before and end at or before the start. */
  readonly follows: readonly string[];
}

interface Strip {
  readonly bed: Bed;
  readonly index: number;
  freeFromWeek: Week;
  lastFamily: string | null;
  lastBooking: string | null;
}

const sameFamilyCost = 6;
const otherBedCost = 4;

function runsOf(strips: readonly Strip[], booking: Booking): Strip[][] {
  const runs: Strip[][] = [];
  let run: Strip[] = [];
  let before: Strip | null = null;
  for (const strip of strips) {
    const free = strip.freeFromWeek <= booking.fromWeek;
    const joined = before !== null && before.bed === strip.bed;
    if (!free || !joined) {
      if (run.length > 0) runs.push(run);
      run = [];
    }
    if (free) run.push(strip);
    before = strip;
  }
  if (run.length > 0) runs.push(run);
  return runs;
}

function costOfRun(run: readonly Strip[], booking: Booking, need: number): number {
  const used = run.slice(0, need);
  const same = used.filter((strip) => strip.lastFamily === booking.family).length;
  const away = booking.place !== null && run[0]!.bed.place !== booking.place ? 100 : 0;
  const other = booking.placeNumber !== null && run[0]!.bed.number !== booking.placeNumber ? 10 : 0;
  return (
    same * sameFamilyCost +
    away +
    other +
    (run.length - used.length) * 0.1 +
    (used.length < need ? otherBedCost * (need - used.length) : 0)
  );
}

export function placeInStrips(
  ground: GroundClass,
  bookings: readonly Booking[],
): { readonly placements: Placement[]; readonly unplaced: string[] } {
  const strips: Strip[] = ground.beds.flatMap((bed) =>
    Array.from({ length: bed.stripCount }, (_, index) => ({
      bed,
      index,
      freeFromWeek: Number.NEGATIVE_INFINITY,
      lastFamily: null,
      lastBooking: null,
    })),
  );
  const placements: Placement[] = [];
  const unplaced: string[] = [];
  const order = bookings
    .filter((b) => b.stripsCount > 0 && b.toWeek > b.fromWeek)
    .sort(
      (a, b) =>
        a.fromWeek - b.fromWeek ||
        Number(b.place !== null) - Number(a.place !== null) ||
        b.stripsCount - a.stripsCount ||
        (a.id < b.id ? -1 : 1),
    );
  for (const booking of order) {
    let need = booking.stripsCount;
    while (need > 0) {
      const runs = runsOf(strips, booking);
      if (runs.length === 0) break;
      const run = runs.reduce((best, r) =>
        costOfRun(r, booking, need) < costOfRun(best, booking, need) ? r : best,
      );
      const used = run.slice(0, need);
      const follows = [...new Set(used.flatMap((s) => (s.lastBooking === null ? [] : [s.lastBooking])))];
      placements.push({
        booking: booking.id,
        bed: run[0]!.bed,
        stripsFrom: used[0]!.index + 1,
        stripsCount: used.length,
        follows,
      });
      for (const strip of used) {
        strip.freeFromWeek = booking.toWeek;
        strip.lastFamily = booking.family;
        strip.lastBooking = booking.id;
      }
      need -= used.length;
    }
    if (need > 0) unplaced.push(booking.id);
  }
  return { placements, unplaced };
}
