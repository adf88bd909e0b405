/** Crops that stand, from the file's vague words to sowings that enter at their own stage. */
import { type Day, mondayOf, quantileOfSorted, type Week, weekOfDay } from '@twelvemonth/basis';
import type { Garden, GardenPlace, StandingSowing } from '@twelvemonth/garden';
import {
  type CropType,
  type ForecastContext,
  NEVER,
  plantsPerM2,
  type RaisingStage,
  runSowing,
  type SowingPlan,
  type StoreId,
} from '@twelvemonth/growing';
import {
  type Bench,
  careOf,
  type GroundClass,
  openStripsByWeek,
  type StandingCrop,
} from '@twelvemonth/planning';
import { kindOf } from '../kinds/garden-kinds.ts';
import { exposureKey, exposureOf } from './exposures.ts';
import { stripsOf } from './ground.ts';

const optionStepDays = 14;
const triedMembers = 12;
/** When a crop is spent is found in so many of them; it then gives this share of all, this long before its end. */
const spentMembers = 4;
const nearlyAllShare = 0.97;
const leastSavedDays = 21;
/** A plant of unknown sowing day was raised this much longer than its reference days. Judged. */
const usualRaisingFactor = 1.6;

interface Begun {
  readonly startDay: Day;
  readonly spreadDays: number;
  readonly plantDay: Day | null;
  readonly raised: boolean;
}

const middleOf = (span: { fromDay: Day; toDay: Day }): Day => Math.round((span.fromDay + span.toDay) / 2);
const halfOf = (span: { fromDay: Day; toDay: Day }): number => Math.max(0, (span.toDay - span.fromDay) / 2);

function begun(standing: StandingSowing, kind: CropType, onBench: boolean, firstDay: Day): Begun {
  const { sown, planted } = standing;
  const seed = kind.startsAs === 'seed';
  if (!seed || kind.perennial) {
    const when = planted ?? sown;
    const day = when === null ? firstDay : Math.max(firstDay, middleOf(when));
    return {
      startDay: day,
      spreadDays: when === null ? 0 : Math.min(30, halfOf(when)),
      plantDay: null,
      raised: false,
    };
  }
  if (sown !== null)
    return {
      startDay: Math.max(firstDay, middleOf(sown)),
      spreadDays: Math.min(30, halfOf(sown)),
      plantDay: planted === null ? null : middleOf(planted),
      raised: planted !== null || onBench,
    };
  const plantDay = planted === null ? firstDay + 60 : middleOf(planted);
  const raisingDays = Math.round(kind.raisingDays * usualRaisingFactor);
  const startDay = Math.max(firstDay, plantDay - raisingDays);
  return {
    startDay,
    spreadDays: planted === null ? 30 : halfOf(planted),
    plantDay,
    raised: kind.raisingDays > 0,
  };
}

function stagesFor(benches: readonly Bench[], onBench: Bench | undefined): RaisingStage[] {
  const bench = onBench ?? benches.find((b) => b.stage === 'bench') ?? benches.find((b) => b.stage !== 'mat');
  return bench === undefined ? [] : [{ stage: bench.stage, exposure: bench.exposure }];
}

/** When a sowing is over by itself in four years of five, and the middle day of its planting. */
export function naturalEnd(
  context: ForecastContext,
  plan: SowingPlan,
  stores: ReadonlySet<StoreId>,
  fromDay: Day,
): { readonly endDay: Day; readonly groundDay: Day } {
  const runs = context.members
    .slice(0, triedMembers)
    .map((member) => runSowing(context, member, plan, stores));
  const sorted = (values: readonly number[]): Float64Array => Float64Array.from(values).sort();
  const endDay = Math.max(fromDay, Math.round(quantileOfSorted(sorted(runs.map((r) => r.clearDay)), 0.8)));
  const groundDays = runs.map((r) => r.groundDay).filter((day) => day < NEVER);
  const groundDay = groundDays.length === 0 ? fromDay : Math.round(quantileOfSorted(sorted(groundDays), 0.6));
  return { endDay, groundDay };
}

