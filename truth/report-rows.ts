/** Every truth row there is. The held-out calendar rows are picked out here, so that only the report knows them. */
import { climateTruthRows } from './climate/rows.ts';
import { growthTruthRows } from './growth/rows.ts';
import heldOutIds from './held-out/rows.json' with { type: 'json' };
import { calendarId, calendarTruthRows, yearlyCalendarRows } from './trade/calendar.ts';
import type { TruthRow } from './truth-row.ts';

export interface GatheredRows {
  readonly rows: readonly TruthRow[];
  readonly heldOut: readonly TruthRow[];
}

const isHeldOut = (id: string): boolean => heldOutIds.includes(id);

export const openTruthRows = (): TruthRow[] => [
  ...growthTruthRows(),
  ...calendarTruthRows(yearlyCalendarRows().filter((row) => !isHeldOut(calendarId(row)))),
];

export const gatherRows = (): GatheredRows => ({
  rows: [...climateTruthRows(), ...openTruthRows()],
  heldOut: calendarTruthRows(yearlyCalendarRows().filter((row) => isHeldOut(calendarId(row)))),
});

/** The fifth of the calendar that a fixed hash puts aside: rows.json must be this list and no other. */
export { default as heldOutIds } from './held-out/rows.json' with { type: 'json' };
