import * as z from 'zod';
import { writtenCover, writtenKit, writtenPlace, writtenSite, writtenStore } from './schema-ground.ts';
import { writtenHours } from './schema-hands.ts';
import { writtenHousehold } from './schema-household.ts';
import { count, line, noteText, slug, vagueCount, vagueDay, vagueWeight } from './schema-parts.ts';

/** The garden file as people write it. What its texts mean (vague dates, amounts) is read in the read-* files. */
export const writtenStanding = z.strictObject({
  id: slug.optional(),
  kind: slug,
  place: slug,
  number: z
    .number()
    .int()
    .min(1, 'count-negative')
    .max(500)
    .nullable()
    .default(null)
    .describe('Which of the like places, from 1.'),
  count: vagueCount,
  sown: vagueDay.nullable().default(null),
  planted: vagueDay.nullable().default(null),
  groundM2: z.number().positive().max(100000).nullable().default(null),
  mayClearFrom: vagueDay.nullable().default(null),
  plantInto: slug.nullable().default(null).describe('The place it is raised for.'),
  note: noteText,
});
export type WrittenStanding = z.input<typeof writtenStanding>;

export const writtenStock = z.strictObject({
  id: slug.optional(),
  kind: slug,
  amount: vagueWeight,
  store: slug,
  keepBack: vagueWeight
    .nullable()
    .default(null)
    .describe('How much of it is kept for planting, not for eating.'),
  since: vagueDay.nullable().default(null),
  note: noteText,
});

export const writtenSeed = z.strictObject({
  kind: slug,
  seeds: vagueCount,
  packed: z.number().int().min(1950).max(2199).nullable().default(null).describe('The year on the packet.'),
});

export const writtenWish = z.strictObject({
  kind: slug.optional().describe('The kind it is about; left out for rest and noPlanting.'),
  never: z.literal(true).optional(),
  atLeast: count(100000).optional().describe('Plants, in the coming year.'),
  atMost: count(100000).optional(),
  sow: vagueDay.optional().describe('A firm sowing: its day, with place and plants.'),
  id: slug.optional(),
  place: slug.optional(),
  plants: count(100000).optional(),
  route: slug.nullable().optional(),
  rest: z
    .literal(true)
    .optional()
    .describe('This place rests: nothing grows there from a day, or until one.'),
  number: z.number().int().min(1, 'count-negative').max(500).optional().describe('Which of the like places.'),
  noPlanting: z
    .literal(true)
    .optional()
    .describe('Nothing is sown or planted: from and to; from alone means the week that holds it.'),
  from: vagueDay.optional(),
  to: vagueDay.optional(),
});
export type WrittenWish = z.input<typeof writtenWish>;

const changedNumber = z.number();
const changedValue = z.union([
  changedNumber,
  z.string().max(200, 'text-too-long'),
  z.strictObject({ value: changedNumber, low: changedNumber, high: changedNumber }),
]);

export const writtenOwnKind = z.strictObject({
  id: slug,
  like: slug.describe('The kind of the catalogue that it behaves like.'),
  name: line,
  daysToHarvest: z
    .number()
    .positive()
    .max(1000)
    .nullable()
    .default(null)
    .describe('Days to the first harvest, as on the packet.'),
  weeksToHarvest: z.number().positive().max(150).nullable().default(null).describe('The same in weeks.'),
  countedFrom: z.enum(['sowing', 'planting']).default('sowing'),
  inRowCm: z.number().positive().max(300).nullable().default(null).describe('Between plants in the row.'),
  rowCm: z.number().positive().max(400).nullable().default(null).describe('Between rows.'),
  changes: z
    .record(z.string().max(120), changedValue)
    .default({})
    .describe("Further values by the tables' names, see `twelvemonth kinds ID`."),
  note: noteText,
});

export const writtenGarden = z.strictObject({
  $schema: z.string().optional(),
  schemaVersion: z.literal(1).default(1),
  invented: z.boolean().default(false).describe('Everything in this file is made up.'),
  planFrom: z
    .string()
    .nullable()
    .default(null)
    .describe('Time zero of the plan, an exact day. Left out: today.'),
  hoursPerWeek: writtenHours.nullable().default(null),
  household: writtenHousehold,
  site: writtenSite,
  covers: z.array(writtenCover).max(200).default([]),
  places: z.array(writtenPlace).max(1000).default([]),
  kit: writtenKit.prefault({}),
  stores: z.array(writtenStore).max(100).default([]),
  standing: z.array(writtenStanding).max(2000).default([]),
  stock: z.array(writtenStock).max(2000).default([]),
  seeds: z.array(writtenSeed).max(2000).default([]),
  ownKinds: z.array(writtenOwnKind).max(500).default([]),
  wishes: z.array(writtenWish).max(2000).default([]),
  savesSeedOf: z
    .array(slug)
    .max(500)
    .default([])
    .describe('Kinds of which seed, cloves or tubers are kept for the next planting.'),
});
export type WrittenGarden = z.output<typeof writtenGarden>;
