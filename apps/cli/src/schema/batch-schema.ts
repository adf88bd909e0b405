import { z } from 'zod';
import type { BatchStamp, BatchSummary } from '../batch/batch-records.ts';
import type { SameShape } from './schema-parts.ts';

/** What `batch` writes: summary.json, published as docs/schema/batch.schema.json, and a stamp beside each plan. */

const options = z.object({
  weeks: z.int(),
  memberCount: z.int(),
  effort: z.number(),
  timeLimitSeconds: z.number().nullable(),
  seed: z.int(),
  fromDay: z.int().nullable(),
});

const row = z.object({
  garden: z.string(),
  state: z.enum(['planned', 'skipped', 'failed', 'stopped']),
  sentence: z.string().nullable(),
  folder: z.string().nullable(),
  household: z.string().nullable(),
  warnings: z.int(),
  leanWeeks: z.number().nullable(),
  servingsMissing: z.number().nullable(),
  gapShare: z.number().nullable(),
  seconds: z.number(),
});

export const batchStampSchema = z.object({
  schemaVersion: z.literal(1),
  options,
  tables: z.string(),
  inputs: z.array(z.string()),
  row,
});

export const batchSummarySchema = z.object({
  schemaVersion: z.literal(1),
  options,
  workers: z.int(),
  seconds: z.number(),
  planned: z.int(),
  skipped: z.int(),
  failed: z.int(),
  stopped: z.int(),
  gardens: z.array(row),
});

/** The schemas and the contracts are the same, both ways, or this does not compile. */
export const batchSchemasAreTheContract: SameShape<z.infer<typeof batchStampSchema>, BatchStamp> &
  SameShape<z.infer<typeof batchSummarySchema>, BatchSummary> = true;
