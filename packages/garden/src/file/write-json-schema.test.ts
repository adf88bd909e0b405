import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { gardenJsonSchema } from './write-json-schema.ts';

const published = new URL('../../../../docs/schema/garden.schema.json', import.meta.url);

test('the published schema is current (npx tsx scripts/write-garden-schema.ts)', () => {
  expect(readFileSync(published, 'utf8')).toBe(gardenJsonSchema());
});

test('only household and site must be written; unknown keys are marked by editors', () => {
  const schema = JSON.parse(gardenJsonSchema()) as Record<string, unknown>;
  expect(schema.required).toEqual(['household', 'site']);
  expect(schema.additionalProperties).toBe(false);
});
