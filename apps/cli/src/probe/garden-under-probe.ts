import { civilFromDay, type Day, dayFromCivil, dayFromIso, invariant } from '@twelvemonth/basis';
import {
  type CoverMaterial,
  type Exposure,
  type ForecastContext,
  forecastContext,
} from '@twelvemonth/growing';
import type { z } from 'zod';
import { type ClimateInputs, climateOf, type placeFields } from './climate-inputs.ts';
import { whole } from './fields.ts';

type PlaceInputs = { readonly [Name in keyof typeof placeFields]?: z.output<(typeof placeFields)[Name]> };

export const placeKey = 'place';
export const dayOf = (iso: string): Day => {
  const day = dayFromIso(iso);
  invariant(day !== null, 'the schema lets only days through', { iso });
  return day;
};

export function exposureOf(inputs: PlaceInputs): Exposure {
  const material = inputs.cover ?? 'open';
  return {
    cover: {
      id: material,
      material,
      ageYears: inputs.coverAgeYears ?? 0,
      ventAboveC: inputs.ventAboveC ?? null,
      faces: material === 'windowsill' ? (inputs.faces ?? 'south') : null,
    },
    winterSun: inputs.winterSun ?? 'all',
    aspect: inputs.aspect ?? 'flat',
    frostPocket: inputs.frostPocket ?? false,
    wet: inputs.wet ?? false,
    windy: inputs.windy ?? false,
    watered: inputs.watered ?? true,
  };
}

const benches: Readonly<Record<string, CoverMaterial>> = {
  mat: 'heated-mat',
  sill: 'windowsill',
  bench: 'polytunnel',
  frame: 'cold-frame',
};

export const memberFields = {
  memberCount: whole(1, 100, 'weather runs').default(10),
  seed: whole(0, 2147483647, 'number that draws the weather').default(1),
};

/** Members of generated weather from 1 January of the year before `firstDay` on, with the place and the usual benches. */
export function membersAround(
  inputs: ClimateInputs & PlaceInputs & { readonly memberCount: number; readonly seed: number },
  firstDay: Day,
  daysAfter: number,
): ForecastContext {
  const { site, source } = climateOf(inputs);
  const startDay = dayFromCivil(civilFromDay(firstDay).year - 1, 1, 1);
  return forecastContext({
    site,
    source,
    exposures: new Map([
      [placeKey, exposureOf(inputs)],
      ...Object.entries(benches).map(([key, cover]) => [key, exposureOf({ cover })] as const),
    ]),
    seed: inputs.seed,
    purpose: 'check',
    memberCount: inputs.memberCount,
    startDay,
    dayCount: firstDay - startDay + daysAfter,
  });
}
