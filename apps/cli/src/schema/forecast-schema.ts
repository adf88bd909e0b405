import type { ForecastReport } from '@twelvemonth/workflows';
import { z } from 'zod';
import { band, dayBand, isoDay, type SameShape, stage, threeNumbers } from './schema-parts.ts';

/** What `forecast --json` writes; published as docs/schema/forecast.schema.json. */
export const forecastSchema = z.object({
  schemaVersion: z.literal(1),
  kind: z.string(),
  kindName: z.string(),
  sow: isoDay,
  place: z.string(),
  route: z.array(stage),
  members: z.int(),
  seed: z.int(),
  count: threeNumbers,
  groundM2: z.number(),
  emergence: dayBand,
  germinatingShare: band,
  plantingOut: dayBand.nullable(),
  firstHarvest: dayBand,
  lastHarvest: dayBand,
  harvests: z.record(z.string(), z.object({ first: dayBand, last: dayBand, servings: band })),
  nitrogenLeft: z.object({ atFirstFlowerGPerM2: z.number(), atItsEndGPerM2: band }).nullable(),
  boltedShare: band,
  frostedShare: band,
  lostShare: band,
  servingsPerPlant: band,
  weeks: z.array(
    z.object({ weekOf: isoDay, meanServings: z.number(), chanceAny: z.number(), cumulative: band }),
  ),
});

/** The schema and the contract are the same, both ways, or this does not compile. */
export const forecastSchemaIsTheContract: SameShape<z.infer<typeof forecastSchema>, ForecastReport> = true;
