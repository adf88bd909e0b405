/** Days on which nobody of the household is there: nothing is sown, planted, weeded or picked. */
import { type Day, mondayOf, type Week } from '@twelvemonth/basis';

export interface Absence {
  readonly fromDay: Day;
  /** Inclusive. */
  readonly toDay: Day;
  /** Somebody picks what is ready, for themselves; the plants go on. */
  readonly neighbourPicks: boolean;
  readonly neighbourWaters: boolean;
}

/** From so many days away on, a week's work is not done. */
const mostOfTheWeekDays = 5;

export function daysAway(away: readonly Absence[], week: Week): number {
  let days = 0;
  for (let day = mondayOf(week); day < mondayOf(week) + 7; day++)
    if (away.some(({ fromDay, toDay }) => day >= fromDay && day <= toDay)) days++;
  return days;
}

export function isAwayWeek(away: readonly Absence[], week: Week): boolean {
  return away.length > 0 && daysAway(away, week) >= mostOfTheWeekDays;
}
