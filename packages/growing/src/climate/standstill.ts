/**
 * The midwinter weeks in which growth is next to nothing at a site, by two rules of thumb that differ by two or three
 * weeks at each end: day length under ten hours (Forsythe et al. 1995, sunrise with refraction), and light inside an
 * unheated tunnel under about 2 MJ/m²/day (seven-day mean of the normal year). Either hemisphere; null where the year
 * has no such time.
 */
import { generatorTable } from '../generated/generator.ts';
import type { MonthlyNormals, Site } from './climate.ts';
import { normalRadiationMJPerM2Day } from './normal-year.ts';
import { dayLengthHours } from './sun.ts';
import { dayOfYearOfSlot, slotCount } from './year-slots.ts';

/** Days of a common year, 1–365, both included; `from` is after `to` where the range spans the new year. */
export interface DayOfYearRange {
  readonly fromDayOfYear: number;
  readonly toDayOfYear: number;
  readonly days: number;
}

export interface StandstillPeriod {
  readonly shortDays: DayOfYearRange | null;
  /** Null too where nothing is known of the light. */
  readonly lowLight: DayOfYearRange | null;
}

/** The longest run of slots, round the year, for which the condition holds. */
function longestRun(holds: (slot: number) => boolean): DayOfYearRange | null {
  let best = { from: 0, days: 0 };
  let days = 0;
  for (let i = 0; i < 2 * slotCount; i++) {
    if (!holds(i % slotCount)) {
      days = 0;
      continue;
    }
    days = Math.min(slotCount, days + 1);
    if (days > best.days) best = { from: i - days + 1, days };
  }
  if (best.days === 0) return null;
  return {
    fromDayOfYear: dayOfYearOfSlot(best.from % slotCount),
    toDayOfYear: dayOfYearOfSlot((best.from + best.days - 1) % slotCount),
    days: best.days,
  };
}

export function standstillPeriod(site: Site, normals: MonthlyNormals | null = null): StandstillPeriod {
  const table = generatorTable.standstill;
  const shortDays = longestRun(
    (slot) => dayLengthHours(site.latitudeDeg, dayOfYearOfSlot(slot)) < table['day-length-hours'],
  );
  if (normals === null) return { shortDays, lowLight: null };
  const outside = normalRadiationMJPerM2Day(site, normals);
  const inside7 = (slot: number): number => {
    let sum = 0;
    for (let back = 0; back < 7; back++) sum += outside[(slot - back + slotCount) % slotCount]!;
    return (sum / 7) * table['tunnel-transmission'];
  };
  return { shortDays, lowLight: longestRun((slot) => inside7(slot) < table['inside-light-mj']) };
}
