/**
 * Day loop on ready place weather, first days only: no running sums, no searches. It must name the same first days as
 * the engine (harvests without a gate), and shows what the engine's sums save. It leaves out what costs a
 * straightforward simulator most, the weather of the place: that is naive-from-outdoor.ts.
 */
import {
  type CropType,
  effectiveDayDegrees,
  emergenceOfDay,
  type Harvest,
  keptInPots,
  leggyShare,
  type Member,
  NEVER,
  type PlaceClock,
  referenceDayCDays,
  type SowingPlan,
  sineDayDegreesC,
  stretchingCDays,
  waterShareOf,
} from '../packages/growing/src/index.ts';

const hardeningDays = 10;
const longestEmergenceDays = 90;
const plantingPaceShare = 0.7;

/** Harvests that the comparison counts: those that begin by growth alone. */
export const countedHarvests = (kind: CropType): Harvest[] =>
  kind.harvests.filter((harvest) => harvest.startGate.gate === 'none');

export function growthOn(clock: PlaceClock, kind: CropType, i: number): number {
  const { weather } = clock;
  const heat = sineDayDegreesC(weather.tminC[i]!, weather.tmaxC[i]!, kind.growthBaseC, kind.growthOptimumC);
  const light = weather.radiation7MJPerM2Day[i]!;
  const grown = effectiveDayDegrees(heat, light, kind.lightFactor, kind.lightCompensationMJPerM2Day);
  return grown * waterShareOf(weather, kind.rooting)[i]!;
}

/** Steps from a day until the sum is reached; NEVER at the end of the weather. */
function stepUntil(clock: PlaceClock, fromDay: number, amount: number, daily: (i: number) => number): number {
  if (fromDay >= NEVER) return NEVER;
  let sum = 0;
  let i = Math.max(0, fromDay - clock.startDay);
  while (sum < amount) {
    if (i >= clock.dayCount) return NEVER;
    sum += daily(i);
    i++;
  }
  return clock.startDay + i;
}

function stepSum(clock: PlaceClock, fromDay: number, toDay: number, daily: (i: number) => number): number {
  let sum = 0;
  for (let day = fromDay; day < Math.min(toDay, clock.startDay + clock.dayCount); day++)
    sum += daily(day - clock.startDay);
  return sum;
}

function firstWorkable(clock: PlaceClock, day: number): number {
  if (day >= NEVER) return NEVER;
  return day - clock.startDay < clock.dayCount ? clock.weather.workableDay[day - clock.startDay]! : NEVER;
}

/** First days of the counted harvests, in their order; growth alone, whatever ends the crop before. */
export function naiveFirstDays(member: Pick<Member, 'clockOf' | 'paceOf'>, plan: SowingPlan): number[] {
  const { kind, stages } = plan;
  const pace = member.paceOf(kind);
  const reference = referenceDayCDays(kind);
  const sumOf = (days: number): number => (days * reference) / pace;
  const bed = member.clockOf(plan.exposure);
  const first = stages[0] === undefined ? bed : member.clockOf(stages[0].exposure);
  const waits = kind.startsAs === 'seed' || kind.startsAs === 'tuber';
  const sown = stages.length > 0 ? plan.startDay : firstWorkable(bed, plan.startDay);
  const seedbed = first.weather;
  const rate = (i: number): number =>
    emergenceOfDay(kind, seedbed.soilC[i]!, seedbed.tminC[i]!, seedbed.tmaxC[i]!) *
    Math.min(1, seedbed.waterShare[i]! + 0.5);
  const up = stepUntil(first, sown, 1, rate);
  const emerged = waits && up - sown > longestEmergenceDays ? NEVER : up;
  const bedGrowth = (i: number): number => growthOn(bed, kind, i);

  let reach: (sum: number) => number;
  if (stages.length === 0) {
    const zero = waits ? emerged : sown;
    reach = (sum) => stepUntil(bed, zero, sum, bedGrowth);
  } else {
    const benchStage = stages.find((s) => s.stage === 'bench' || s.stage === 'sill') ?? stages[0]!;
    const frameStage = stages.find((s) => s.stage === 'frame');
    const bench = member.clockOf(benchStage.exposure);
    const benchGrowth = (i: number): number => growthOn(bench, kind, i);
    const ready = stepUntil(bench, emerged, sumOf(kind.raisingDays), benchGrowth);
    const planted = firstWorkable(bed, ready);
    if (planted >= NEVER) return countedHarvests(kind).map(() => NEVER);
    const harden = frameStage === undefined ? planted : Math.max(emerged, planted - hardeningDays);
    let grown = stepSum(bench, emerged, harden, benchGrowth);
    if (frameStage !== undefined) {
      const frame = member.clockOf(frameStage.exposure);
      grown += stepSum(frame, harden, planted, (i) => growthOn(frame, kind, i));
    }
    const benched = bench.weather;
    const lit = Math.min(ready, harden);
    const light = stepSum(bench, emerged, lit, (i) => benched.radiation7MJPerM2Day[i]!);
    const warmth = stepSum(bench, emerged, lit, (i) => stretchingCDays(benched.tminC[i]!, benched.tmaxC[i]!));
    const kept = keptInPots(kind, grown / sumOf(1));
    const size = sumOf(kept.sizeDays);
    const checkDays =
      kind.plantingCheckDays * plantingPaceShare * (1 + leggyShare(light, warmth)) + kept.restartDays;
    const rooted = stepUntil(bed, planted, sumOf(checkDays), bedGrowth);
    reach = (sum) =>
      sum <= size
        ? Math.min(planted, stepUntil(bench, emerged, sum, benchGrowth))
        : stepUntil(bed, rooted, sum - size, bedGrowth);
  }
  const days = new Map<string, number>();
  return countedHarvests(kind).map((harvest) => {
    const sum = sumOf(harvest.startDays);
    const after = harvest.after === null ? null : (days.get(harvest.after) ?? NEVER);
    const day = after === null ? reach(sum) : stepUntil(bed, after, sum, bedGrowth);
    days.set(harvest.id, day);
    return day;
  });
}
