/** Sowings that people have promised themselves: kept as written, on a route that this household has. */
import { weekOfDay } from '@twelvemonth/basis';
import type { Wish } from '@twelvemonth/garden';
import type { RouteId, SowingPlan } from '@twelvemonth/growing';
import { careOf, couldGrowIn, plantsPerStrip, routeChoice, type StandingCrop } from '@twelvemonth/planning';
import { kindOf } from '../kinds/garden-kinds.ts';
import { exposureKey, exposureOf } from './exposures.ts';
import { classOf, naturalEnd, type StandingInput } from './standing.ts';

type Firm = Extract<Wish, { wish: 'firm' }>;

function firmCrop(input: StandingInput, firm: Firm): StandingCrop | null {
  const { garden, context, ground, benches, stores, fromDay } = input;
  const kind = kindOf(garden, firm.kind);
  const home = garden.places.find((place) => place.id === firm.place);
  if (kind === undefined || home === undefined) return null;
  const index = classOf(ground, home, null);
  if (index < 0 || !couldGrowIn(kind, ground[index]!)) return null;
  const routes = kind.routes.filter((route) => firm.route === null || route === firm.route);
  const choice = [...routes, ...kind.routes]
    .map((route: RouteId) => routeChoice({ benches }, route))
    .find((c) => c !== null);
  if (choice === undefined || choice === null) return null;
  const plan: SowingPlan = {
    id: firm.id,
    kind,
    route: choice.route,
    startDay: Math.max(fromDay, firm.sowDay),
    startSpreadDays: 0,
    stages: choice.stages,
    exposure: exposureKey(exposureOf(garden, home)),
    plantDay: null,
    clearDay: null,
    plantsCount: firm.plantsCount,
    protection: input.protection,
    keepsSeed: garden.savesSeedOf.includes(kind.id),
    care: careOf(ground[index]!),
  };
  const { endDay, groundDay } = naturalEnd(context, plan, stores, fromDay);
  const inPlace = choice.stages.length === 0;
  return {
    plan,
    ground: index,
    stripsCount: Math.max(1, Math.ceil(firm.plantsCount / plantsPerStrip(kind, ground[index]!) - 0.05)),
    place: home.id,
    placeNumber: null,
    clearDays: [endDay],
    groundFromWeek: weekOfDay(inPlace ? plan.startDay : groundDay),
    bench: [],
    state: 'firm',
  };
}

export function firmCrops(input: StandingInput): StandingCrop[] {
  return input.garden.wishes.flatMap((wish) => (wish.wish === 'firm' ? (firmCrop(input, wish) ?? []) : []));
}
