/**
 * A year of 365 slots: monthly normals spread over it, and calendar days mapped onto it (29 February shares the slot of
 * 28 February). Monthly values become a piecewise straight line through mid-month anchors, the anchors moved until
 * every month's mean is what it was (after Rymes & Myers 2001, Solar Energy 71:225).
 */
import { civilFromDay, type Day, invariant } from '@twelvemonth/basis';

export const slotCount = 365;
export const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const monthStarts: readonly number[] = monthLengths.map((_, month) =>
  monthLengths.slice(0, month).reduce<number>((sum, length) => sum + length, 0),
);
const middles: readonly number[] = monthLengths.map(
  (length, month) => monthStarts[month]! + (length - 1) / 2,
);

export const monthOfSlot: readonly number[] = monthLengths.flatMap((length, month) =>
  Array.from({ length }, () => month),
);

function lineThrough(anchors: ArrayLike<number>): Float64Array {
  const line = new Float64Array(slotCount);
  for (let slot = 0; slot < slotCount; slot++) {
    let month = monthOfSlot[slot]!;
    if (slot < middles[month]!) month = (month + 11) % 12;
    const next = (month + 1) % 12;
    const gap = (middles[next]! - middles[month]! + slotCount) % slotCount;
    const share = ((slot - middles[month]! + slotCount) % slotCount) / gap;
    line[slot] = anchors[month]! + share * (anchors[next]! - anchors[month]!);
  }
  return line;
}

export function monthlyMeans(slots: ArrayLike<number>): Float64Array {
  const means = new Float64Array(12);
  for (let slot = 0; slot < slotCount; slot++) {
    const month = monthOfSlot[slot]!;
    means[month] = means[month]! + slots[slot]! / monthLengths[month]!;
  }
  return means;
}

export function dailyFromMonthly(monthly: ArrayLike<number>): Float64Array {
  invariant(monthly.length === 12, 'monthly normals have twelve values', { length: monthly.length });
  const anchors = Float64Array.from(monthly);
  let line = lineThrough(anchors);
  for (let round = 0; round < 30; round++) {
    const means = monthlyMeans(line);
    for (let month = 0; month < 12; month++) {
      anchors[month] = anchors[month]! + monthly[month]! - means[month]!;
    }
    line = lineThrough(anchors);
  }
  return line;
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** The slot 0–364 of each day of a run. */
export function slotsFrom(startDay: Day, dayCount: number): Int16Array {
  const slots = new Int16Array(dayCount);
  const { year: firstYear, month, dayOfMonth } = civilFromDay(startDay);
  let year = firstYear;
  let slot = monthStarts[month - 1]! + Math.min(dayOfMonth, monthLengths[month - 1]!) - 1;
  let leapDayDone = month === 2 && dayOfMonth === 29;
  for (let i = 0; i < dayCount; i++) {
    slots[i] = slot;
    if (slot === 58 && isLeap(year) && !leapDayDone) {
      leapDayDone = true;
      continue;
    }
    leapDayDone = false;
    slot++;
    if (slot === slotCount) {
      slot = 0;
      year++;
    }
  }
  return slots;
}

/** Day of year that stands for a slot in the sun formulas (1–365, the common year). */
export const dayOfYearOfSlot = (slot: number): number => slot + 1;
