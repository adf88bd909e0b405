import * as z from 'zod';
import { writtenGarden } from './schema.ts';

/** The garden file's JSON Schema, for editors and other programs: what may be written, before defaults. */
export function gardenJsonSchema(): string {
  const schema = z.toJSONSchema(writtenGarden, { io: 'input', target: 'draft-2020-12' });
  const title = 'Twelvemonth garden file, version 1';
  return `${JSON.stringify({ title, description: 'JSON with comments and trailing commas.', ...schema }, null, 2)}\n`;
}
