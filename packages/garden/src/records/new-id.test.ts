import { streamFor } from '@twelvemonth/basis';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { newId, slugOf } from './new-id.ts';

test('an id is a slug and six signs, and the same stream gives the same id', () => {
  expect(newId('Leek, north bed', () => 0)).toBe('leek-north-bed-222222');
  expect(newId('leek', () => 0.999999)).toBe('leek-zzzzzz');
  const { uniform } = streamFor(7, 'ids', 0);
  const ids = Array.from({ length: 2000 }, () => newId('leek', uniform));
  expect(new Set(ids).size).toBe(ids.length);
  expect(newId('leek', streamFor(7, 'ids', 0).uniform)).toBe(ids[0]);
});

test('any text gives an id that a file accepts', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      expect(newId(text, () => 0.5)).toMatch(/^[a-z0-9][a-z0-9-]{0,79}$/);
      expect(slugOf(text)).toMatch(/^$|^[a-z0-9](?:[a-z0-9-]*[a-z0-9])?$/);
    }),
  );
});

test('a random number outside [0, 1) is our bug', () => {
  expect(() => newId('leek', () => 1)).toThrow('broken invariant');
});
