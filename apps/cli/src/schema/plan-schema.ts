import type { PlanReport } from '@twelvemonth/workflows';
import { z } from 'zod';
import { feeding, guest, handover, kitLedger, notPlaced, rest } from './ground-schema.ts';
import { band, dayBand, isoDay, issue, type SameShape, stage, threeNumbers } from './schema-parts.ts';

/** What `plan --json` writes; published as docs/schema/plan.schema.json. */

const decision = z.object({
  decisionDay: isoDay,
  rule: z.object({
    code: z.enum(['up', 'standing', 'not-bolted', 'leaves', 'size']),
    value: z.number(),
  }),
  chanceFails: z.number(),
  failsWhenSeen: z.number(),
  failsWhenNot: z.number(),
  rightShare: z.number(),
  fallback: z.object({
    kind: z.string(),
    kindName: z.string(),
    startsAs: z.string(),
    routeId: z.string(),
    sow: isoDay,
    plants: z.number(),
    clear: isoDay,
    servings: z.number(),
  }),
});

const sowing = z.object({
  id: z.string(),
  number: z.int(),
  kind: z.string(),
  kindName: z.string(),
  cautions: z.array(z.string()).default([]),
  startsAs: z.string(),
  state: z.enum(['done', 'firm', 'draft']),
  begun: z.object({ plants: z.number() }).optional(),
  sow: isoDay,
  count: threeNumbers,
  groundM2: z.number(),
  routeId: z.string(),
  route: z.array(stage),
  beds: z.array(
    z.object({
      place: z.string(),
      placeName: z.string(),
      number: z.int(),
      stripsFrom: z.int(),
      stripsCount: z.int(),
      m2: z.number(),
    }),
  ),
  area: z.string(),
  plantOut: dayBand.nullable(),
  clear: isoDay,
  harvests: z.array(
    z.object({
      id: z.string(),
      role: z.string(),
      habit: z.string(),
      first: dayBand,
      last: dayBand,
      servings: band,
    }),
  ),
  spacingCm: z.object({ inRow: z.number(), betweenRow: z.number() }),
  follows: z.array(z.string()),
  shares: z.object({ bolted: band, frosted: band, lost: band }),
  risks: z.array(z.object({ code: z.string(), share: z.number() })),
  kit: z.array(z.object({ kit: z.string(), why: z.string(), from: isoDay, to: isoDay })),
  withoutKit: z.array(z.string()).optional(),
  rests: z.array(rest).optional(),
  guestOf: guest.optional(),
  reason: z.object({
    feeds: z.array(z.object({ role: z.string(), from: isoDay, to: isoDay, servings: z.number() })),
    missingWithout: z.number(),
  }),
  lastSafeDay: isoDay.nullable(),
  delays: z.array(z.object({ weeks: z.number(), servingsChange: z.number() })),
  decision: decision.optional(),
});

const roleWeek = z.object({
  appetite: z.number(),
  bought: z.number(),
  offered: z.number(),
  eaten: band,
  eatenMean: z.number().optional(),
  fromStock: z.number(),
  stockLeft: z.number(),
  chanceLean: z.number(),
});

const shortage = z.object({
  role: z.string(),
  from: isoDay,
  to: isoDay,
  servingsMissing: z.number(),
  leanWeeks: z.number(),
  binds: z.string(),
  remedy: z
    .object({
      code: z.enum([
        'sow-more',
        'more-cover',
        'more-ground',
        'more-bench',
        'more-hours',
        'substitute',
        'buy',
      ]),
      kind: z.string().nullable(),
      m2: z.number(),
      by: isoDay.nullable(),
      filled: z.number(),
    })
    .nullable(),
});

const measured = z.object({
  leanWeeks: z.number(),
  servingsMissing: z.number(),
  servingsEaten: z.number(),
  wasted: z.number(),
  groundIdleShare: z.number(),
  hours: z.number(),
  sowings: z.number(),
});

