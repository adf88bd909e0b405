import { assembleCalendar } from './assemble-subjects.ts';
import type { CalendarRow } from './crop-type.ts';
import { readEach } from './subject-rows.ts';

let rows: readonly CalendarRow[] | null = null;

/** Published windows: what the forecast is checked against, never what plans it. */
export function calendarRows(): readonly CalendarRow[] {
  rows ??= readEach('calendar', assembleCalendar);
  return rows;
}
