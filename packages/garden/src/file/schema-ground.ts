import * as z from 'zod';
import { count, line, metres, slug } from './schema-parts.ts';

const month = z.strictObject({
  tmaxC: z.number().min(-60).max(60),
  tminC: z.number().min(-60).max(60),
  rainMm: z.number().min(0).max(3000),
  sunHours: z.number().min(0).max(744).nullable().default(null),
  radiationMJPerM2Day: z.number().min(0).max(45).nullable().default(null),
  wetDaysCount: z.number().min(0).max(31).nullable().default(null),
});

export const writtenSite = z.strictObject({
  name: line.default(''),
  latitude: z
    .number()
    .min(-90, 'latitude-impossible')
    .max(90, 'latitude-impossible')
    .describe('Degrees, south below 0.'),
  longitude: z.number().min(-180, 'longitude-impossible').max(180, 'longitude-impossible').default(0),
  elevationM: z.number().min(-450).max(6000).default(20),
  coastal: z.boolean().default(false),
  climate: z
    .union([
      slug,
      z.strictObject({
        station: slug.optional(),
        normals: z
          .array(month)
          .length(12, 'normals-not-twelve')
          .optional()
          .describe('Twelve months, January first.'),
        dailyCsv: line.optional().describe('A file of daily weather beside this one.'),
      }),
    ])
    .describe('A station id, or { "normals": […] }, or { "dailyCsv": "weather.csv" }.'),
});
export type WrittenSite = z.output<typeof writtenSite>;

export const writtenCover = z.strictObject({
  id: slug,
  name: line.optional(),
  material: z.enum(['fleece', 'cloche', 'cold-frame', 'polytunnel', 'glass', 'windowsill', 'heated-mat']),
  ageYears: z.number().min(0, 'count-negative').max(100).default(2),
  ventAboveC: z
    .number()
    .min(0)
    .max(60)
    .nullable()
    .default(null)
    .describe('It is opened above this; null: when somebody is there.'),
  faces: z.enum(['south', 'east', 'west', 'north']).nullable().default(null),
});

export const writtenPlace = z.strictObject({
  id: slug,
  name: line.optional(),
  use: z.enum(['bed', 'tub', 'bench']).default('bed'),
  count: z.number().int().min(1, 'count-negative').max(500).default(1).describe('Like places in one line.'),
  cover: slug.nullable().default(null),
  lengthM: metres.nullable().default(null),
  widthM: metres.nullable().default(null),
  litres: z.number().positive().max(5000).nullable().default(null),
  trays: count(2000).nullable().default(null),
  winterSun: z.enum(['all', 'half', 'none']).default('all'),
  aspect: z.enum(['flat', 'south', 'east', 'west', 'north']).default('flat'),
  frostPocket: z.boolean().default(false),
  wet: z.boolean().default(false),
  windy: z.boolean().default(false),
  watered: z.boolean().default(true).describe('Water is at hand.'),
  visitsPerWeek: z.number().min(0, 'count-negative').max(50).default(4),
  area: line.default('home'),
  onRecord: z.array(slug).default([]).describe("Lasting facts: 'clubroot', 'white-rot'."),
  growAnyway: z
    .array(slug)
    .default([])
    .describe('Of what is on record: diseases whose families are grown here all the same, at a steep price.'),
  grewBefore: z
    .array(
      z.strictObject({
        kind: slug,
        year: z.number().int().min(1900).max(2200),
        number: z
          .number()
          .int()
          .min(1)
          .max(500)
          .nullable()
          .default(null)
          .describe('Which of the like places; null: all of them.'),
      }),
    )
    .max(1000)
    .default([])
    .describe('What was planted here in earlier years and is gone: families rest from it.'),
  takenBy: line.nullable().default(null).describe('What else has this ground for good: fruit, a path.'),
});
export type WrittenPlace = z.output<typeof writtenPlace>;

export const writtenKit = z.strictObject({
  fleeceM: z.number().min(0, 'count-negative').max(100000).default(0),
  meshM: z.number().min(0, 'count-negative').max(100000).default(0),
  netM: z.number().min(0, 'count-negative').max(100000).default(0),
  cloches: count(10000).default(0),
  canes: count(100000).default(0),
});

export const writtenStore = z.strictObject({
  store: slug.describe(
    "A keeping place: 'dry', 'cool-damp', 'frost-free', 'sand', 'fridge', 'freezer', 'jar'.",
  ),
  capacityKg: z.number().min(0, 'count-negative').max(100000).nullable().default(null),
});
