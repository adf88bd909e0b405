import { z } from 'zod';

export const isoDay = z.iso.date();
export const band = z.object({ p10: z.number(), p50: z.number(), p90: z.number() });
export const threeNumbers = z.object({
  sow: z.number(),
  plant: z.number(),
  keep: z.number(),
  fromTin: z.number(),
  tinLeftShare: z.number(),
});
export const dayBand = z.object({
  p10: isoDay.nullable(),
  p50: isoDay.nullable(),
  p90: isoDay.nullable(),
  reason: z.string().nullable(),
});
export const stage = z.object({
  stage: z.string(),
  place: z.string(),
  placeName: z.string(),
  from: isoDay,
  to: isoDay,
});
export const issue = z.object({
  code: z.string(),
  severity: z.enum(['error', 'warning', 'note']),
  where: z.string(),
  detail: z.record(z.string(), z.union([z.string(), z.number()])),
});

type Frozen<T> = T extends readonly (infer E)[]
  ? readonly Frozen<E>[]
  : T extends object
    ? { readonly [K in keyof T]: Frozen<T[K]> }
    : T;
/** True when both types hold the same values, whatever may be written to. */
export type SameShape<A, B> = [Frozen<A>] extends [Frozen<B>]
  ? [Frozen<B>] extends [Frozen<A>]
    ? true
    : never
  : never;
