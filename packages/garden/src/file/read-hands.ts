import { monthNames } from './month-names.ts';
import type { WrittenHours } from './schema-hands.ts';

/** Hours a week in each month, January first; null where there is no limit. */
export function hoursByMonth(written: WrittenHours | null): readonly (number | null)[] {
  if (written === null || typeof written === 'number') return monthNames.map(() => written);
  return monthNames.map((month) => written[month] ?? written.usual ?? null);
}
