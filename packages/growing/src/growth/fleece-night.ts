/**
 * The nights that fleece is for: from the first week in which at least a tenth of the winters bring a night colder than
 * the uncovered plants, or the flowers, curds and pods on them, can stand. Practice keeps the fleece at hand from then
 * on and lays it when the forecast says less than the threshold: the hardiness of the plants as they are that week.
 */
import type { Day } from '@twelvemonth/basis';
import type { CropType } from '../crops/crop-type.ts';
import type { PlaceClock } from './place-clock.ts';
import { NEVER } from './running-sum.ts';

export interface FleeceNight {
  readonly day: Day;
  /** Lay it when a minimum below this is forecast, °C. */
  readonly belowC: number;
}

/** One sowing in one member: its bed and the days that matter. */
export interface SownInMember {
  readonly bed: PlaceClock;
  readonly groundDay: Day;
  readonly clearDay: Day;
  /** First day of each harvest of the kind, NEVER where it does not come. */
  readonly firstDays: readonly Day[];
}

const chanceOfNight = 0.1;

/** Margin of a week above what the plants and their tender parts stand, °C; 99 when nothing stands there. */
function marginC(kind: CropType, sown: SownInMember, week: number): number {
  const day = sown.bed.startDay + week * 7;
  if (sown.groundDay >= NEVER || day < sown.groundDay || day >= sown.clearDay) return 99;
  let margin = sown.bed.frostMargins(kind)[week] ?? 99;
  kind.harvests.forEach((harvest, i) => {
    const firstDay = sown.firstDays[i]!;
    if (harvest.partFrostC === null || firstDay >= NEVER || day < firstDay - harvest.partFrostDays) return;
    margin = Math.min(margin, (sown.bed.weekMinima()[week] ?? 99) - harvest.partFrostC);
  });
  return margin;
}

/** null when no week between the days is so cold in a tenth of the members. */
export function fleeceNight(
  kind: CropType,
  members: readonly SownInMember[],
  fromDay: Day,
  toDay: Day,
): FleeceNight | null {
  const first = members[0];
  if (first === undefined || fromDay >= NEVER) return null;
  const { startDay } = first.bed;
  for (let week = Math.max(0, Math.floor((fromDay - startDay) / 7)); startDay + week * 7 < toDay; week++) {
    const cold = members.filter((sown) => marginC(kind, sown, week) < 0);
    if (cold.length < Math.max(1, chanceOfNight * members.length)) continue;
    const standsC = cold.map((sown) => (sown.bed.weekMinima()[week] ?? 0) - marginC(kind, sown, week));
    return { day: startDay + week * 7, belowC: Math.max(...standsC) };
  }
  return null;
}
