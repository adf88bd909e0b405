import type { ClimateSource, MonthlyNormals, Site } from '@twelvemonth/growing';
import { z } from 'zod';
import { elevationM, latitudeDeg, oneOf, yesNo } from './fields.ts';
import { needed, sound, stationNamed } from './named-things.ts';

const twelve = (least: number, most: number) => z.array(z.number().min(least).max(most)).length(12);

const normals = z
  .strictObject({
    tmaxC: twelve(-60, 60).describe('mean maximum, °C'),
    tminC: twelve(-70, 45).describe('mean minimum, °C'),
    rainMm: twelve(0, 2000).describe('rain, mm a month'),
    sunHours: twelve(0, 744).describe('sunshine, h a month').optional(),
    radiationMJPerM2Day: twelve(0, 45).describe('global radiation, MJ/m²/day').optional(),
    wetDaysCount: twelve(0, 31).describe('days with at least 1 mm of rain').optional(),
  })
  .describe('twelve monthly normals each, January first; needs latitudeDeg');

/** A climate: a station that comes with the program, or monthly normals with their latitude. */
export const climateFields = {
  station: z.string().describe('id of a station that comes with the program, as dublin').optional(),
  normals: normals.optional(),
  latitudeDeg: latitudeDeg.optional(),
  elevationM: elevationM.default(50),
  coastal: yesNo('near the sea: chooses the coefficient of the radiation estimate').default(true),
};

export interface ClimateInputs {
  readonly station?: string | undefined;
  readonly normals?: z.output<typeof normals> | undefined;
  readonly latitudeDeg?: number | undefined;
  readonly elevationM: number;
  readonly coastal: boolean;
}

const unknownMonths = Array.from({ length: 12 }, () => null);

export function climateOf(inputs: ClimateInputs): {
  site: Site;
  normals: MonthlyNormals;
  source: ClimateSource;
} {
  sound(
    inputs.station === undefined || inputs.normals === undefined,
    'normals',
    'Both "station" and "normals" are given. Leave out one of them.',
  );
  if (inputs.normals === undefined) {
    const { site, normals: known } = stationNamed(
      needed(inputs.station, 'station', 'a climate is needed, "station" or "normals" with "latitudeDeg"'),
    );
    sound(
      inputs.latitudeDeg === undefined,
      'latitudeDeg',
      'Input "latitudeDeg" is given beside "station", which has its own. Leave it out.',
    );
    return { site, normals: known, source: { kind: 'normals', normals: known } };
  }
  const { tmaxC, tminC } = inputs.normals;
  for (let month = 0; month < 12; month++)
    sound(
      tminC[month]! <= tmaxC[month]!,
      'normals.tminC',
      `Month ${month + 1} of "normals" has a tminC of ${tminC[month]} °C above its tmaxC of ${tmaxC[month]} °C. Mend one of them.`,
    );
  const known: MonthlyNormals = {
    ...inputs.normals,
    sunHours: inputs.normals.sunHours ?? unknownMonths,
    radiationMJPerM2Day: inputs.normals.radiationMJPerM2Day ?? unknownMonths,
    wetDaysCount: inputs.normals.wetDaysCount ?? unknownMonths,
  };
  const site: Site = {
    latitudeDeg: needed(
      inputs.latitudeDeg,
      'latitudeDeg',
      'latitude that belongs to "normals", degrees, −90 to 90',
    ),
    longitudeDeg: 0,
    elevationM: inputs.elevationM,
    coastal: inputs.coastal,
  };
  return { site, normals: known, source: { kind: 'normals', normals: known } };
}

export const placeFields = {
  cover: oneOf(
    ['open', 'fleece', 'cloche', 'cold-frame', 'polytunnel', 'glass', 'windowsill', 'heated-mat'],
    'what covers the place',
  ).default('open'),
  coverAgeYears: z.number().min(0).max(60).describe('age of the cover, years').default(0),
  ventAboveC: z
    .number()
    .min(5)
    .max(50)
    .describe('vented above this, °C (default: the usual value)')
    .optional(),
  faces: oneOf(['south', 'east', 'west', 'north'], 'which way a windowsill faces').default('south'),
  winterSun: oneOf(['all', 'half', 'none'], 'low winter sun on the place').default('all'),
  aspect: oneOf(['flat', 'south', 'east', 'west', 'north'], 'slope of the ground').default('flat'),
  frostPocket: yesNo('cold air gathers there').default(false),
  wet: yesNo('stays wet in winter').default(false),
  windy: yesNo('wind gets at it').default(false),
  watered: yesNo('somebody waters it').default(true),
};
