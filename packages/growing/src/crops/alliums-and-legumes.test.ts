import { expect, test } from 'vitest';
import { plantsPerM2, servingsOfG } from '../forecast/servings.ts';
import { calendarRows, kindById } from './index.ts';

/** Yields on which handbooks and field figures agree, kg/m² as harvested, low and high of all that were read. */
const publishedKgPerM2 = {
  'leek-early': ['stems', 0.6, 4], // UK organic farms 0.6–1.8, gardens 2.5–4
  leek: ['stems', 0.6, 4],
  'leek-late': ['stems', 0.6, 4],
  'spring-onion-winter': ['stems', 1.5, 2.5], // garden consensus
  'onion-seed': ['bulb', 1, 4], // UK organic farms 1–2.5, gardens 3–4
  'onion-seed-overwintering': ['bulb', 1, 4],
  'onion-spring-red-set': ['bulb', 1, 4],
  'garlic-spring': ['bulb', 0.22, 1.8], // New England fields 0.22–0.67, gardens 1.0–1.8
  'elephant-garlic': ['bulb', 1.2, 2], // garden consensus, from memory
  'broad-bean-spring': ['pods', 1.3, 3], // 0.40 kg shelled (RHS 2008), gardens 2–3 in pod
  'pea-wrinkled': ['pods', 1.05, 2], // 0.40 kg shelled (RHS 2008), gardens 1.0–1.5 kg a metre of row
  mangetout: ['pods', 0.6, 1.2], // near dwarf French bean (RHS 2008)
  'french-bean-dwarf': ['pods', 0.45, 2], // New England fields 0.45–1.1, RHS 0.75, Maine 1.19 kg a metre of row
  'french-bean-drying': ['seed', 0.1, 0.25], // 1–2.5 t/ha in the field, from memory
  'runner-bean': ['pods', 1, 2.5], // good crop 2.0 (RHS 2008)
} as const;

test.each(Object.entries(publishedKgPerM2))(
  '%s gives what is published for a square metre',
  (id, [harvestId, lowKg, highKg]) => {
    const kind = kindById(id)!;
    const harvest = kind.harvests.find((h) => h.id === harvestId)!;
    const kg = (plantsPerM2(kind) * harvest.yieldGPerPlant) / 1000;
    expect(kg).toBeGreaterThanOrEqual(lowKg);
    expect(kg).toBeLessThanOrEqual(highKg);
  },
);

test('a portion of dried beans is 30 g and of fresh ones 80 g', () => {
  const dried = kindById('french-bean-drying')!.harvests[0]!;
  const fresh = kindById('french-bean-dwarf')!.harvests[0]!;
  expect(servingsOfG(dried, 30)).toBeCloseTo(1, 2);
  expect(servingsOfG({ ...fresh, edibleShare: 1 }, 80)).toBeCloseTo(1, 9);
});

test('early, maincrop and late leeks follow one another, and hardy ones stand harder frost', () => {
  const [early, main, late] = ['leek-early', 'leek', 'leek-late'].map((id) => kindById(id)!);
  const days = [early, main, late].map((kind) => kind!.harvests[0]!.startDays);
  expect(days).toEqual(days.toSorted((a, b) => a - b));
  expect(new Set(days).size).toBe(3);
  expect(late!.frostHardenedC).toBeLessThan(early!.frostHardenedC);
});

test('onions from seed and from sets come up by rules of their own', () => {
  const [seed, set] = [kindById('onion-seed')!, kindById('onion-spring-red-set')!];
  expect([seed.startsAs, set.startsAs]).toEqual(['seed', 'set']);
  expect(seed.emergenceSumCDays).toBeGreaterThan(set.emergenceSumCDays);
  expect(seed.seedsPerG).toBeGreaterThan(0);
  expect(set.bolting!.coldTenthCDays).toBeLessThan(kindById('onion-spring-set')!.bolting!.coldTenthCDays);
});

test('each of these kinds has a published window to be checked against, or says that none was found', () => {
  const inCalendar = new Set(calendarRows().map((row) => row.kind));
  const without = Object.keys(publishedKgPerM2).filter((id) => !inCalendar.has(id));
  expect(without).toEqual(['french-bean-drying']);
});
