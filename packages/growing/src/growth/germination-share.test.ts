import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allKinds, kindById } from '../crops/index.ts';
import { germinatingShare } from './germination-share.ts';
import { emergenceOfDay, seedlingsOfDay } from './seedbed-day.ts';

const corners = {
  germinationColdNoneC: 0,
  germinationColdFullC: 10,
  germinationWarmFullC: 20,
  germinationWarmNoneC: 30,
};

test('two straight slopes with a level between, nothing outside', () => {
  for (const [soilC, share] of [
    [-5, 0],
    [0, 0],
    [2.5, 0.25],
    [10, 1],
    [20, 1],
    [26, 0.4],
    [30, 0],
    [45, 0],
  ] as const)
    expect(germinatingShare(corners, soilC)).toBeCloseTo(share, 12);
});

const seed = {
  ...corners,
  emergenceBaseC: 5,
  emergenceSumCDays: 100,
  emergenceOptimumC: 25,
  emergencePlateauC: 3,
  emergenceCeilingC: 38,
  emergenceLowestC: 0,
};

test('a day whose air does not swing is its mean; a swing counts for nothing where the line is straight', () => {
  expect(emergenceOfDay(seed, 15, 15, 15)).toBeCloseTo(0.1, 12);
  expect(emergenceOfDay(seed, 15, 9, 21)).toBeCloseTo(0.1, 12);
  expect(seedlingsOfDay(seed, 15, 15, 15)).toBeCloseTo(0.1, 12);
  expect(seedlingsOfDay(seed, 26, 26, 26)).toBeCloseTo(0.2 * 0.4, 12);
});

test('seed at its base gets on in the warm hours', () => {
  expect(emergenceOfDay(seed, 5, 5, 5)).toBe(0);
  // By hand: half of the range is 10 °C, times exp(−3/11.73) = 0.774 at 3 cm; the two warm points lie 7.15 and 2.96 °C
  // above the base, and each holds a quarter of the day.
  expect(emergenceOfDay(seed, 5, -5, 15)).toBeCloseTo((7.15 + 2.96) / 4 / 100, 4);
});

test('hot afternoons stop seed whose mean day would not', () => {
  const share = (tminC: number, tmaxC: number): number =>
    seedlingsOfDay(seed, 19, tminC, tmaxC) / emergenceOfDay(seed, 19, tminC, tmaxC);
  expect(share(19, 19)).toBe(1);
  expect(share(9, 29)).toBeLessThan(0.9);
});

test('every kind: a share between nothing and all at any temperature', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...allKinds()),
      fc.double({ min: -30, max: 60, noNaN: true }),
      (kind, soilC) => {
        const share = germinatingShare(kind, soilC);
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      },
    ),
  );
});

// Harrington & Minges 1954, as printed in Knott's handbook: lettuce 98 % at 5 °C, 12 % at 30 °C; spinach 91 % at
// 10 °C, 28 % at 25 °C. Cells that the fit has seen.
test('lettuce hardly comes up at 30 °C, spinach falls from 10 °C on', () => {
  const at = (id: string, soilC: number): number => germinatingShare(kindById(id)!, soilC);
  expect(at('lettuce-leaf', 5)).toBeGreaterThan(0.9);
  expect(at('lettuce-leaf', 30)).toBeLessThan(0.25);
  expect(at('spinach-spring', 25)).toBeLessThan(0.5 * at('spinach-spring', 10));
});
