import type { CropType } from '@twelvemonth/growing';
import {
  type ForecastContext,
  type Growing,
  type RouteId,
  raise,
  referenceDayCDays,
  type SowingPlan,
} from '@twelvemonth/growing';
import { placeKey } from './garden-under-probe.ts';

const stagesOf: Partial<Record<RouteId, SowingPlan['stages']>> = {
  module: [
    { stage: 'bench', exposure: 'bench' },
    { stage: 'frame', exposure: 'frame' },
  ],
  warm: [
    { stage: 'mat', exposure: 'mat' },
    { stage: 'sill', exposure: 'sill' },
    { stage: 'frame', exposure: 'frame' },
  ],
};

/** One sowing in each member at the pace of the tables (no draw), from its start to the ground. */
export function growingIn(
  context: ForecastContext,
  kind: CropType,
  route: RouteId,
  startDay: number,
  plantDay: number | null,
): Growing[] {
  const plan: SowingPlan = {
    id: 'probe',
    kind,
    route,
    startDay,
    startSpreadDays: 0,
    stages: stagesOf[route] ?? [],
    exposure: placeKey,
    plantDay,
    clearDay: null,
    plantsCount: 1,
    protection: [],
  };
  const reference = referenceDayCDays(kind);
  return context.members.map((member) => ({
    kind,
    raised: raise(member, plan, reference, 1),
    sumOf: (referenceDays) => referenceDays * reference,
    lengthOfDay: context.lengthOfDay,
    southern: context.site.latitudeDeg < 0,
  }));
}
