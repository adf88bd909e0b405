import { z } from 'zod';
import { isoDay } from './schema-parts.ts';

/** What the plan says about the ground itself: rests, handovers, feeding, kit. */

export const rest = z.object({
  family: z.string(),
  disease: z.string().nullable(),
  onRecord: z.boolean(),
  afterYears: z.int(),
  restYears: z.number(),
  m2: z.number(),
});

export const handover = z.object({
  from: z.string(),
  fromKindName: z.string(),
  toKind: z.string(),
  toKindName: z.string(),
  placeName: z.string(),
  passes: z.array(z.object({ week: isoDay, strips: z.int(), m2: z.number(), to: z.string() })),
});

export const feeding = z.object({
  place: z.string(),
  placeName: z.string(),
  number: z.int(),
  day: isoDay,
  before: z.string(),
  kindName: z.string(),
  compostL: z.number(),
  barrows: z.number(),
  savedL: z.number(),
  lime: z.boolean(),
  residueOf: z.array(z.string()),
});

export const kitLedger = z.object({
  kit: z.string(),
  owned: z.number(),
  most: z.number(),
  lent: z.array(
    z.object({ sowing: z.string(), placeName: z.string(), amount: z.number(), from: isoDay, to: isoDay }),
  ),
  moves: z.array(
    z.object({
      day: isoDay,
      amount: z.number(),
      from: z.string(),
      fromPlaceName: z.string(),
      to: z.string(),
      toPlaceName: z.string(),
    }),
  ),
});

export const notPlaced = z.object({
  kind: z.string(),
  kindName: z.string(),
  sow: isoDay,
  wantedM2: z.number(),
  placedM2: z.number(),
});

export const guest = z.object({
  from: isoDay,
  until: isoDay,
  hosts: z.array(z.object({ sowing: z.string(), strips: z.int() })),
});
