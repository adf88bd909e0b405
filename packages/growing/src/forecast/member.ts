/**
 * A member: one unbroken run of weather and one draw of what nobody knows (pace of each crop, offset of each cover,
 * bad years of each group of hazards). Draws are keyed, so member k is the same whatever is planned.
 */
import { type Day, dayOfYear, streamFor } from '@twelvemonth/basis';
import type { ClimateSource, DailyWeather, MemberPurpose, Site } from '../climate/climate.ts';
import { dayLengthHours, weatherMembers } from '../climate/index.ts';
import type { CropType } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';
import { blightSpellDays, type HazardYears } from '../growth/hazard-loss.ts';
import { makePlaceClock, type PlaceClock } from '../growth/place-clock.ts';
import { placeWeather } from '../places/index.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import type { Absence } from './away.ts';

export interface Member {
  readonly index: number;
  readonly outdoor: DailyWeather;
  readonly hazardYears: HazardYears;
  readonly blightDays: Int32Array;
  clockOf(exposureKey: string): PlaceClock;
  paceOf(kind: CropType): number;
  /** Uniform in −1…1, the same for the same id. */
  drawFor(id: string): number;
}

export interface ForecastContext {
  readonly site: Site;
  readonly purpose: MemberPurpose;
  readonly exposures: ReadonlyMap<string, Exposure>;
  readonly members: readonly Member[];
  readonly startDay: Day;
  readonly dayCount: number;
  /** When nobody is there. */
  readonly away: readonly Absence[];
  lengthOfDay(day: Day): number;
}

export interface ContextRequest {
  readonly site: Site;
  readonly source: ClimateSource;
  readonly exposures: ReadonlyMap<string, Exposure>;
  readonly seed: number;
  readonly purpose: MemberPurpose;
  readonly memberCount: number;
  readonly startDay: Day;
  readonly dayCount: number;
  /** Left out: somebody is always there. */
  readonly away?: readonly Absence[];
}

/** Spread of what nobody knows of a place's own temperature, °C: less in the open than under a cover. */
export function offsetSpreadC(material: CoverMaterial): number {
  return coversTable.offset[material === 'open' ? 'open-sd-c' : 'cover-sd-c'];
}

function makeMember(request: ContextRequest, outdoor: DailyWeather, index: number): Member {
  const { seed, purpose, site, exposures } = request;
  const clocks = new Map<string, PlaceClock>();
  const paces = new Map<string, number>();
  const bad = new Map<string, boolean>();
  let spells: Int32Array | null = null;
  return {
    index,
    outdoor,
    get blightDays() {
      spells ??= blightSpellDays(outdoor);
      return spells;
    },
    hazardYears: {
      isBad: (group, year, prob) => {
        const key = `${group}/${year}`;
        let draw = bad.get(key);
        if (draw === undefined) {
          draw = streamFor(seed, `${purpose}/bad-year/${key}`, index).uniform() < prob;
          bad.set(key, draw);
        }
        return draw;
      },
    },
    clockOf: (key) => {
      let clock = clocks.get(key);
      if (clock === undefined) {
        const exposure = exposures.get(key);
        if (exposure === undefined) throw new Error(`broken invariant: no exposure ${key}`);
        const z = streamFor(seed, `${purpose}/offset/${exposure.cover.id}`, index).normal();
        const offsetC = z * offsetSpreadC(exposure.cover.material);
        clock = makePlaceClock(placeWeather(site, outdoor, exposure, offsetC));
        clocks.set(key, clock);
      }
      return clock;
    },
    paceOf: (kind) => {
      let pace = paces.get(kind.crop);
      if (pace === undefined) {
        const z = streamFor(seed, `${purpose}/pace/${kind.crop}`, index).normal();
        pace = Math.exp(Math.max(-2.5, Math.min(2.5, z)) * kind.paceSpreadShare);
        paces.set(kind.crop, pace);
      }
      return pace;
    },
    drawFor: (id) => 2 * streamFor(seed, `${purpose}/vague/${id}`, index).uniform() - 1,
  };
}

export function forecastContext(request: ContextRequest): ForecastContext {
  const weather = weatherMembers({
    site: request.site,
    source: request.source,
    seed: request.seed,
    purpose: request.purpose,
    memberCount: request.memberCount,
    startDay: request.startDay,
    dayCount: request.dayCount,
  });
  const lengths = new Float64Array(367);
  for (let doy = 1; doy <= 366; doy++) lengths[doy] = dayLengthHours(request.site.latitudeDeg, doy, 0.8333);
  const byDay = new Float64Array(request.dayCount + 900);
  for (let i = 0; i < byDay.length; i++) byDay[i] = lengths[dayOfYear(request.startDay + i)]!;
  return {
    site: request.site,
    purpose: request.purpose,
    exposures: request.exposures,
    members: weather.map((outdoor, index) => makeMember(request, outdoor, index)),
    startDay: request.startDay,
    dayCount: request.dayCount,
    away: request.away ?? [],
    lengthOfDay: (day) => byDay[Math.min(Math.max(0, day - request.startDay), byDay.length - 1)]!,
  };
}
