/**
 * The cold that a plant has had and kept. Warm days take back what cold days gave, never below nothing, so the balance
 * is a running sum with a floor; what has once reached a plant's need has set its flower and is not taken back.
 *
 *   B(t) = S(t) − min S over from…t            needed is the highest B so far
 *
 * S is the running sum of daily changes in one place. It turns from rising to falling only at warm spells, so the days
 * on which it turns are kept beside it: a question walks over the warm spells, of which a winter has none, and ends in
 * a binary search. Source of the form: the one-sided cumulative sum (Page 1954), applied to devernalisation.
 */
import type { Day } from '@twelvemonth/basis';
import { NEVER, type RunningSum } from './running-sum.ts';

export interface ColdBalance {
  readonly startDay: Day;
  /** One entry more than there are days, as every running sum. */
  readonly sum: RunningSum;
  /** Indices at which the sum turns, ascending, the last entry of the sum included. */
  readonly turns: Int32Array;
}

export function makeColdBalance(startDay: Day, dayCount: number, change: (i: number) => number): ColdBalance {
  const sum = new Float64Array(dayCount + 1);
  const turns: number[] = [];
  let falling = false;
  for (let i = 0; i < dayCount; i++) {
    const step = change(i);
    if (step < 0 !== falling && step !== 0) {
      turns.push(i);
      falling = step < 0;
    }
    sum[i + 1] = sum[i]! + step;
  }
  turns.push(dayCount);
  return { startDay, sum, turns: Int32Array.from(turns) };
}

function firstTurnAfter(turns: Int32Array, index: number): number {
  let low = 0;
  let high = turns.length - 1;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (turns[middle]! <= index) low = middle + 1;
    else high = middle;
  }
  return low;
}

function indexOf(balance: ColdBalance, day: Day): number {
  return Math.min(Math.max(0, day - balance.startDay), balance.sum.length - 1);
}

/** Highest balance from `fromDay` up to (not with) `toDay`, °C·d. */
export function highestBalanceCDays(balance: ColdBalance, fromDay: Day, toDay: Day): number {
  const { sum, turns } = balance;
  const to = indexOf(balance, toDay);
  let floor = sum[indexOf(balance, fromDay)]!;
  let highest = 0;
  for (let k = firstTurnAfter(turns, indexOf(balance, fromDay)); k < turns.length; k++) {
    const here = Math.min(turns[k]!, to);
    const value = sum[here]!;
    if (value - floor > highest) highest = value - floor;
    if (value < floor) floor = value;
    if (here === to) break;
  }
  return highest;
}

/** First day on which the balance since `fromDay` has reached `amount`; NEVER when the weather ends before. */
export function dayOfBalance(balance: ColdBalance, fromDay: Day, amountCDays: number): Day {
  const { sum, turns, startDay } = balance;
  if (fromDay >= NEVER || fromDay - startDay >= sum.length) return NEVER;
  let low = indexOf(balance, fromDay);
  if (amountCDays <= 0) return startDay + low;
  let floor = sum[low]!;
  for (let k = firstTurnAfter(turns, low); k < turns.length; k++) {
    const turn = turns[k]!;
    if (sum[turn]! - floor >= amountCDays) {
      let high = turn;
      while (low < high) {
        const middle = (low + high) >>> 1;
        if (sum[middle]! - floor < amountCDays) low = middle + 1;
        else high = middle;
      }
      return startDay + low;
    }
    if (sum[turn]! < floor) floor = sum[turn]!;
    low = turn;
  }
  return NEVER;
}
