/**
 * From sowing to a plant in the ground. Emergence by thermal time on the first bench (or in the bed); growth on the
 * bench until it is fit to set out; ten days of hardening in a frame where there is one; then the bed, as soon as its
 * ground is free and workable. What waiting costs: kept-in-pots.ts; what a dim sill does: legginess.ts. Setting out
 * costs a planting check: the growth of a few days at an ordinary planting time, so that it lasts longer in the cold.
 */
import type { Day } from '@twelvemonth/basis';
import type { Member } from '../forecast/member.ts';
import type { SowingPlan } from '../forecast/sowing-plan.ts';
import { coversTable } from '../generated/covers.ts';
import { emerge, growsFromEmergence } from './emerge.ts';
import { type KeptInPots, keptInPots } from './kept-in-pots.ts';
import { leggyShareBetween } from './legginess.ts';
import { dayOfSum, NEVER, type PlaceClock, type RunningSum, sumBetween } from './place-clock.ts';

const { 'hardening-days': hardeningDays, 'planting-pace-share': plantingPaceShare } = coversTable.raising;

export { hardeningDays };

export interface Raised {
  readonly startDay: Day;
  readonly emergenceDay: Day;
  /** Share of the seed that came up at the warmth it met, against its best; 0: too little to count as up. */
  readonly germinatingShare: number;
  /** When it was fit to set out (in-place sowings: the ground day). */
  readonly readyDay: Day;
  readonly groundDay: Day;
  readonly bed: PlaceClock;
  readonly growth: RunningSum;
  /** What waiting in a pot made of it; all of it nothing for in-place sowings. */
  readonly kept: KeptInPots;
  /** 0 sturdy – 1 all stem. */
  readonly leggyShare: number;
  /** 1, or less for plants that were raised in too little light. */
  readonly sturdyYieldShare: number;
  /** The same times what waiting in a pot left. */
  readonly raisedYieldShare: number;
  /** Growth since emergence (since planting for sets and the like), °C·d. */
  growthAt(day: Day): number;
  dayOfGrowth(sumCDays: number): Day;
}

function workable(clock: PlaceClock, day: Day): Day {
  if (day >= NEVER) return NEVER;
  const i = day - clock.startDay;
  if (i < 0) return day;
  return i < clock.dayCount ? clock.weather.workableDay[i]! : NEVER;
}

const neverKept: KeptInPots = { sizeDays: 0, checkedDays: 0, restartDays: 0, yieldShare: 1 };

function inPlace(member: Member, plan: SowingPlan, startDay: Day): Raised {
  const { kind } = plan;
  const bed = member.clockOf(plan.exposure);
  const growth = bed.growth(kind);
  const groundDay = workable(bed, Math.max(startDay, plan.plantDay ?? startDay));
  const { emergenceDay, germinatingShare } = emerge(bed, kind, groundDay, plan.counted ?? false);
  const zeroDay = growsFromEmergence(kind) ? emergenceDay : groundDay;
  return {
    startDay,
    emergenceDay,
    germinatingShare,
    readyDay: groundDay,
    groundDay,
    bed,
    growth,
    kept: neverKept,
    leggyShare: 0,
    sturdyYieldShare: 1,
    raisedYieldShare: 1,
    growthAt: (day) => (zeroDay >= NEVER ? 0 : sumBetween(bed, growth, zeroDay, day)),
    dayOfGrowth: (sum) => dayOfSum(bed, growth, zeroDay, sum),
  };
}

export function raise(member: Member, plan: SowingPlan, referenceCDays: number, pace: number): Raised {
  const { kind, stages } = plan;
  const spread = plan.startSpreadDays;
  const startDay =
    spread === 0 ? plan.startDay : plan.startDay + Math.round(member.drawFor(plan.id) * spread);
  const first = stages[0];
  if (first === undefined) return inPlace(member, plan, startDay);

  const bed = member.clockOf(plan.exposure);
  const growth = bed.growth(kind);
  const germination = member.clockOf(first.exposure);
  const { emergenceDay, germinatingShare } = emerge(germination, kind, startDay, plan.counted ?? false);
  const benchStage = stages.find((s) => s.stage === 'bench' || s.stage === 'sill') ?? first;
  const bench = member.clockOf(benchStage.exposure);
  const benchGrowth = bench.growth(kind);
  const dayCDays = referenceCDays / pace;
  const readyDay = dayOfSum(bench, benchGrowth, emergenceDay, kind.raisingDays * dayCDays);
  const groundDay = workable(bed, Math.max(readyDay, plan.plantDay ?? readyDay));

  const frameStage = stages.find((s) => s.stage === 'frame');
  const frame = frameStage === undefined ? null : member.clockOf(frameStage.exposure);
  const guessed = plan.startDayGuessed ?? false;
  let potential = 0;
  let leggyShare = 0;
  if (groundDay < NEVER) {
    const hardenDay = frame === null ? groundDay : Math.max(emergenceDay, groundDay - hardeningDays);
    potential = sumBetween(bench, benchGrowth, emergenceDay, hardenDay);
    if (frame !== null) potential += sumBetween(frame, frame.growth(kind), hardenDay, groundDay);
    if (!guessed) leggyShare = leggyShareBetween(bench, emergenceDay, Math.min(readyDay, hardenDay));
  }
  const grownDays = potential / dayCDays;
  const kept = keptInPots(kind, guessed ? Math.min(grownDays, kind.raisingDays) : grownDays);
  const sturdyYieldShare = 1 - kind.leggyLossShare * leggyShare;
  const sizeSum = kept.sizeDays * dayCDays;
  const checkDays = kind.plantingCheckDays * plantingPaceShare * (1 + leggyShare) + kept.restartDays;
  const bedZeroDay = dayOfSum(bed, growth, groundDay, checkDays * dayCDays);
  return {
    startDay,
    emergenceDay,
    germinatingShare,
    readyDay,
    groundDay,
    bed,
    growth,
    kept,
    leggyShare,
    sturdyYieldShare,
    raisedYieldShare: kept.yieldShare * sturdyYieldShare,
    growthAt: (day) => {
      if (day > groundDay)
        return sizeSum + (bedZeroDay >= NEVER ? 0 : sumBetween(bed, growth, bedZeroDay, day));
      const grown = sumBetween(bench, benchGrowth, emergenceDay, day);
      return groundDay >= NEVER ? grown : Math.min(grown, sizeSum);
    },
    dayOfGrowth: (sum) => {
      if (groundDay >= NEVER) return NEVER;
      if (sum <= sizeSum) return Math.min(groundDay, dayOfSum(bench, benchGrowth, emergenceDay, sum));
      return dayOfSum(bed, growth, bedZeroDay, sum - sizeSum);
    },
  };
}
