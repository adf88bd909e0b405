/** One sowing in one member: days, shares, lots. Cumulative sums and binary searches; loops only over harvest weeks. */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import { seasonDayOfYear } from '../climate/season-day.ts';
import type { Harvest, StoreId } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';
import { chilledYieldShare } from '../growth/bulbing.ts';
import { establishedShare } from '../growth/establishing.ts';
import type { Growing } from '../growth/growing.ts';
import { firstHarvestDay, midwinterBefore } from '../growth/harvest-days.ts';
import { hazardsOf } from '../growth/hazards-of-crop.ts';
import { nitrogenLeftGPerM2 } from '../growth/nitrogen.ts';
import { partSoundShare } from '../growth/part-frost.ts';
import { dayOfSum, NEVER } from '../growth/place-clock.ts';
import { type Raised, raise } from '../growth/raising.ts';
import { referenceDayCDays } from '../growth/reference-growth.ts';
import { standShare } from '../growth/seed-stand.ts';
import { lastStandingDay } from '../growth/standing.ts';
import { blightEndDay, type Survival, survivalOf } from '../growth/survival.ts';
import { windLossShare } from '../growth/wind.ts';
import { lotsOf } from './harvest-lots.ts';
import { eatenShareOfHarvest, keptGPerServing } from './keeping.ts';
import type { ForecastContext, Member } from './member.ts';
import { boltedShareBy, coldCountsUntil, endByBolting } from './run-to-seed.ts';
import { fullServingsOf } from './servings.ts';
import type { HarvestReason, HarvestRun, Lot, SowingPlan, SowingRun } from './sowing-plan.ts';
import { attendedLots } from './unattended.ts';
import { type Unwatered, wateredShareBy } from './unwatered.ts';

function isCovered(context: ForecastContext, exposure: string): boolean {
  const material = context.exposures.get(exposure)?.cover.material ?? 'open';
  return material !== 'open' && material !== 'fleece';
}

function lastDayOfWeather(context: ForecastContext): Day {
  return context.startDay + context.dayCount - 1;
}

interface Ends {
  readonly day: Day;
  readonly reason: HarvestReason;
}

function plantEnd(context: ForecastContext, member: Member, plan: SowingPlan, growing: Growing): Ends {
  const southern = growing.southern;
  const north = (day: Day): number => seasonDayOfYear(day, southern);
  const covered = isCovered(context, plan.exposure);
  const blight = blightEndDay(member, hazardsOf(plan.kind.crop), growing.raised.groundDay, covered, north);
  const candidates: Ends[] = [
    { day: lastDayOfWeather(context), reason: 'not-ready-in-time' },
    { day: endByBolting(growing), reason: 'ran-to-seed' },
    { day: blight, reason: 'plant-gone' },
    { day: plan.clearDay ?? NEVER, reason: 'not-ready-before-cleared' },
  ];
  return candidates.reduce((best, end) => (end.day < best.day ? end : best));
}

/** Tubers whose haulm blight has ended are lifted as they are, where they are worth it. */
function isLiftedAtEnd(growing: Growing, harvest: Harvest, end: Ends): boolean {
  const { kind, raised } = growing;
  if (kind.startsAs !== 'tuber' || harvest.habit !== 'stands' || end.reason !== 'plant-gone') return false;
  const least = coversTable.blight['least-lifted-share'] * growing.sumOf(harvest.startDays);
  return raised.growthAt(end.day) >= least;
}

interface Gathered {
  readonly harvests: HarvestRun[];
  readonly lots: Lot[];
  boltedShare: number;
}

function unwatered(context: ForecastContext, plan: SowingPlan, growing: Growing): Unwatered {
  const { startDay, groundDay } = growing.raised;
  const inTub = plan.care?.inTub ?? false;
  return {
    away: context.away,
    southern: growing.southern,
    startDay: plan.stages.length > 0 ? startDay : groundDay,
    groundDay,
    dries: inTub ? 'tub' : isCovered(context, plan.exposure) ? 'cover' : null,
  };
}

