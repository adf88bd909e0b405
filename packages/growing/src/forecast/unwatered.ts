/**
 * What is lost when nobody waters: tubs, trays and the ground under cover have no rain. Each day of an absence beyond
 * those that the compost or soil holds out takes a share of the yield of what stands there (tables/absence.csv).
 *
 *   kept = Π over absences of (1 − loss a day)^max(0, days there − free days)
 */
import type { Day } from '@twelvemonth/basis';
import { seasonDayOfYear } from '../climate/season-day.ts';
import { absenceTable } from '../generated/absence.ts';
import type { Absence } from './away.ts';

type Dries = 'tub' | 'cover' | 'tray';

/** April to September, northern days of the year. */
const [warmFromDay, warmToDay] = [91, 273];

function keptOver(dries: Dries, from: Day, to: Day, southern: boolean): number {
  const days = to - from + 1;
  if (days <= 0) return 1;
  const row = absenceTable[`dry-${dries}`];
  const at = seasonDayOfYear(Math.floor((from + to) / 2), southern);
  const season = at >= warmFromDay && at <= warmToDay ? 'warm' : 'cool';
  const dry = Math.max(0, days - row[`${season}-free-days`]);
  return (1 - row[`${season}-loss-per-day-share`]) ** dry;
}

export interface Unwatered {
  readonly away: readonly Absence[];
  readonly southern: boolean;
  /** Raised on benches from the first day to the second; equal: not raised. */
  readonly startDay: Day;
  readonly groundDay: Day;
  readonly dries: 'tub' | 'cover' | null;
}

/** Share of the yield that dry spells up to a day have left; 1 where nobody goes away. */
export function wateredShareBy({ away, southern, startDay, groundDay, dries }: Unwatered, day: Day): number {
  let kept = 1;
  for (const { fromDay, toDay, neighbourWaters } of away) {
    if (neighbourWaters || fromDay > day) continue;
    const to = Math.min(toDay, day);
    kept *= keptOver('tray', Math.max(fromDay, startDay), Math.min(to, groundDay - 1), southern);
    if (dries !== null) kept *= keptOver(dries, Math.max(fromDay, groundDay), to, southern);
  }
  return kept;
}
