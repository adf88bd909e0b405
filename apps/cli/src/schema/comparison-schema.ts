import type { PlanComparison } from '@twelvemonth/workflows';
import { z } from 'zod';
import { isoDay, type SameShape } from './schema-parts.ts';

/** What `compare --json` writes; published as docs/schema/comparison.schema.json. */

const plan = z.object({ household: z.string(), site: z.string(), from: isoDay, weeksShown: z.int() });

const sowing = z.object({
  id: z.string(),
  number: z.int(),
  kind: z.string(),
  kindName: z.string(),
  state: z.enum(['done', 'firm', 'draft']),
  sow: isoDay,
  place: z.string(),
  placeName: z.string(),
  plants: z.number(),
  groundM2: z.number(),
});

const changed = z.object({
  matchedBy: z.enum(['id', 'likeness']),
  before: sowing,
  after: sowing,
  movedDays: z.int(),
  clearMovedDays: z.int(),
  plantsChange: z.number(),
  groundM2Change: z.number(),
});

const leanWeek = z.object({
  weekOf: isoDay,
  role: z.string(),
  chanceBefore: z.number(),
  chanceAfter: z.number(),
});

export const comparisonSchema = z.object({
  schemaVersion: z.literal(1),
  before: plan,
  after: plan,
  shared: z.object({ from: isoDay, to: isoDay, weeks: z.int() }).nullable(),
  added: z.array(sowing),
  further: z.array(sowing),
  dropped: z.array(sowing),
  past: z.array(sowing),
  moved: z.array(changed),
  grown: z.array(changed),
  shrunk: z.array(changed),
  elsewhere: z.array(changed),
  unchanged: z.int(),
  roles: z.array(
    z.object({
      role: z.string(),
      roleName: z.string(),
      before: z.number(),
      after: z.number(),
      change: z.number(),
      gained: z.number(),
      lost: z.number(),
    }),
  ),
  weeks: z.array(z.object({ weekOf: isoDay, change: z.record(z.string(), z.number()) })),
  lean: z.object({
    before: z.number(),
    after: z.number(),
    filled: z.array(leanWeek),
    opened: z.array(leanWeek),
  }),
  hours: z.object({ before: z.number(), after: z.number(), change: z.number() }),
});

/** The schema and the contract are the same, both ways, or this does not compile. */
export const comparisonSchemaIsTheContract: SameShape<
  z.infer<typeof comparisonSchema>,
  PlanComparison
> = true;
