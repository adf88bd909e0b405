import { civilFromDay, mondayOf, type Week } from '@twelvemonth/basis';
import type { Garden, RoleAppetite } from '@twelvemonth/garden';
import { type Appetite, allRoles } from '@twelvemonth/growing';
import { roomOf } from './stock.ts';

/** Adults' worth of eaters of a role. */
export function eatersOf(garden: Garden, role: string): number {
  return garden.household.people.reduce((sum, p) => sum + (p.eaterShare[role] ?? p.eaterShare.other ?? 1), 0);
}

function shareAtHome(garden: Garden, week: Week): number {
  let away = 0;
  for (let day = mondayOf(week); day < mondayOf(week) + 7; day++)
    if (garden.household.weeksAway.some((w) => day >= w.fromDay && day <= w.toDay)) away++;
  return 1 - away / 7;
}

/** Monthly values joined by straight lines between the middles of months. */
export function servingsInWeek(byMonth: readonly number[], week: Week): number {
  const { month, dayOfMonth } = civilFromDay(mondayOf(week) + 3);
  const middle = (dayOfMonth - 15.5) / 30.5;
  const here = byMonth[month - 1]!;
  const other = byMonth[(month - 1 + (middle >= 0 ? 1 : 11)) % 12]!;
  return here + (other - here) * Math.abs(middle);
}

export function appetiteOf(garden: Garden, fromWeek: Week, weekCount: number): Appetite {
  const wanted = new Map<string, RoleAppetite>(garden.household.appetite.map((a) => [a.role, a]));
  const roles = allRoles()
    .map((row) => row.id)
    .filter((role) => wanted.has(role));
  const garden2d = roles.map(() => new Float64Array(weekCount));
  const bought2d = roles.map(() => new Float64Array(weekCount));
  roles.forEach((role, r) => {
    const appetite = wanted.get(role)!;
    const bought = appetite.cover === 'none' ? 1 : appetite.boughtShare;
    const eaters = eatersOf(garden, role);
    for (let w = 0; w < weekCount; w++) {
      const week = fromWeek + w;
      const all = servingsInWeek(appetite.servingsPerWeekByMonth, week) * eaters * shareAtHome(garden, week);
      garden2d[r]![w] = all * (1 - bought);
      bought2d[r]![w] = all * bought;
    }
  });
  const kindCap = roles.map((role) => {
    const cap = wanted.get(role)!.sameKindCapPerWeek;
    return cap === null ? Number.POSITIVE_INFINITY : cap * eatersOf(garden, role);
  });
  return { fromWeek, weekCount, roles, garden: garden2d, bought: bought2d, kindCap, roomG: roomOf(garden) };
}
