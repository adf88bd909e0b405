/** What people's time and presence allow: minutes by week, and when nobody is there. */
import type { Week } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type Absence, awayVisitMinutes, daysAway, isAwayWeek } from '@twelvemonth/growing';
import { hoursInWeek } from './hours-in-week.ts';

export function absencesOf(garden: Garden): Absence[] {
  return garden.household.weeksAway.map((away) => ({ ...away }));
}

/** Opening up and putting away at ground that is not at home, minutes a week: as often as its most visited place. */
export function visitMinutesPerWeek(garden: Garden): number {
  const visits = new Map<string, number>();
  for (const { area, visitsPerWeek, takenBy } of garden.places)
    if (area !== 'home' && takenBy === null) visits.set(area, Math.max(visits.get(area) ?? 0, visitsPerWeek));
  return [...visits.values()].reduce((sum, each) => sum + each, 0) * awayVisitMinutes;
}

/**
 * Minutes left for work on the crops in each week: the hours that people have, less going there, and only for the days
 * at home. Infinity where no limit was set; null where none was set at all and nobody goes away.
 */
export function capMinutesOf(garden: Garden, fromWeek: Week, weekCount: number): Float64Array | null {
  const away = absencesOf(garden);
  if (away.length === 0 && garden.hoursPerWeekByMonth.every((hours) => hours === null)) return null;
  const visits = visitMinutesPerWeek(garden);
  return Float64Array.from({ length: weekCount }, (_, w) => {
    const week = fromWeek + w;
    const atHome = 1 - daysAway(away, week) / 7;
    if (isAwayWeek(away, week)) return 0;
    const hours = hoursInWeek(garden, week);
    return hours === null ? Number.POSITIVE_INFINITY : Math.max(0, hours * 60 - visits) * atHome;
  });
}
