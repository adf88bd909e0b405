/**
 * The cheapest set of so many strips out of a row of beds, exactly: strips in order, a strip is taken or not,
 *
 *   best(s, k, state) = min over taking strip s or leaving it,   state: taken | left, bed in use | left, bed not in use
 *
 * A run that begins costs for the piece, more so in another bed, and a little where it leaves a free strip beside it.
 * Strips × wanted × 3 steps.
 */
import type { Bed } from '../problem.ts';

export interface OfferedStrip {
  readonly bed: Bed;
  /** 0-based within the bed. */
  readonly index: number;
  readonly free: boolean;
  readonly price: number;
}

/** A sowing in another bed, a second piece in the same bed, a gap left beside it: weighted servings. Judged. */
export const otherBedPrice = 0.5;
export const otherPiecePrice = 0.4;
const gapPrice = 0.02;

const taken = 0;
const leftInUse = 1;
const leftUnused = 2;

/** Indices of the strips, rising; as many as are free when there are fewer than wanted. */
export function chooseStrips(offered: readonly OfferedStrip[], wanted: number): number[] {
  const freeCount = offered.reduce((sum, strip) => sum + Number(strip.free), 0);
  const need = Math.min(wanted, freeCount);
  if (need <= 0) return [];
  const width = (need + 1) * 3;
  const at = (s: number, k: number, state: number): number => s * width + k * 3 + state;
  const cost = new Float64Array((offered.length + 1) * width).fill(Number.POSITIVE_INFINITY);
  const from = new Int8Array((offered.length + 1) * width).fill(-1);
  cost[at(0, 0, leftUnused)] = 0;
  const reach = (to: number, value: number, state: number): void => {
    if (value >= cost[to]! - 1e-12) return;
    cost[to] = value;
    from[to] = state;
  };
  offered.forEach((strip, s) => {
    const before = s > 0 ? offered[s - 1]! : null;
    const sameBed = before !== null && before.bed === strip.bed;
    const gapBefore = sameBed && before.free ? gapPrice : 0;
    for (let k = 0; k <= need; k++)
      for (let state = 0; state < 3; state++) {
        const now = cost[at(s, k, state)]!;
        if (now === Number.POSITIVE_INFINITY) continue;
        const inUse = sameBed && state !== leftUnused;
        const gapAfter = state === taken && sameBed && strip.free ? gapPrice : 0;
        reach(at(s + 1, k, inUse ? leftInUse : leftUnused), now + gapAfter, state);
        if (!strip.free || k === need) continue;
        const joins = sameBed && state === taken;
        const begins = joins ? 0 : gapBefore + (inUse ? otherPiecePrice : otherBedPrice);
        reach(at(s + 1, k + 1, taken), now + begins + strip.price, state);
      }
  });
  let state = taken;
  for (const other of [leftInUse, leftUnused])
    if (cost[at(offered.length, need, other)]! < cost[at(offered.length, need, state)]!) state = other;
  const chosen: number[] = [];
  let k = need;
  for (let s = offered.length; s > 0; s--) {
    const previous = from[at(s, k, state)]!;
    if (state === taken) {
      chosen.push(s - 1);
      k--;
    }
    state = previous;
  }
  return chosen.reverse();
}
