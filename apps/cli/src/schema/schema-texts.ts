import { z } from 'zod';
import { batchSummarySchema } from './batch-schema.ts';
import { comparisonSchema } from './comparison-schema.ts';
import { forecastSchema } from './forecast-schema.ts';
import { planSchema } from './plan-schema.ts';
import { replanSchema } from './replan-schema.ts';
import { whatIfSchema } from './what-if-schema.ts';

const textOf = (schema: z.ZodType, title: string): string =>
  `${JSON.stringify({ title, ...z.toJSONSchema(schema) }, null, 2)}\n`;

/** The published JSON Schemas, by file name under docs/schema/. */
export const schemaTexts = (): Readonly<Record<string, string>> => ({
  'plan.schema.json': textOf(planSchema, 'What twelvemonth plan --json writes, schemaVersion 1'),
  'what-if.schema.json': textOf(whatIfSchema, 'What twelvemonth what-if --json writes, schemaVersion 1'),
  'batch.schema.json': textOf(
    batchSummarySchema,
    'What twelvemonth batch writes as summary.json, schemaVersion 1',
  ),
  'forecast.schema.json': textOf(forecastSchema, 'What twelvemonth forecast --json writes, schemaVersion 1'),
  'replan.schema.json': textOf(replanSchema, 'What twelvemonth replan --json writes, schemaVersion 1'),
  'comparison.schema.json': textOf(
    comparisonSchema,
    'What twelvemonth compare --json writes, schemaVersion 1',
  ),
});
