import { type Day, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import {
  allRoles,
  type CropType,
  type DailyWeather,
  type ForecastContext,
  forecastContext,
  type MemberPurpose,
  type SowingPlan,
} from '@twelvemonth/growing';
import { capBesideStanding, type PlanningProblem, type PlantLimit } from '@twelvemonth/planning';
import { kindsOf } from '../kinds/garden-kinds.ts';
import { appetiteOf } from './appetite.ts';
import { climateSourceOf, siteOf } from './climate-source.ts';
import { exposuresOf } from './exposures.ts';
import { firmCrops } from './firm.ts';
import { benchesOf, groundOf } from './ground.ts';
import { absencesOf, capMinutesOf } from './hands.ts';
import { noPlantingOf, plantedLater } from './no-planting.ts';
import { restBeds } from './rests.ts';
import { fitWaiting, standingCrops } from './standing.ts';
import { withBenches } from './standing-benches.ts';
import { stockLots, storesOf } from './stock.ts';

/** Weather begins this long before the plan, so that what stands has its past. */
export const pastDays = 420;
export const tailWeeks = 26;
const afterDays = 30;

export interface ContextSize {
  readonly fromDay: Day;
  readonly weeks: number;
  readonly memberCount: number;
  readonly seed: number;
  /** First day of weather; left out: long enough before the plan for what stands. */
  readonly weatherFromDay?: Day | null;
}

/** Null when the garden has no climate to draw from. */
export function contextOf(
  garden: Garden,
  daily: DailyWeather | null,
  purpose: MemberPurpose,
  size: ContextSize,
): ForecastContext | null {
  const source = climateSourceOf(garden, daily);
  if (source === null) return null;
  const startDay = size.weatherFromDay ?? size.fromDay - pastDays;
  return forecastContext({
    site: siteOf(garden),
    source,
    exposures: exposuresOf(garden),
    seed: size.seed,
    purpose,
    memberCount: size.memberCount,
    startDay,
    dayCount: size.fromDay - startDay + (size.weeks + tailWeeks) * 7 + afterDays,
    away: absencesOf(garden),
  });
}

export function protectionOf(garden: Garden): SowingPlan['protection'] {
  const { fleeceM, meshM, netM } = garden.kit;
  return [
    ...(fleeceM > 0 ? (['fleece'] as const) : []),
    ...(meshM > 0 ? (['mesh'] as const) : []),
    ...(netM > 0 ? (['net'] as const) : []),
  ];
}

function limitsOf(garden: Garden, weeks: number): PlantLimit[] {
  const years = Math.max(1, Math.round(weeks / 52));
  const limits = new Map<string, PlantLimit>();
  const at = (kind: string): PlantLimit =>
    limits.get(kind) ?? { kind, leastPlants: 0, mostPlants: Number.POSITIVE_INFINITY };
  for (const { kind, count } of garden.household.yearly)
    limits.set(kind, { ...at(kind), leastPlants: count });
  for (const wish of garden.wishes) {
    if (wish.wish === 'at-least') limits.set(wish.kind, { ...at(wish.kind), leastPlants: wish.plantsCount });
    if (wish.wish === 'at-most')
      limits.set(wish.kind, { ...at(wish.kind), mostPlants: wish.plantsCount * years });
  }
  return [...limits.values()];
}

export function kindsOnOffer(garden: Garden): readonly CropType[] {
  const not = new Set(garden.household.dislikes);
  for (const wish of garden.wishes) if (wish.wish === 'forbid') not.add(wish.kind);
  return kindsOf(garden).filter((kind) => !not.has(kind.id) && !not.has(kind.crop));
}

export function buildProblem(garden: Garden, context: ForecastContext, size: ContextSize): PlanningProblem {
  const fromWeek = weekOfDay(size.fromDay);
  const weekCount = size.weeks + tailWeeks;
  const benches = benchesOf(garden);
  const ground = groundOf(garden, benches);
  const stores = storesOf(garden);
  const protection = protectionOf(garden);
  const input = {
    garden,
    context,
    ground,
    benches,
    stores,
    protection,
    fromDay: size.fromDay,
  };
  const noPlanting = noPlantingOf(garden);
  const waiting = [...standingCrops(input), ...firmCrops(input)].map((crop) =>
    plantedLater(crop, noPlanting),
  );
  const rested = restBeds(garden, ground, waiting, { fromDay: size.fromDay, fromWeek, weekCount });
  const problem: PlanningProblem = {
    context,
    fromDay: size.fromDay,
    fromWeek,
    shownWeeks: size.weeks,
    weekCount,
    kinds: kindsOnOffer(garden),
    ground: rested.ground,
    benches,
    standing: withBenches(
      garden,
      benches,
      fitWaiting(rested.standing, rested.ground, fromWeek, weekCount),
      fromWeek,
      weekCount,
    ),
    stock: stockLots(garden, size.fromDay),
    appetite: appetiteOf(garden, fromWeek, weekCount),
    roles: allRoles(),
    stores,
    protection,
    savesSeedOf: new Set(garden.savesSeedOf),
    limits: limitsOf(garden, size.weeks),
    seed: size.seed,
    lastPlan: null,
    noPlanting,
    capMinutesByWeek: capMinutesOf(garden, fromWeek, weekCount),
    ownedKit: {
      mesh: garden.kit.meshM,
      net: garden.kit.netM,
      fleece: garden.kit.fleeceM,
      canes: garden.kit.canes,
    },
  };
  return { ...problem, capMinutesByWeek: capBesideStanding(problem) };
}
