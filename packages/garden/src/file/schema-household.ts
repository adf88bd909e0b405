import * as z from 'zod';
import { boughtShareByWord, eaterShareByWord } from '../tables/appetite-defaults.ts';
import { writtenAbsence } from './schema-hands.ts';
import { line, slug, vagueCount } from './schema-parts.ts';

const servings = z.number().min(0, 'count-negative').max(100);
const twelve = z.array(servings).length(12, 'twelve-months-needed');
const perWeek = z.union([servings, twelve]);

const keysOf = <T extends object>(table: T) => Object.keys(table) as (keyof T & string)[];

export const writtenPerson = z.strictObject({
  name: line,
  eats: z
    .union([z.enum(keysOf(eaterShareByWord)), z.number().min(0, 'count-negative').max(3)])
    .default('adult')
    .describe("Share of an adult's helping: a word or a number (1 = an adult's)."),
  little: z.array(slug).default([]).describe('Kitchen roles of which this person eats little.'),
  dislikes: z.array(slug).default([]).describe('Kitchen roles that this person does not eat.'),
});

export const writtenAppetite = z.union([
  servings,
  twelve,
  z.strictObject({
    perWeek: perWeek.optional(),
    spring: servings.optional(),
    summer: servings.optional(),
    autumn: servings.optional(),
    winter: servings.optional(),
    cover: z.enum(['all', 'some', 'none']).optional().describe('What of it the garden is to cover.'),
    noMoreOfOneKind: servings
      .optional()
      .describe('At most so many servings a week of one and the same kind.'),
  }),
]);
export type WrittenAppetite = z.output<typeof writtenAppetite>;

export const writtenHousehold = z.strictObject({
  name: line.default(''),
  people: z.array(writtenPerson).min(1, 'household-without-people').max(200),
  appetite: z
    .record(slug, writtenAppetite)
    .default({})
    .describe(
      'Servings an adult eats in a week by kitchen role. Roles that are left out take a usual value.',
    ),
  boughtOnPurpose: z
    .record(slug, z.union([z.enum(keysOf(boughtShareByWord)), z.number().min(0, 'count-negative').max(1)]))
    .default({})
    .describe('Kitchen roles of which a share (0 to 1, or a word) is bought on purpose.'),
  yearly: z
    .record(slug, vagueCount)
    .default({})
    .describe('Pieces wanted in a year by kind: { "garlic-bulb": 120 }.'),
  dislikes: z.array(slug).default([]).describe('Kinds that nobody here eats.'),
  weeksAway: z.array(writtenAbsence).default([]),
});
export type WrittenHousehold = z.output<typeof writtenHousehold>;
