import * as z from 'zod';

/** No `new Function` in browsers with a strict content policy. */
z.config({ jitless: true });

/** A check's message is one of our issue codes; reading turns it into an Issue. */
const slugPattern = /^[a-z0-9][a-z0-9-]*$/;

export const slug = z.string().max(80, 'text-too-long').regex(slugPattern, 'id-malformed');
export const line = z.string().max(200, 'text-too-long');
export const noteText = z.string().max(2000, 'text-too-long').default('');

export const vagueDay = z
  .string()
  .max(80, 'date-not-understood')
  .describe(
    'A day, known exactly or roughly: "2026-04-12", "mid April", "spring", "autumn 2025", "March to May".',
  );
export const vagueCount = z
  .union([z.number(), z.string().max(120, 'amount-not-understood')])
  .describe('A number of plants, known exactly or roughly: 40, "about 40", "30-50", "a dozen".');
export const vagueWeight = z
  .union([z.number(), z.string().max(120, 'amount-not-understood')])
  .describe('An amount in store: "3 kg", "two thirds of a net", "half a sack", "12 strings", 60 (pieces).');

export const count = (most: number) => z.number().int().min(0, 'count-negative').max(most);
export const metres = z.number().positive().max(500);
