/**
 * What a harvest gives when nobody is there, or seldom (tables/absence.csv, docs/models/absence.md).
 *
 * Picks that come ready in a week away are lost, or the neighbour's; beans and peas left to ripen, and fruits grown to
 * marrows, hold back what would have followed. Leaves due for cutting stand over and get coarse. What is lifted or cut
 * once waits as long as it stands. Where somebody comes by once or twice a week, part of the picks is past it.
 */
import { type Day, type Week, weekOfDay } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { absenceTable } from '../generated/absence.ts';
import { type Absence, isAwayWeek } from './away.ts';
import type { Lot, PlaceCare } from './sowing-plan.ts';

const { visits, wait } = absenceTable;

/** With so many visits a week or fewer nobody fetches salad for tonight. */
export const seldomVisitsPerWeek = visits['seldom-per-week'];

/** Nobody comes: 0; once, twice: as in the table; three times or more: all of it. */
function betweenVisits(visitsPerWeek: number, once: number, twice: number): number {
  if (visitsPerWeek >= 3) return 1;
  if (visitsPerWeek >= 2) return twice + (1 - twice) * (visitsPerWeek - 2);
  return visitsPerWeek >= 1 ? once + (twice - once) * (visitsPerWeek - 1) : once * visitsPerWeek;
}

/** Share of a harvest that is had where somebody comes by so often. */
export function visitedShare(habit: Harvest['habit'], visitsPerWeek: number): number {
  if (habit === 'picks')
    return betweenVisits(visitsPerWeek, visits['picks-once-share'], visits['picks-twice-share']);
  return habit === 'cuts' || habit === 'tips'
    ? betweenVisits(visitsPerWeek, visits['cuts-once-share'], 1)
    : 1;
}

interface LeftAlone {
  readonly 'stops-after-days': number;
  readonly 'later-share': number;
}

const leftByCrop = new Map<string, LeftAlone>(
  Object.entries(absenceTable).flatMap(([subject, row]) =>
    subject.startsWith('left-') ? [[subject.slice('left-'.length), row as LeftAlone]] : [],
  ),
);

const leftAlone = (crop: string): LeftAlone => leftByCrop.get(crop) ?? absenceTable['left-other'];

function backInWeek(away: readonly Absence[], week: Week): Week {
  let back = week;
  while (isAwayWeek(away, back)) back++;
  return back;
}

function picked(
  lots: readonly Lot[],
  crop: string,
  away: readonly Absence[],
  firstDay: Day,
  lastDay: Day,
): Lot[] {
  const rule = leftAlone(crop);
  const stopped = away.filter(
    ({ fromDay, toDay, neighbourPicks }) =>
      !neighbourPicks &&
      Math.min(toDay, lastDay) - Math.max(fromDay, firstDay) + 1 >= rule['stops-after-days'],
  );
  return lots.flatMap((lot) => {
    if (isAwayWeek(away, lot.fromWeek)) return [];
    const times = stopped.filter(({ toDay }) => weekOfDay(toDay) <= lot.fromWeek).length;
    return [{ ...lot, servings: lot.servings * rule['later-share'] ** times }];
  });
}

/** What was due while nobody was there is cut once, on coming back. */
function cut(lots: readonly Lot[], away: readonly Absence[]): Lot[] {
  const cutAt = new Set<Week>();
  return lots.flatMap((lot) => {
    if (!isAwayWeek(away, lot.fromWeek)) return [lot];
    const back = backInWeek(away, lot.fromWeek);
    const waited = back - lot.fromWeek;
    if (waited > wait['longest-cut-weeks'] || cutAt.has(back)) return [];
    cutAt.add(back);
    const servings = lot.servings * wait['cuts-share-per-week'] ** waited;
    return [{ ...lot, fromWeek: back, toWeek: lot.toWeek + waited, servings }];
  });
}

function stoodOver(lots: readonly Lot[], away: readonly Absence[]): Lot[] {
  return lots.flatMap((lot) => {
    const back = backInWeek(away, lot.fromWeek);
    const storeFromWeek = lot.storeFromWeek === null ? null : backInWeek(away, lot.storeFromWeek);
    if (back === lot.fromWeek) return [{ ...lot, storeFromWeek }];
    return lot.toWeek < back ? [] : [{ ...lot, fromWeek: back, storeFromWeek }];
  });
}

export interface Attendance {
  readonly away: readonly Absence[];
  readonly care: PlaceCare | undefined;
  readonly crop: string;
}

/** The lots of one harvest as people there so seldom, and away so long, have them. */
export function attendedLots(
  { away, care, crop }: Attendance,
  habit: Harvest['habit'],
  lots: readonly Lot[],
  firstDay: Day,
  lastDay: Day,
): Lot[] {
  const share = care === undefined ? 1 : visitedShare(habit, care.visitsPerWeek);
  const had = share === 1 ? [...lots] : lots.map((lot) => ({ ...lot, servings: lot.servings * share }));
  if (away.length === 0) return had;
  if (habit === 'picks') return picked(had, crop, away, firstDay, lastDay);
  return habit === 'cuts' || habit === 'tips' ? cut(had, away) : stoodOver(had, away);
}
