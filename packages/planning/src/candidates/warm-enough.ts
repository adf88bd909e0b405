/**
 * Plants that never harden are in the ground while it is about warm enough for their own seed (common practice: tender
 * plants go out when beans may be sown), whatever the nights may spare: earlier, or through a winter, they stand still,
 * sulk and rot, which the growth of a day does not know.
 */
import { type Day, meanOf, quantileOfSorted } from '@twelvemonth/basis';
import type { CropType } from '@twelvemonth/growing';
import type { Scenario } from '../scenarios/choose-scenarios.ts';

const weekDays = 7;

export const neverHardens = (kind: CropType): boolean => kind.frostHardenedC >= kind.frostSoftC;

/** Whether every week from being planted to the first harvest is warm enough in the ground, in a middling scenario. */
export function warmEnough(
  scenarios: readonly Scenario[],
  kind: CropType,
  exposure: string,
  plantDay: Day,
  firstDay: Day,
): boolean {
  if (!neverHardens(kind)) return true;
  const coldest = scenarios.map(({ member }) => {
    const { weather, startDay, dayCount } = member.clockOf(exposure);
    let least = Number.POSITIVE_INFINITY;
    const lastDay = Math.min(startDay + dayCount, Math.max(plantDay, firstDay - weekDays));
    for (let day = plantDay; day <= lastDay; day += weekDays) {
      const to = Math.min(dayCount, Math.max(weekDays, day - startDay));
      least = Math.min(least, meanOf(weather.soilC.subarray(to - weekDays, to)));
    }
    return least;
  });
  return (
    quantileOfSorted(Float64Array.from(coldest).sort(), 0.5) >= kind.emergenceLowestC - kind.groundBelowSeedC
  );
}
