import type { WhatIfReport } from '@twelvemonth/workflows';
import { z } from 'zod';
import { isoDay, type SameShape } from './schema-parts.ts';

/** What `what-if --json` writes; published as docs/schema/what-if.schema.json. */

const score = z.object({
  leanWeeks: z.number(),
  servingsMissing: z.number(),
  servingsEaten: z.number(),
  wasted: z.number(),
});

const change = z.discriminatedUnion('change', [
  z.object({
    change: z.literal('lost'),
    sowing: z.string(),
    number: z.int(),
    kindName: z.string(),
    day: isoDay,
  }),
  z.object({
    change: z.literal('cover'),
    cover: z.string(),
    coverName: z.string(),
    day: isoDay,
    grow: z.array(z.string()),
    raised: z.array(z.string()),
  }),
  z.object({
    change: z.literal('weather'),
    weather: z.enum(['late-spring', 'dry-may']),
    from: isoDay,
    to: isoDay,
    members: z.int(),
    ofMembers: z.int(),
    value: z.number(),
    usual: z.number(),
  }),
]);

export const whatIfSchema = z.object({
  schemaVersion: z.literal(1),
  garden: z.object({ household: z.string(), site: z.string() }),
  from: isoDay,
  weeksShown: z.int(),
  seed: z.int(),
  members: z.int(),
  changes: z.array(change),
  countedFrom: isoDay,
  before: score,
  after: score,
  withRemedies: score,
  roles: z.array(
    z.object({
      role: z.string(),
      roleName: z.string(),
      servingsLost: z.number(),
      leanWeeksMore: z.number(),
      from: isoDay.nullable(),
      to: isoDay.nullable(),
      weeks: z.array(z.object({ weekOf: isoDay, servingsLost: z.number(), chanceLeanMore: z.number() })),
    }),
  ),
  knownDay: isoDay,
  remedies: z.array(
    z.object({
      kind: z.string(),
      kindName: z.string(),
      startsAs: z.string(),
      sow: isoDay,
      by: isoDay,
      plants: z.number(),
      m2: z.number(),
      placeNames: z.array(z.string()),
      roles: z.array(z.string()),
      filled: z.number(),
    }),
  ),
  leftOut: z.array(z.string()),
});

/** The schema and the contract are the same, both ways, or this does not compile. */
export const whatIfSchemaIsTheContract: SameShape<z.infer<typeof whatIfSchema>, WhatIfReport> = true;
