/**
 * Days on which a sowing may be cleared. Its natural end is the day by which nearly all that it gives has come: the last
 * leaves are not worth the ground. What holds its ground long may go earlier. Under cover and in tubs, where the last
 * kilos of summer stand against the winter, a crop that is picked may go every third week from its first pickings on.
 */
import { type Day, mondayOf, type Week } from '@twelvemonth/basis';
import type { CropType, GrowsIn, SowingRun } from '@twelvemonth/growing';

/** Crops that hold their ground longer than this may also be cleared so much earlier. */
const longCropDays = 112;
const earlierClearWeeks = 8;
const pickedStepWeeks = 3;
/** With its natural end; keeps the program small. */
const mostPickedDays = 5;
/** It is picked for so long at least. */
const leastPickedDays = 21;
const nearlyAllShare = 0.96;

export interface Clearable {
  readonly kind: CropType;
  readonly runs: readonly SowingRun[];
  readonly groundDay: Day;
  /** By then it has begun to give in most scenarios. */
  readonly begunDay: Day;
  readonly clearDay: Day;
}

function lastWorthwhileDay({ runs, clearDay }: Clearable): Day {
  const byWeek = new Map<Week, number>();
  let all = 0;
  for (const run of runs)
    for (const lot of run.lots) {
      if (lot.form !== 'fresh') return clearDay;
      byWeek.set(lot.fromWeek, (byWeek.get(lot.fromWeek) ?? 0) + lot.servings);
      all += lot.servings;
    }
  let sum = 0;
  for (const [week, servings] of [...byWeek].sort((a, b) => a[0] - b[0])) {
    sum += servings;
    if (sum >= nearlyAllShare * all) return mondayOf(week) + 6;
  }
  return clearDay;
}

/** Natural end first, then earlier and earlier. */
export function clearOptions(sowing: Clearable, growsIn: GrowsIn): Day[] {
  const natural = Math.min(sowing.clearDay, lastWorthwhileDay(sowing));
  if (natural - sowing.groundDay <= longCropDays) return [natural];
  const isChosen =
    (growsIn === 'cover' || growsIn === 'tub') &&
    sowing.kind.harvests.every(({ habit }) => habit === 'picks');
  const earliest = sowing.begunDay + leastPickedDays;
  if (!isChosen) {
    const earlier = natural - earlierClearWeeks * 7;
    return earlier > earliest ? [natural, earlier] : [natural];
  }
  const days = [natural];
  for (let day = natural - pickedStepWeeks * 7; day > earliest; day -= pickedStepWeeks * 7) days.push(day);
  return days.slice(0, mostPickedDays);
}