/**
 * The day from which its ground can be had for next to nothing: nearly all has come, or lies in store as long as it
 * would have stood. Squash that frost has ended, beans with a few pods to come.
 */
function spentDay(
  context: ForecastContext,
  plan: SowingPlan,
  stores: ReadonlySet<StoreId>,
  fromDay: Day,
  endDay: Day,
): Day {
  if (plan.kind.perennial) return endDay;
  const members = context.members.slice(0, spentMembers);
  const given = (clearDay: Day): { readonly servings: number; readonly untilWeek: number } => {
    let [servings, weeks] = [0, 0];
    for (const member of members)
      for (const lot of runSowing(context, member, { ...plan, clearDay }, stores).lots) {
        servings += lot.servings;
        weeks += lot.servings * lot.toWeek;
      }
    return { servings, untilWeek: weeks / Math.max(1e-9, servings) };
  };
  const whole = given(endDay);
  for (let day = fromDay + optionStepDays; day <= endDay - leastSavedDays; day += optionStepDays) {
    const { servings, untilWeek } = given(day);
    if (servings >= nearlyAllShare * whole.servings && untilWeek >= whole.untilWeek - 1) return day;
  }
  return endDay;
}

function clearDaysUntil(endDay: Day, fromDay: Day, mayClearFrom: Day | null): Day[] {
  const days: Day[] = [];
  if (mayClearFrom !== null)
    for (let day = Math.max(fromDay, mayClearFrom); day < endDay - 7; day += optionStepDays) days.push(day);
  return [...days, endDay];
}

/** People count plants; a drilled or multi-sown kind is reckoned in stations, no more of them than its ground holds. */
function stationsOf(standing: StandingSowing, kind: CropType): number {
  const { groundM2, count } = standing;
  if (groundM2 === null || kind.stationSeedsCount <= 1) return count.middle;
  return Math.min(count.middle, Math.max(1, groundM2 * plantsPerM2(kind)));
}

export interface StandingInput {
  readonly garden: Garden;
  readonly context: ForecastContext;
  readonly ground: readonly GroundClass[];
  readonly benches: readonly Bench[];
  readonly stores: ReadonlySet<StoreId>;
  readonly protection: SowingPlan['protection'];
  readonly fromDay: Day;
}

/** The class that holds a place, or the numbered one of its like; without a number one that does not rest, if any. */
export function classOf(
  ground: readonly GroundClass[],
  place: Pick<GardenPlace, 'id'>,
  number: number | null,
): number {
  const holds = (g: GroundClass): boolean =>
    g.beds.some((bed) => bed.place === place.id && (number === null || bed.number === number));
  const open = ground.findIndex((g) => g.closed === undefined && holds(g));
  return open >= 0 ? open : ground.findIndex(holds);
}

function stripsFor(standing: StandingSowing, kind: CropType, place: GardenPlace): number {
  const strips = stripsOf(place);
  if (place.use === 'tub')
    return Math.max(
      1,
      Math.ceil((standing.count.middle * kind.tubLitresPerPlant) / strips.stripLitres - 0.2),
    );
  const m2 = standing.groundM2 ?? (standing.count.middle * kind.inRowCm * kind.betweenRowCm) / 10000;
  return Math.max(1, Math.ceil(m2 / strips.stripM2 - 0.25));
}

