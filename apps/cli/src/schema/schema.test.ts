import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRepository, inventedPlanPath } from '../testing/recording-terminal.ts';
import { planSchema } from './plan-schema.ts';
import { schemaTexts } from './schema-texts.ts';

const plan = () => JSON.parse(readFileSync(inventedPlanPath, 'utf8')) as Record<string, unknown>;

test('the published schemas are current', () => {
  for (const [name, text] of Object.entries(schemaTexts()))
    expect(readFileSync(inRepository(`docs/schema/${name}`), 'utf8'), name).toBe(text);
});

test('a plan passes whole: nothing is lost in reading it back', () => {
  expect(planSchema.parse(plan())).toEqual(plan());
});

test.each([
  ['an impossible day', { from: '2026-02-30' }],
  ['another version', { schemaVersion: 2 }],
  ['no weeks', { weeks: undefined }],
  ['sowings that are none', { sowings: [{}] }],
])('refused: %s', (_what, change) => {
  expect(planSchema.safeParse({ ...plan(), ...change }).success).toBe(false);
});