const proof = z.object({
  gapShare: z.number().nullable(),
  gapServingsPerYear: z.number().nullable(),
  effort: z.number(),
  seconds: z.number(),
  reproducible: z.boolean(),
  stoppedBecause: z.enum(['gap', 'effort', 'time', 'stopped', 'greedy-only']),
  candidates: z.number(),
  scenarios: z.number(),
  leanWeeksCheck: z.number(),
  servingsMissingCheck: z.number(),
  wastedCheck: z.number(),
  countedWeeks: z.number(),
  check: measured,
  rivals: z.object({ calendar: measured, practised: measured }),
  violations: z.array(z.string()),
});

const job = z.object({
  day: isoDay,
  code: z.enum([
    'pot-on',
    'plant-out',
    'harden-off',
    'clear',
    'net-on',
    'net-off',
    'mesh-on',
    'mesh-off',
    'kit-move',
    'feed',
    'lime',
    'fleece-night',
    'lift',
    'order',
    'cure',
  ]),
  area: z.string(),
  sowing: z.string().nullable(),
  kindName: z.string(),
  placeName: z.string(),
  count: z.number(),
  belowC: z.number().optional(),
  kit: z.string().optional(),
  amount: z.number().optional(),
  fromPlaceName: z.string().optional(),
});

const stock = z.object({
  kind: z.string(),
  kindName: z.string(),
  store: z.string(),
  kg: z.number(),
  servings: z.number(),
  role: z.string(),
  runsOut: dayBand,
});

const hours = z.object({
  weekOf: isoDay,
  hours: z.number(),
  byWork: z.object({
    sow: z.number(),
    plant: z.number(),
    weed: z.number(),
    water: z.number(),
    pick: z.number(),
    putBy: z.number(),
    clear: z.number(),
    visit: z.number(),
  }),
  cap: z.number().nullable(),
});

const bench = z.object({
  place: z.string(),
  placeName: z.string(),
  stage: z.string(),
  weeks: z.array(z.object({ weekOf: isoDay, m2: z.number(), capacityM2: z.number(), trays: z.number() })),
});

const materials = z.object({
  month: z.string(),
  compostLitres: z.number(),
  trays: z.number(),
  pots: z.number(),
});

const demand = z.object({
  demand: z.enum(['at-least', 'at-most', 'yearly', 'firm', 'forbid', 'rest', 'no-planting', 'hours']),
  id: z.string().nullable(),
  kind: z.string().nullable(),
  kindName: z.string(),
  plants: z.number().nullable(),
  place: z.string().nullable(),
  placeName: z.string(),
  from: isoDay.nullable(),
  to: isoDay.nullable(),
});

const conflict = z.object({
  set: z.array(demand),
  drop: demand,
  possiblePlants: z.number().nullable(),
});

export const planSchema = z.object({
  schemaVersion: z.literal(1),
  garden: z.object({
    household: z.string(),
    site: z.string(),
    invented: z.boolean(),
    eaters: z.number(),
  }),
  from: isoDay,
  weeksShown: z.int(),
  members: z.int(),
  seed: z.int(),
  tables: z.string(),
  weatherFrom: isoDay.optional(),
  standstill: z.array(z.object({ from: isoDay, to: isoDay })),
  frost: z.object({ lastSpring: dayBand, firstAutumn: dayBand }),
  roleNames: z.record(z.string(), z.string()),
  nothing: z.enum(['no-ground', 'no-appetite', 'all-forbidden', 'nothing-worth-it']).nullable().default(null),
  conflicts: z.array(conflict).default([]),
  cleared: z.array(z.string()).optional(),
  sowings: z.array(sowing),
  weeks: z.array(z.object({ weekOf: isoDay, roles: z.record(z.string(), roleWeek) })),
  shortages: z.array(shortage),
  stock: z.array(stock),
  jobs: z.array(job),
  hours: z.array(hours).default([]),
  benches: z.array(bench).default([]),
  materials: z.array(materials).default([]),
  handovers: z.array(handover).optional(),
  feeding: z.array(feeding).optional(),
  kitLedger: z.array(kitLedger).optional(),
  notPlaced: z.array(notPlaced).optional(),
  proof,
  issues: z.array(issue),
});

/** The schema and the contract are the same, both ways, or this does not compile. */
export const planSchemaIsTheContract: SameShape<z.infer<typeof planSchema>, PlanReport> = true;
