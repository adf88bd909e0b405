/**
 * From sowing to a plant in the ground. Emergence by thermal time on the first bench (or in the bed); growth on the
 * bench until it is fit to set out; ten days of hardening in a frame where there is one; then the bed, as soon as its
 * ground is free and workable. A plant that has to wait in its pot grows at half pace up to 1.6 times its planting
 * size, and loses yield for each week beyond two. Setting out costs a few days of growth.
 */
import { type Day, invariant } from '@twelvemonth/basis';
import type { Member } from '../forecast/member.ts';
import type { SowingPlan } from '../forecast/sowing-plan.ts';
import { coversTable } from '../generated/covers.ts';
import { emerge, growsFromEmergence } from './emerge.ts';
import { dayOfSum, NEVER, type PlaceClock, type RunningSum, sumBetween } from './place-clock.ts';

const {
  'hardening-days': hardeningDays,
  'held-growth-share': heldGrowthShare,
  'held-size-limit': heldSizeLimit,
} = coversTable.raising;

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
  /** 1, or less when it waited too long in its pot. */
  readonly heldYieldShare: number;
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
    heldYieldShare: 1,
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
  const raisingSum = (kind.raisingDays * referenceCDays) / pace;
  const readyDay = dayOfSum(bench, benchGrowth, emergenceDay, raisingSum);
  const groundDay = workable(bed, Math.max(readyDay, plan.plantDay ?? readyDay));

  const frameStage = stages.find((s) => s.stage === 'frame');
  const frame = frameStage === undefined ? null : member.clockOf(frameStage.exposure);
  let sizeSum = 0;
  if (groundDay < NEVER) {
    const hardenDay = frame === null ? groundDay : Math.max(emergenceDay, groundDay - hardeningDays);
    sizeSum = sumBetween(bench, benchGrowth, emergenceDay, hardenDay);
    if (frame !== null) sizeSum += sumBetween(frame, frame.growth(kind), hardenDay, groundDay);
    if (sizeSum > raisingSum)
      sizeSum = Math.min(raisingSum * heldSizeLimit, raisingSum + (sizeSum - raisingSum) * heldGrowthShare);
  }
  const bedZeroDay = groundDay >= NEVER ? NEVER : groundDay + kind.plantingCheckDays;
  const heldWeeks = groundDay >= NEVER ? 0 : Math.max(0, (groundDay - readyDay) / 7 - 2);
  invariant(heldWeeks >= 0, 'waiting in pots is not negative', { heldWeeks });
  return {
    startDay,
    emergenceDay,
    germinatingShare,
    readyDay,
    groundDay,
    bed,
    growth,
    heldYieldShare: Math.max(0.25, 1 - heldWeeks * kind.holdLossPerWeekShare),
    growthAt: (day) => {
      if (groundDay >= NEVER || day <= groundDay) return sumBetween(bench, benchGrowth, emergenceDay, day);
      return sizeSum + sumBetween(bed, growth, bedZeroDay, day);
    },
    dayOfGrowth: (sum) => {
      if (groundDay >= NEVER) return NEVER;
      if (sum <= sizeSum) return Math.min(groundDay, dayOfSum(bench, benchGrowth, emergenceDay, sum));
      return dayOfSum(bed, growth, bedZeroDay, sum - sizeSum);
    },
  };
}