function gather(
  context: ForecastContext,
  plan: SowingPlan,
  growing: Growing,
  survival: Survival,
  end: Ends,
  windLoss: number,
  stores: ReadonlySet<StoreId>,
  gathered: Gathered,
): void {
  const { kind } = plan;
  const { raised } = growing;
  const firstDays = new Map<string, Day>();
  const dry = unwatered(context, plan, growing);
  const attendance = { away: context.away, care: plan.care, crop: kind.crop };
  const stand = standShare(raised.germinatingShare);
  let plants =
    plan.plantsCount * stand * (1 - kind.growingLossShare) * (1 - windLoss) * raised.raisedYieldShare;
  let plantGoneDay = NEVER;
  for (const harvest of kind.harvests) {
    const grownDay = firstHarvestDay(growing, harvest, (id) => firstDays.get(id) ?? NEVER);
    const lifted = grownDay >= end.day && isLiftedAtEnd(growing, harvest, end);
    const firstDay = lifted ? end.day : grownDay;
    firstDays.set(harvest.id, firstDay);
    const gone = harvest.after === null && firstDay > plantGoneDay;
    if ((firstDay >= end.day && !lifted) || gone || firstDay >= NEVER) {
      const reason = raised.emergenceDay >= NEVER ? 'never-emerges' : gone ? 'plant-gone' : end.reason;
      gathered.harvests.push({
        id: harvest.id,
        role: harvest.role,
        firstDay: NEVER,
        lastDay: NEVER,
        servings: 0,
        reason,
      });
      continue;
    }
    const lastDay = Math.min(lastStandingDay(growing, harvest, firstDay), end.day);
    const hazardFirst = survival.hazards(firstDay);
    const hazardLast = survival.hazards(lastDay);
    const span = Math.max(1, lastDay - firstDay);
    const survivalAt = (day: Day): number =>
      wateredShareBy(dry, day) *
      survival.frost(day) *
      partSoundShare(harvest, raised.bed, raised.groundDay, firstDay, day, survival.frostGainC) *
      (hazardFirst + ((hazardLast - hazardFirst) * (day - firstDay)) / span);
    const bolted = boltedShareBy(growing, harvest, firstDay);
    gathered.boltedShare = Math.max(gathered.boltedShare, bolted);
    const full =
      fullServingsOf(harvest, plants) *
      eatenShareOfHarvest(plan, harvest) *
      chilledYieldShare(growing, harvest);
    const maker = { source: plan.id, kind: kind.id, growing, harvest, firstDay, lastDay, survivalAt, stores };
    const lots = lotsOf({ ...maker, fullServings: full * (1 - bolted) });
    if (bolted > 0 && kind.bolting?.effect === 'fresh')
      lots.push(...boltedLots(plan, growing, harvest, firstDay, full * bolted, survivalAt));
    const killed = lots.reduce((sum, l) => sum + l.servings, 0) < 0.02 * full;
    const had = attendedLots(attendance, harvest.habit, lots, firstDay, lastDay);
    gathered.lots.push(...had);
    const servings = had.reduce((sum, l) => sum + l.servings, 0);
    gathered.harvests.push({
      id: harvest.id,
      role: harvest.role,
      firstDay,
      lastDay,
      servings,
      reason: killed ? 'killed-by-frost' : null,
    });
    if (harvest.habit === 'thinnings') plants *= 1 - harvest.thinShare;
    if (harvest.endsPlant)
      plantGoneDay = Math.min(plantGoneDay, harvest.habit === 'once' ? firstDay : lastDay);
  }
}

/** Plants that ran to seed: pulled early, eaten soon, never stored. */
function boltedLots(
  plan: SowingPlan,
  growing: Growing,
  harvest: Harvest,
  firstDay: Day,
  servings: number,
  survivalAt: (day: Day) => number,
): Lot[] {
  const { raised, kind } = growing;
  const bolting = kind.bolting!;
  const trigger = coldCountsUntil(growing, harvest, firstDay);
  const day = Math.min(
    firstDay,
    dayOfSum(raised.bed, raised.growth, trigger, growing.sumOf(bolting.afterDays)),
  );
  const size = Math.min(1, raised.growthAt(day) / Math.max(1, growing.sumOf(harvest.fullDays)));
  const fromWeek = Math.floor((day + 3) / 7);
  return [
    {
      source: plan.id,
      kind: kind.id,
      role: harvest.role,
      fromWeek,
      toWeek: fromWeek + 4,
      servings: servings * bolting.edibleShare * size * survivalAt(day),
      lossPerWeekShare: 0,
      form: 'standing',
      store: null,
      storeFromWeek: null,
      keptGPerServing: keptGPerServing(harvest),
      putBy: null,
      bolted: true,
    },
  ];
}

