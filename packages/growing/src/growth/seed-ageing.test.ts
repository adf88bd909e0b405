import { expect, test } from 'vitest';
import { agedShare, worthSowing } from './seed-ageing.ts';

test('fresh seed is fresh, seed at its listed life about half, older seed less and less', () => {
  expect(agedShare(0, 4)).toBe(1);
  expect(agedShare(4, 4)).toBeCloseTo(0.51, 2);
  const ages = [0, 1, 2, 3, 4, 5, 6, 8, 12].map((years) => agedShare(years, 4));
  for (let i = 1; i < ages.length; i++) expect(ages[i]!).toBeLessThan(ages[i - 1]!);
  expect(ages.at(-1)!).toBeLessThan(0.001);
});

// By hand: K = 2.05 probits are lost in the listed life, so after half of it 1.025 are left: 84.7 % of the seed alive
// (normal table) against 98.0 % when fresh.
test('the probit line at half of the life', () => {
  expect(agedShare(1, 2)).toBeCloseTo(0.847 / 0.98, 2);
});

test('only the age in lives counts', () => {
  expect(agedShare(1, 2)).toBeCloseTo(agedShare(3, 6), 12);
});

test('a packet is thrown away some time after its listed life, and not before', () => {
  expect(worthSowing(agedShare(3, 3))).toBe(true);
  expect(worthSowing(agedShare(5, 3))).toBe(false);
});
