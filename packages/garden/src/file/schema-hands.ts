import * as z from 'zod';
import { monthNames } from './month-names.ts';
import { vagueDay } from './schema-parts.ts';

/** Who has how much time for the garden, and when nobody is there. */

const hours = z.number().min(0, 'count-negative').max(500);

export const writtenHours = z
  .union([
    hours,
    z.strictObject({
      usual: hours.optional().describe('In months that are not named; left out: no limit.'),
      ...(Object.fromEntries(monthNames.map((month) => [month, hours.optional()])) as Record<
        (typeof monthNames)[number],
        z.ZodOptional<typeof hours>
      >),
    }),
  ])
  .describe('Hours a week that people have for the garden: 6, or { "usual": 6, "april": 3 }.');
export type WrittenHours = z.output<typeof writtenHours>;

export const writtenAbsence = z.strictObject({
  from: vagueDay,
  to: vagueDay,
  neighbourPicks: z.boolean().default(false).describe('Somebody picks what is ready, for themselves.'),
  neighbourWaters: z.boolean().default(false).describe('Somebody waters tubs, trays and the tunnel.'),
});
