/** What strips hold, and what is said of it: placements, what they follow, rests that are broken. */
import type { Week } from '@twelvemonth/basis';
import type { Bed } from '../problem.ts';
import { followOnPricePerM2, type Occupant, restPricePerM2, restYearsMissing } from './strip-prices.ts';

export interface Booking {
  readonly id: string;
  readonly family: string;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly stripsCount: number;
  /** Where it stands now, if anywhere. */
  readonly place: string | null;
  readonly placeNumber: number | null;
  /** Year of planting for rotation; 0 where nobody asks. */
  readonly year?: number;
  readonly compostLPerM2?: number;
  readonly spoiltByFresh?: boolean;
}

export interface Placement {
  readonly booking: string;
  readonly bed: Bed;
  /** First strip, 1-based. */
  readonly stripsFrom: number;
  readonly stripsCount: number;
  /** Bookings that stood there before and end at or before the start. */
  readonly follows: readonly string[];
}

/** A family that is back on strips before its rest is over. */
export interface BrokenRest {
  readonly booking: string;
  readonly family: string;
  /** Years since it was planted there last. */
  readonly afterYears: number;
  readonly restYears: number;
  readonly stripsCount: number;
  /** Its disease is on record in this ground. */
  readonly onRecord: boolean;
}

export interface Strip {
  readonly bed: Bed;
  readonly index: number;
  readonly past: readonly Occupant[];
  readonly held: Set<Occupant>;
}

export const lastBefore = (strip: Strip, occupant: Occupant): Occupant | null => {
  let last: Occupant | null = null;
  for (const other of strip.held)
    if (other.toWeek <= occupant.fromWeek && (last === null || other.toWeek > last.toWeek)) last = other;
  return last;
};

export function placementsOf(occupant: Occupant, strips: readonly Strip[]): Placement[] {
  const placements: (Placement & { follows: string[] })[] = [];
  let before: Strip | null = null;
  for (const strip of strips) {
    const joins = before !== null && before.bed === strip.bed && before.index + 1 === strip.index;
    const last = lastBefore(strip, occupant);
    const open = placements.at(-1);
    if (joins && open !== undefined)
      placements[placements.length - 1] = { ...open, stripsCount: open.stripsCount + 1 };
    else
      placements.push({
        booking: occupant.id,
        bed: strip.bed,
        stripsFrom: strip.index + 1,
        stripsCount: 1,
        follows: [],
      });
    const { follows } = placements.at(-1)!;
    if (last !== null && !follows.includes(last.id)) follows.push(last.id);
    before = strip;
  }
  return placements;
}

export function restsOf(
  occupant: Occupant,
  strips: readonly Strip[],
  recorded: ReadonlySet<string>,
): BrokenRest[] {
  const stripsByGap = new Map<number, number>();
  for (const strip of strips) {
    const years = [...strip.past, ...strip.held]
      .filter((o) => o !== occupant && o.family === occupant.family && o.toWeek <= occupant.fromWeek)
      .map((o) => o.year)
      .filter((year) => year < occupant.year);
    if (years.length === 0) continue;
    const gap = occupant.year - Math.max(...years);
    if (restYearsMissing(occupant.family, occupant.year - gap, occupant.year) > 0)
      stripsByGap.set(gap, (stripsByGap.get(gap) ?? 0) + 1);
  }
  return [...stripsByGap]
    .sort((a, b) => a[0] - b[0])
    .map(([afterYears, stripsCount]) => ({
      booking: occupant.id,
      family: occupant.family,
      afterYears,
      restYears:
        afterYears - 1 + restYearsMissing(occupant.family, occupant.year - afterYears, occupant.year),
      stripsCount,
      onRecord: recorded.has(occupant.family),
    }));
}

/** Price of what stands there before it, a m²: each pair of crops on a strip is counted with the later one. */
export function backwardPricePerM2(occupant: Occupant, strip: Strip, recorded: ReadonlySet<string>): number {
  let year = Number.NEGATIVE_INFINITY;
  for (const held of [strip.past, strip.held])
    for (const other of held)
      if (other.family === occupant.family && other.toWeek <= occupant.fromWeek && other.year < occupant.year)
        year = Math.max(year, other.year);
  const last = lastBefore(strip, occupant);
  const rest = restPricePerM2(occupant.family, year, occupant.year, recorded.has(occupant.family));
  return rest + (last === null ? 0 : followOnPricePerM2(last, occupant));
}
