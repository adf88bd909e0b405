/**
 * The same growth answer as one would first write it from the member's outdoor weather: for each sowing the weather of
 * each of its places is derived for the days that it lives, with a warm-up before them, and then all is stepped day by
 * day: emergence, growth with drought, cold units, the smallest frost margin, the weekly picks. Nothing is kept from one
 * sowing to the next. To its advantage it is told the days of planting and clearing, so that it derives no day too many.
 */
import { streamFor } from '../packages/basis/src/index.ts';
import {
  type CropType,
  coldChangeCDays,
  type DailyWeather,
  type Exposure,
  type ForecastContext,
  frostThresholdC,
  type Member,
  makePlaceClock,
  NEVER,
  offsetSpreadC,
  type PlaceClock,
  placeWeather,
  referenceDayCDays,
  type SowingPlan,
  type SowingRun,
} from '../packages/growing/src/index.ts';
import { growthOn, naiveFirstDays } from './naive-growth.ts';

/**
 * Days before sowing from which a place is followed. Soil and hardening forget within a month or two; ground under the
 * open sky remembers the rain since it last was dry, and a wet bed is that only in summer, after a wet summer not even then.
 */
const shelteredWarmUpDays = 60;
export const openWarmUpDays = 365;

export interface Life {
  readonly groundDay: number;
  readonly clearDay: number;
}

export const lifeOf = ({ groundDay, clearDay }: SowingRun): Life => ({ groundDay, clearDay });

export interface NaiveAnswer {
  readonly firstDays: number[];
  /** Days of weather derived, by place. */
  readonly derivedDays: number[];
  readonly smallestMarginC: number;
  readonly coldCDays: number;
  readonly grownCDays: number;
  /** Share of the whole yield that each week's picking takes, by harvest. */
  readonly picks: ReadonlyMap<string, number[]>;
}

export function sliceOf(outdoor: DailyWeather, fromDay: number, toDay: number): DailyWeather {
  const from = Math.max(0, fromDay - outdoor.startDay);
  const to = toDay - outdoor.startDay;
  return {
    startDay: outdoor.startDay + from,
    tmaxC: outdoor.tmaxC.slice(from, to),
    tminC: outdoor.tminC.slice(from, to),
    rainMm: outdoor.rainMm.slice(from, to),
    radiationMJPerM2Day: outdoor.radiationMJPerM2Day.slice(from, to),
  };
}

/** The member's draw of what nobody knows of a cover, as forecast/member.ts makes it. */
export function coverOffsetC(
  context: ForecastContext,
  member: Member,
  exposureKey: string,
  seed: number,
): number {
  const { cover } = context.exposures.get(exposureKey)!;
  const normal = streamFor(seed, `${context.purpose}/offset/${cover.id}`, member.index).normal();
  return normal * offsetSpreadC(cover.material);
}

function stepThroughBed(clock: PlaceClock, kind: CropType, life: Life) {
  const { weather } = clock;
  const grownOn: number[] = [];
  let [smallestMarginC, coldCDays, grownCDays] = [99, 0, 0];
  for (let day = life.groundDay; day < life.clearDay; day++) {
    const i = day - clock.startDay;
    const margin = weather.tminC[i]! - frostThresholdC(kind, weather.hardenedShare[Math.max(0, i - 1)]!);
    if (margin < smallestMarginC) smallestMarginC = margin;
    coldCDays += coldChangeCDays(kind.cold, (weather.tminC[i]! + weather.tmaxC[i]!) / 2);
    const grown = growthOn(clock, kind, i);
    grownCDays += grown;
    grownOn.push(grown);
  }
  return { smallestMarginC, coldCDays, grownCDays, grownOn };
}

export function naiveFromOutdoor(
  context: ForecastContext,
  member: Member,
  plan: SowingPlan,
  life: Life,
  seed: number,
  warmUpDays = openWarmUpDays,
): NaiveAnswer {
  const { kind } = plan;
  const warmUpDaysOf = ({ cover, watered }: Exposure): number =>
    watered && cover.material !== 'open' ? shelteredWarmUpDays : warmUpDays;
  const clocks = new Map<string, PlaceClock>();
  const clockOf = (exposureKey: string): PlaceClock => {
    let clock = clocks.get(exposureKey);
    if (clock === undefined) {
      // A bench is left at planting; the bed's weather is needed to the clearing.
      const last = exposureKey === plan.exposure || life.groundDay >= NEVER ? life.clearDay : life.groundDay;
      const exposure = context.exposures.get(exposureKey)!;
      const outdoor = sliceOf(member.outdoor, plan.startDay - warmUpDaysOf(exposure), last + 1);
      const offsetC = coverOffsetC(context, member, exposureKey, seed);
      clock = makePlaceClock(placeWeather(context.site, outdoor, exposure, offsetC));
      clocks.set(exposureKey, clock);
    }
    return clock;
  };
  const firstDays = naiveFirstDays({ clockOf, paceOf: member.paceOf }, plan);
  const picks = new Map<string, number[]>();
  const derivedDays = [...clocks.values()].map((clock) => clock.dayCount);
  if (life.groundDay >= NEVER)
    return { firstDays, derivedDays, smallestMarginC: 99, coldCDays: 0, grownCDays: 0, picks };

  const sumOf = (days: number): number => (days * referenceDayCDays(kind)) / member.paceOf(kind);
  const { grownOn, ...sums } = stepThroughBed(clockOf(plan.exposure), kind, life);
  let counted = 0;
  for (const harvest of kind.harvests) {
    if (harvest.startGate.gate !== 'none') continue;
    const firstDay = firstDays[counted++]!;
    if (harvest.habit !== 'picks' || firstDay >= life.clearDay) continue;
    const wholeSum = Math.max(1, sumOf(harvest.fullDays));
    const weekly: number[] = [];
    let taken = 0;
    for (
      let day = firstDay;
      day < Math.min(firstDay + harvest.windowDays, life.clearDay) && taken < 1;
      day++
    ) {
      const share = Math.min(1 - taken, grownOn[day - life.groundDay]! / wholeSum);
      taken += share;
      const week = Math.floor((day - firstDay) / 7);
      weekly[week] = (weekly[week] ?? 0) + share;
    }
    picks.set(harvest.id, weekly);
  }
  return { firstDays, derivedDays, ...sums, picks };
}
