import { z } from 'zod';
import { comparisonSchema } from './comparison-schema.ts';
import { planSchema } from './plan-schema.ts';

/** What `replan --json` writes: the difference from the last plan first. Published as docs/schema/replan.schema.json. */
export const replanSchema = z.object({ difference: comparisonSchema, plan: planSchema });
