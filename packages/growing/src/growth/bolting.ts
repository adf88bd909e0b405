/**
 * Running to seed, in two ways.
 * - `day-length`: once past the juvenile stage, the first day at or above the critical length is the trigger.
 * - `cold`: after the juvenile stage cold units add up (vernalisation); the share that bolts is a logistic that passes
 *   a tenth and nine tenths at the two published sums. Plants differ in size: the juvenile stage is averaged over five
 *   quantiles of a normal spread, so bigger plants at the cold spell bolt more.
 *
 *   p(u) = 1 / (1 + exp(−k·(u − u50))),  u50 = (u10 + u90)/2,  k = 2·ln 9/(u90 − u10)
 *
 * | symbol | meaning | unit |
 * | u | cold units since the juvenile stage | °C·d |
 * Source of the form: Atherton, Craigon & Basher 1990 (carrot: 126 and 336 °C·d). Known weakness: warm spells do not
 * undo cold (no devernalisation).
 */
import type { Day } from '@twelvemonth/basis';
import type { Bolting } from '../crops/crop-type.ts';
import { dayOfSum, NEVER, type PlaceClock, type RunningSum, sumBetween } from './place-clock.ts';

/** First day from `fromDay` on with at least `hours` of daylight; NEVER within 400 days when there is none. */
export function firstDayOfLength(lengthOfDay: (day: Day) => number, fromDay: Day, hours: number): Day {
  if (fromDay >= NEVER) return NEVER;
  for (let day = fromDay; day < fromDay + 400; day++) if (lengthOfDay(day) >= hours) return day;
  return NEVER;
}

export function boltedShareOfUnits(bolting: Bolting, unitsCDays: number): number {
  const middle = (bolting.coldTenthCDays + bolting.coldNineTenthsCDays) / 2;
  const slope = (2 * Math.log(9)) / Math.max(1, bolting.coldNineTenthsCDays - bolting.coldTenthCDays);
  return 1 / (1 + Math.exp(-slope * (unitsCDays - middle)));
}

/** Means of the five equal parts of a standard normal. */
const plantQuantiles = [-1.4, -0.532, 0, 0.532, 1.4] as const;

/** Share of plants vernalised by `untilDay`; `dayOfGrowth(sum)` says when growth since emergence reaches a sum. */
export function coldBoltedShare(
  bolting: Bolting,
  clock: PlaceClock,
  cold: RunningSum,
  dayOfGrowth: (sumCDays: number) => Day,
  juvenileSumCDays: number,
  untilDay: Day,
): number {
  let share = 0;
  for (const z of plantQuantiles) {
    const juvenileDay = dayOfGrowth(juvenileSumCDays * Math.max(0.1, 1 + z * bolting.juvenileSpreadShare));
    const units = juvenileDay < untilDay ? sumBetween(clock, cold, juvenileDay, untilDay) : 0;
    share += (units > 0 ? boltedShareOfUnits(bolting, units) : 0) / plantQuantiles.length;
  }
  return share;
}

/** Day on which a crop that ends by bolting has run to seed; NEVER when it does not within the weather at hand. */
export function boltingEndDay(
  bolting: Bolting,
  clock: PlaceClock,
  growth: RunningSum,
  cold: RunningSum | null,
  juvenileDay: Day,
  afterSumCDays: number,
  lengthOfDay: (day: Day) => number,
): Day {
  let trigger = juvenileDay;
  if (bolting.mode === 'cold') {
    const middle = (bolting.coldTenthCDays + bolting.coldNineTenthsCDays) / 2;
    trigger = cold === null ? NEVER : dayOfSum(clock, cold, juvenileDay, middle);
  }
  if (bolting.dayLengthHours > 0) trigger = firstDayOfLength(lengthOfDay, trigger, bolting.dayLengthHours);
  return dayOfSum(clock, growth, trigger, afterSumCDays);
}
