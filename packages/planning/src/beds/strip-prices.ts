/**
 * What it costs that one crop follows another on the same strip, in weighted servings a square metre. Rest: the table's
 * price of the family when it comes back the very next year, in proportion less after part of its rest,
 *
 *   price · (R + 1 − gap) / R      for gap = 1 … R years between the years of planting
 *
 * Two crops of a family planted in one year count once. Follow-on: small, to choose between like strips. Prices are
 * *judged*; docs/models/rotation.md says how.
 */
import type { Week } from '@twelvemonth/basis';
import { familyById } from '@twelvemonth/growing';

export interface Occupant {
  readonly id: string;
  readonly family: string;
  readonly fromWeek: Week;
  /** Exclusive. */
  readonly toWeek: Week;
  /** Year of planting, see `plantedYear`. */
  readonly year: number;
  /** Compost spread before it. */
  readonly compostLPerM2: number;
  /** Spoilt by ground that was fed in the half year before. */
  readonly spoiltByFresh: boolean;
}

/** Following a family after which it does well, and standing in ground fed for the crop before. Judged. */
const followsWellPrice = -0.08;
const freshlyFedPrice = 0.25;
/** So much compost counts as feeding, and so long it is fresh. */
export const hungryFromLPerM2 = 8;
const freshForWeeks = 26;

/** Years that a family has come back too soon; 0 when it has rested or was planted in the same year. */
export function restYearsMissing(family: string, earlierYear: number, laterYear: number): number {
  const gap = laterYear - earlierYear;
  return gap <= 0 ? 0 : Math.max(0, (familyById(family)?.restYears ?? 0) + 1 - gap);
}

export function restPricePerM2(
  family: string,
  earlierYear: number,
  laterYear: number,
  onRecord: boolean,
): number {
  const row = familyById(family);
  const missing = restYearsMissing(family, earlierYear, laterYear);
  if (row === undefined || missing === 0) return 0;
  const whole = onRecord ? row.recordedBreakPriceServingsPerM2 : row.breakPriceServingsPerM2;
  return (whole * missing) / row.restYears;
}

/** `before` is the crop that stood there last. */
export function followOnPricePerM2(before: Occupant, after: Occupant): number {
  const well = familyById(after.family)?.followsWell.includes(before.family) === true;
  const fresh =
    after.spoiltByFresh &&
    before.compostLPerM2 >= hungryFromLPerM2 &&
    after.fromWeek - before.fromWeek < freshForWeeks;
  return (well ? followsWellPrice : 0) + (fresh ? freshlyFedPrice : 0);
}

/** Price of an occupant between those that stand on a strip before and after it. */
export function stripPricePerM2(
  occupant: Occupant,
  others: readonly Occupant[],
  recorded: ReadonlySet<string>,
): number {
  let last: Occupant | null = null;
  let next: Occupant | null = null;
  let sameBefore: Occupant | null = null;
  let sameAfter: Occupant | null = null;
  for (const other of others) {
    const same = other.family === occupant.family;
    if (other.toWeek <= occupant.fromWeek) {
      if (last === null || other.toWeek > last.toWeek) last = other;
      if (same && other.year < occupant.year && (sameBefore === null || other.year > sameBefore.year))
        sameBefore = other;
    } else {
      if (next === null || other.fromWeek < next.fromWeek) next = other;
      if (same && other.year > occupant.year && (sameAfter === null || other.year < sameAfter.year))
        sameAfter = other;
    }
  }
  const onRecord = recorded.has(occupant.family);
  let price = 0;
  if (sameBefore !== null) price += restPricePerM2(occupant.family, sameBefore.year, occupant.year, onRecord);
  if (sameAfter !== null) price += restPricePerM2(occupant.family, occupant.year, sameAfter.year, onRecord);
  if (last !== null) price += followOnPricePerM2(last, occupant);
  if (next !== null) price += followOnPricePerM2(occupant, next);
  return price;
}
