/**
 * Running to seed, in two ways.
 * - `day-length`: once past the juvenile stage, the first day at or above the critical length is the trigger.
 * - `cold`: after the juvenile stage the balance of cold (cold-balance.ts) grows; plants differ in their need, so the
 *   share that has had enough is a line. Plants differ in size too: the end of the juvenile stage is taken at five
 *   points of a normal spread, so bigger plants at the cold spell bolt more. Where a day length is given as well,
 *   stalks rise only from that day on: cold and long days are both needed.
 *
 *   u = B · max(1, size/juvenile size)^p                 bigger plants count more of the cold
 *   share(u) = 0.1 + 0.8 · (u − u10)/(u90 − u10), held to 0…1
 *
 * | symbol | meaning | unit |
 * | B | highest balance of cold since the juvenile stage | °C·d |
 * | size | growth reached in the middle of the cold; p by kind, 0 where size does not count | °C·d, – |
 * | u10, u90 | at which a tenth and nine tenths have had enough | °C·d |
 * Source: Atherton, Craigon & Basher 1990 (carrot: none below 126, nine tenths at 336 °C·d; in paper II the share
 * levels off at about 400). Known weakness: the line ends sharply where plants thin out; stalks of plants with little
 * cold rise later than those with much (paper II), here all rise after the same growth.
 */
import type { Day } from '@twelvemonth/basis';
import type { Bolting } from '../crops/crop-type.ts';
import { type ColdBalance, dayOfBalance, highestBalanceCDays } from './cold-balance.ts';
import { dayOfSum, NEVER, type PlaceClock, type RunningSum } from './place-clock.ts';
import type { Raised } from './raising.ts';

/** First day from `fromDay` on with at least `hours` of daylight; NEVER within 400 days when there is none. */
export function firstDayOfLength(lengthOfDay: (day: Day) => number, fromDay: Day, hours: number): Day {
  if (fromDay >= NEVER) return NEVER;
  for (let day = fromDay; day < fromDay + 400; day++) if (lengthOfDay(day) >= hours) return day;
  return NEVER;
}

export function boltedShareOfUnits(bolting: Bolting, unitsCDays: number): number {
  const width = Math.max(1, bolting.coldNineTenthsCDays - bolting.coldTenthCDays);
  return Math.min(1, Math.max(0, 0.1 + (0.8 * (unitsCDays - bolting.coldTenthCDays)) / width));
}

/** Means of the five equal parts of a standard normal. */
const plantQuantiles = [-1.4, -0.532, 0, 0.532, 1.4] as const;

/** Share of plants that have had enough cold by `untilDay`. */
export function coldBoltedShare(
  bolting: Bolting,
  cold: ColdBalance,
  grown: Pick<Raised, 'dayOfGrowth' | 'growthAt' | 'groundDay'>,
  juvenileSumCDays: number,
  untilDay: Day,
): number {
  let share = 0;
  for (const z of plantQuantiles) {
    const juvenileSum = juvenileSumCDays * Math.max(0.1, 1 + z * bolting.juvenileSpreadShare);
    const juvenileDay = Math.max(grown.groundDay, grown.dayOfGrowth(juvenileSum));
    if (juvenileDay >= untilDay) continue;
    const units = highestBalanceCDays(cold, juvenileDay, untilDay);
    const size = grown.growthAt(Math.floor((juvenileDay + untilDay) / 2)) / Math.max(1, juvenileSum);
    share += boltedShareOfUnits(bolting, units * Math.max(1, size) ** bolting.sizePower);
  }
  return share / plantQuantiles.length;
}

/** Day on which a crop that ends by bolting has run to seed; NEVER when it does not within the weather at hand. */
export function boltingEndDay(
  bolting: Bolting,
  clock: PlaceClock,
  growth: RunningSum,
  cold: ColdBalance | null,
  juvenileDay: Day,
  afterSumCDays: number,
  lengthOfDay: (day: Day) => number,
): Day {
  let trigger = juvenileDay;
  if (bolting.mode === 'cold') {
    const middle = (bolting.coldTenthCDays + bolting.coldNineTenthsCDays) / 2;
    trigger = cold === null ? NEVER : dayOfBalance(cold, juvenileDay, middle);
  }
  if (bolting.dayLengthHours > 0) trigger = firstDayOfLength(lengthOfDay, trigger, bolting.dayLengthHours);
  return dayOfSum(clock, growth, trigger, afterSumCDays);
}