export function standingCrops(input: StandingInput): StandingCrop[] {
  const { garden, context, ground, benches, stores, fromDay } = input;
  const taken = ground.map(() => 0);
  return garden.standing.flatMap((standing) => {
    const kind = kindOf(garden, standing.kind);
    const here = garden.places.find((p) => p.id === standing.place);
    const onBench = benches.find((b) => b.place === standing.place);
    const home =
      onBench === undefined ? here : (garden.places.find((p) => p.id === standing.plantInto) ?? here);
    if (kind === undefined || home === undefined) return [];
    const index = classOf(ground, home, onBench === undefined ? standing.placeNumber : null);
    if (index < 0) return [];
    const begunAt = standing.planted ?? standing.sown;
    const start = begun(standing, kind, onBench !== undefined, context.startDay);
    const plan: SowingPlan = {
      id: standing.id,
      kind,
      route: start.raised ? 'module' : kind.startsAs === 'seed' ? 'direct' : 'planted',
      startDay: start.startDay,
      startSpreadDays: start.spreadDays,
      stages: start.raised ? stagesFor(benches, onBench) : [],
      exposure: exposureKey(exposureOf(garden, home)),
      plantDay: onBench === undefined ? start.plantDay : Math.max(fromDay, start.plantDay ?? fromDay),
      clearDay: null,
      plantsCount: stationsOf(standing, kind),
      counted: true,
      startDayGuessed: standing.sown === null,
      plantedDay: kind.perennial && begunAt !== null ? middleOf(begunAt) : null,
      protection: input.protection,
      keepsSeed: garden.savesSeedOf.includes(kind.id),
      care: careOf(ground[index]!),
    };
    const { endDay, groundDay } = naturalEnd(context, plan, stores, fromDay);
    const may = clearDaysUntil(endDay, fromDay, standing.mayClearFrom);
    const spent = spentDay(context, plan, stores, fromDay, endDay);
    const days = [...new Set([...may, spent])].sort((a, b) => a - b);
    const wanted = stripsFor(standing, kind, home);
    const room =
      onBench === undefined ? ground[index]!.stripCount - taken[index]! : ground[index]!.stripCount;
    const stripsCount = Math.max(0, Math.min(wanted, room));
    if (onBench === undefined) taken[index]! += stripsCount;
    const groundFromWeek: Week = Math.max(
      weekOfDay(fromDay),
      onBench === undefined ? weekOfDay(fromDay) : weekOfDay(groundDay),
    );
    return [
      {
        plan,
        ground: index,
        stripsCount,
        place: home.id,
        placeNumber: onBench === undefined ? standing.placeNumber : null,
        clearDays: days,
        groundFromWeek,
        bench: [],
        state: 'done' as const,
      },
    ];
  });
}

/** Plants waiting on a bench go out when there is room: later than ready, if what stands leaves none before. */
export function fitWaiting(
  standing: readonly StandingCrop[],
  ground: readonly GroundClass[],
  fromWeek: Week,
  weekCount: number,
): StandingCrop[] {
  const free = ground.map((g) => openStripsByWeek(g, fromWeek, weekCount));
  const toWeek = (crop: StandingCrop): number =>
    crop.plan.kind.perennial
      ? weekCount
      : Math.min(weekCount, weekOfDay(crop.clearDays.at(-1)!) + 1 - fromWeek);
  const waits = (crop: StandingCrop): boolean =>
    crop.groundFromWeek > fromWeek ||
    (crop.placeNumber === null &&
      crop.plan.stages.length > 0 &&
      crop.plan.plantDay !== null &&
      weekOfDay(crop.plan.plantDay) >= fromWeek);
  for (const crop of standing)
    if (!waits(crop)) for (let w = 0; w < toWeek(crop); w++) free[crop.ground]![w]! -= crop.stripsCount;
  return standing.map((crop) => {
    if (!waits(crop)) return crop;
    const strips = free[crop.ground]!;
    const end = Math.max(crop.groundFromWeek - fromWeek + 1, toWeek(crop));
    let from = crop.groundFromWeek - fromWeek;
    const room = (w: number): number => Math.min(...Array.from(strips.slice(w, Math.max(w + 1, end))));
    while (
      from < Math.min(weekCount - 1, crop.groundFromWeek - fromWeek + 8) &&
      room(from) < crop.stripsCount
    )
      from++;
    const stripsCount = Math.max(0, Math.min(crop.stripsCount, room(from)));
    for (let w = from; w < Math.min(weekCount, end); w++) strips[w]! -= stripsCount;
    const groundFromWeek = fromWeek + from;
    const { plan } = crop;
    const plantDay =
      plan.stages.length > 0 ? Math.max(plan.plantDay ?? 0, mondayOf(groundFromWeek)) : plan.plantDay;
    const plantsCount = plan.plantsCount * (stripsCount / Math.max(1, crop.stripsCount));
    return { ...crop, groundFromWeek, stripsCount, plan: { ...plan, plantDay, plantsCount } };
  });
}
