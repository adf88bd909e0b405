/**
 * How long a head, heart or root stands once it is worth having. It ages by growing: it splits, turns woody or runs up
 * after so much growth more, a fortnight in summer and months in winter. The calendar window is the outer bound.
 *
 *   last day = min(first day + window, day on which growth since the first day reaches standing days)
 */
import type { Day } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import type { Growing } from './growing.ts';
import { dayOfSum } from './place-clock.ts';

export function lastStandingDay(growing: Growing, harvest: Harvest, firstDay: Day): Day {
  const windowEnd = firstDay + harvest.windowDays;
  if (harvest.standingDays === null) return windowEnd;
  const { bed, growth } = growing.raised;
  return Math.min(windowEnd, dayOfSum(bed, growth, firstDay, growing.sumOf(harvest.standingDays)));
}
