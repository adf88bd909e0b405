/**
 * Perennials are left alone until their crowns are strong: a share of the yield in each of the first three seasons. A
 * season runs from midwinter to midwinter; what is planted after midsummer counts from the midwinter that follows.
 */
import type { Day } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { midwinterBefore } from './harvest-days.ts';

const yearDays = 365.25;
const halfYearDays = 182;

/** Share taken in the season after a midwinter; 1 for plants of unknown age, 0 before they are planted. */
export function establishedShare(
  harvest: Harvest,
  plantedDay: Day | null,
  midwinterDay: Day,
  southern: boolean,
): number {
  if (plantedDay === null) return 1;
  const firstMidwinter = midwinterBefore(plantedDay + halfYearDays, southern);
  const seasonsBefore = Math.round((midwinterDay - firstMidwinter) / yearDays);
  return seasonsBefore < 0 ? 0 : (harvest.establishingShares[seasonsBefore] ?? 1);
}
