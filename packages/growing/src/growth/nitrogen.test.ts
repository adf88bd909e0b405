/** Legumes leave most of their nitrogen only if cut by first flower: common practice. */
import { expect, test } from 'vitest';
import { allKinds, kindById } from '../crops/catalogue.ts';
import type { Growing } from './growing.ts';
import { nitrogenLeftGPerM2 } from './nitrogen.ts';

/** A stand that grows one reference day a day from day 0. */
const standOf = (id: string): Growing => ({
  kind: kindById(id)!,
  raised: { growthAt: (day: number) => 10 * day } as Growing['raised'],
  sumOf: (days) => 10 * days,
  lengthOfDay: () => 12,
  southern: false,
});

test('field beans leave most at their first flower, little when young and a third after the pods', () => {
  const beans = standOf('broad-bean-hardy');
  const { floweringDays } = beans.kind;
  const best = nitrogenLeftGPerM2(beans, floweringDays);
  expect(best).toBe(9);
  expect(nitrogenLeftGPerM2(beans, Math.round(floweringDays / 3))).toBeLessThan(0.15 * best);
  for (let day = 1; day < 200; day++) expect(nitrogenLeftGPerM2(beans, day)).toBeLessThanOrEqual(best);
  expect(nitrogenLeftGPerM2(beans, 105)).toBeCloseTo(3, 9);
  expect(nitrogenLeftGPerM2(beans, 190)).toBeCloseTo(3, 9);
});

test('by the handbooks green-picked beans and peas leave 2 to 5 g, field beans dug in 6 to 12', () => {
  for (const id of ['broad-bean-hardy', 'broad-bean-spring', 'pea-round', 'pea-wrinkled', 'mangetout']) {
    const left = nitrogenLeftGPerM2(standOf(id), 200);
    expect(left, id).toBeGreaterThanOrEqual(2);
    expect(left, id).toBeLessThanOrEqual(5);
  }
  const green = standOf('field-bean-tips');
  const dugIn = nitrogenLeftGPerM2(green, green.kind.floweringDays);
  expect(dugIn).toBeGreaterThanOrEqual(6);
  expect(dugIn).toBeLessThanOrEqual(12);
  expect(nitrogenLeftGPerM2(green, green.kind.floweringDays + 30)).toBe(dugIn);
});

test('every legume leaves some, more at its flower than after its harvest, and no other crop does', () => {
  for (const kind of allKinds()) {
    expect(kind.nitrogenAtFlowerGPerM2 > 0, kind.id).toBe(kind.family === 'Fabaceae');
    if (kind.family === 'Fabaceae') {
      expect(kind.floweringDays, kind.id).toBeGreaterThan(0);
      expect(kind.nitrogenAtFlowerGPerM2, kind.id).toBeGreaterThan(kind.nitrogenAfterHarvestGPerM2);
    } else expect(nitrogenLeftGPerM2(standOf(kind.id), 60), kind.id).toBe(0);
  }
});
