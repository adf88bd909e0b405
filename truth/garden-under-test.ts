/** The places that the growth and trade rows are run in: one of each sort, ordinary ground, water at hand. */
import { dayFromCivil } from '../packages/basis/src/index.ts';
import {
  type CropType,
  type Exposure,
  type ForecastContext,
  forecastContext,
  plantsPerM2,
  type RaisingStage,
  type RouteId,
  type SowingPlan,
  stationById,
} from '../packages/growing/src/index.ts';
import { eastbourne } from './eastbourne.ts';

const coverOf = { open: 'open', cover: 'polytunnel', frame: 'cold-frame', sill: 'windowsill' } as const;

const exposureOf = (material: Exposure['cover']['material']): Exposure => ({
  cover: {
    id: material,
    material,
    ageYears: 2,
    ventAboveC: null,
    faces: material === 'windowsill' ? 'south' : null,
  },
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
});

export const exposuresUnderTest = new Map<string, Exposure>([
  ...Object.entries(coverOf).map(([key, material]) => [key, exposureOf(material)] as const),
  ['bench', exposureOf('polytunnel')],
  ['mat', exposureOf('heated-mat')],
]);

export const firstDay = dayFromCivil(2026, 1, 1);

const contexts = new Map<string, ForecastContext>();

/** Twenty members of `check` weather at a station, three years from 1 January 2026. */
export function contextAt(station: string): ForecastContext {
  let context = contexts.get(station);
  if (context === undefined) {
    const found = station === 'eastbourne' ? eastbourne : stationById(station);
    if (found === null) throw new Error(`no station ${station}`);
    context = forecastContext({
      site: found.site,
      source: { kind: 'normals', normals: found.normals },
      exposures: exposuresUnderTest,
      seed: 1,
      purpose: 'check',
      memberCount: 20,
      startDay: firstDay,
      dayCount: 1000,
    });
    contexts.set(station, context);
  }
  return context;
}

const stagesOf: Partial<Record<RouteId, readonly RaisingStage[]>> = {
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

/** A square metre of a kind, with the protection that a careful gardener gives it. */
export const sowingPlan = (
  kind: CropType,
  route: RouteId,
  exposure: keyof typeof coverOf,
  startDay: number,
): SowingPlan => ({
  id: 'under-test',
  kind,
  route,
  startDay,
  startSpreadDays: 0,
  stages: stagesOf[route] ?? [],
  exposure,
  plantDay: null,
  clearDay: null,
  plantsCount: plantsPerM2(kind),
  protection: ['mesh', 'net', 'fleece'],
});

export const noStores: ReadonlySet<never> = new Set();