/** Perennials give in their season of each year, counted from midwinter. */
function gatherPerennial(
  context: ForecastContext,
  plan: SowingPlan,
  growing: Growing,
  end: Ends,
  gathered: Gathered,
): void {
  const { raised } = growing;
  for (const harvest of plan.kind.harvests) {
    if (harvest.startGate.gate !== 'midwinter') continue;
    const sum = growing.sumOf(harvest.startGate.afterDays);
    let first = NEVER;
    let last = NEVER;
    let servings = 0;
    let leftAlone = false;
    const full = fullServingsOf(harvest, plan.plantsCount);
    for (let from = midwinterBefore(context.startDay + 200, growing.southern); from < end.day; ) {
      const firstDay = dayOfSum(raised.bed, raised.growth, from, sum);
      const lastDay = Math.min(firstDay + harvest.windowDays, end.day);
      const taken = establishedShare(harvest, plan.plantedDay ?? null, from, growing.southern);
      if (firstDay < end.day && taken === 0) leftAlone = true;
      if (firstDay < end.day && taken > 0) {
        const survivalAt = (): number => 1;
        const lots = lotsOf({
          source: plan.id,
          kind: plan.kind.id,
          growing,
          harvest,
          fullServings: full * taken,
          firstDay,
          lastDay,
          survivalAt,
          stores: new Set(),
        });
        const attendance = { away: context.away, care: plan.care, crop: plan.kind.crop };
        const had = attendedLots(attendance, harvest.habit, lots, firstDay, lastDay);
        gathered.lots.push(...had);
        servings += had.reduce((total, l) => total + l.servings, 0);
        if (first === NEVER) first = firstDay;
        last = lastDay;
      }
      const { year, month, dayOfMonth } = civilFromDay(from);
      from = dayFromCivil(year + 1, month, dayOfMonth);
    }
    const reason = first < NEVER ? null : leftAlone ? 'still-establishing' : end.reason;
    gathered.harvests.push({
      id: harvest.id,
      role: harvest.role,
      firstDay: first,
      lastDay: last,
      servings,
      reason,
    });
  }
}

function naturalClearDay(plan: SowingPlan, gathered: Gathered, end: Ends, raised: Raised): Day {
  let last = raised.groundDay >= NEVER ? raised.startDay : raised.groundDay;
  for (const harvest of gathered.harvests)
    if (harvest.lastDay < NEVER) last = Math.max(last, harvest.lastDay);
  if (gathered.harvests.every((h) => h.firstDay >= NEVER)) last = Math.min(end.day, last + 120);
  return plan.clearDay === null ? last : Math.min(Math.max(last, raised.startDay), plan.clearDay);
}

export function runSowing(
  context: ForecastContext,
  member: Member,
  plan: SowingPlan,
  stores: ReadonlySet<StoreId>,
): SowingRun {
  const { kind } = plan;
  const reference = referenceDayCDays(kind);
  const pace = member.paceOf(kind);
  const raised = raise(member, plan, reference, pace);
  const southern = context.site.latitudeDeg < 0;
  const growing: Growing = {
    kind,
    raised,
    sumOf: (referenceDays) => (referenceDays * reference) / pace,
    lengthOfDay: context.lengthOfDay,
    southern,
  };
  const end = plantEnd(context, member, plan, growing);
  const survival = survivalOf(
    member,
    plan,
    raised,
    hazardsOf(kind.crop),
    isCovered(context, plan.exposure),
    southern,
    raised.emergenceDay >= NEVER ? NEVER : raised.dayOfGrowth(growing.sumOf(kind.frostYoungDays)),
  );
  const windLoss = windLossShare(kind, context.exposures.get(plan.exposure));
  const gathered: Gathered = { harvests: [], lots: [], boltedShare: 0 };
  if (kind.perennial) gatherPerennial(context, plan, growing, end, gathered);
  else gather(context, plan, growing, survival, end, windLoss, stores, gathered);

  const clearDay = naturalClearDay(plan, gathered, end, raised);
  const cutShort = gathered.harvests.some((h) => h.reason === 'ran-to-seed' || h.lastDay === end.day);
  if (kind.bolting?.effect === 'ends' && end.reason === 'ran-to-seed' && cutShort) gathered.boltedShare = 1;
  const frostSurvival = raised.groundDay >= NEVER ? 1 : survival.frost(clearDay);
  return {
    startDay: raised.startDay,
    emergenceDay: raised.emergenceDay,
    germinatingShare: raised.germinatingShare,
    keptYieldShare: raised.kept.yieldShare,
    sturdyYieldShare: raised.sturdyYieldShare,
    groundDay: raised.groundDay,
    clearDay,
    harvests: gathered.harvests,
    boltedShare: gathered.boltedShare,
    frostedShare: 1 - frostSurvival,
    lostShare: 1 - survival.hazards(clearDay) * (1 - kind.growingLossShare) * (1 - windLoss),
    nitrogenLeftGPerM2:
      nitrogenLeftGPerM2(growing, clearDay) * standShare(raised.germinatingShare) * frostSurvival,
    lots: gathered.lots,
  };
}
