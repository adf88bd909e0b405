import { civilFromDay, mondayOf, type Week } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';

/** Hours that people have in a week, by the month of its Thursday; null: no limit. */
export function hoursInWeek(garden: Garden, week: Week): number | null {
  return garden.hoursPerWeekByMonth[civilFromDay(mondayOf(week) + 3).month - 1] ?? null;
}
