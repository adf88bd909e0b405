import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { householdMeasures } from '../tables/household-measures.ts';
import { readCount, readWeightG } from './vague-amount.ts';
import { textOfAmount } from './write-vague.ts';

const rounded = (read: ReturnType<typeof readCount>): string =>
  typeof read === 'string'
    ? read
    : [read.low, read.middle, read.high].map((n) => Math.round(n * 10) / 10).join(' ');

describe('plants', () => {
  test.each<[number | string, string]>([
    [40, '40 40 40'],
    ['40', '40 40 40'],
    ['about 40', '32 40 48'],
    ['~40', '32 40 48'],
    ['about 40 leeks, thumb-thick', '32 40 48'],
    ['30-50', '30 40 50'],
    ['30 to 50', '30 40 50'],
    ['30–50, likely 35', '30 35 50'],
    ['a dozen', '12 12 12'],
    ['two dozen', '24 24 24'],
    ['about a hundred', '80 100 120'],
    ['a few', '3 4 6'],
    ['1,200', '1200 1200 1200'],
    [-3, 'count-negative'],
    ['-3', 'count-negative'],
    ['about -3', 'count-negative'],
    ['50-30', 'amount-not-understood'],
    ['plenty', 'amount-not-understood'],
    ['', 'amount-not-understood'],
    ['4 rows', 'amount-not-understood'],
    ['3 m of row', 'amount-not-understood'],
    ['3 kg', 'amount-not-understood'],
    ['4 by 20', 'amount-not-understood'],
  ])('%s', (written, wanted) => {
    expect(rounded(readCount(written))).toBe(wanted);
  });
});

describe('in store', () => {
  test.each<[number | string, string, string]>([
    ['3 kg', 'carrot-maincrop', '3000 3000 3000'],
    ['1.5kg', 'carrot-maincrop', '1500 1500 1500'],
    ['500 g', 'shallot', '500 500 500'],
    ['a net', 'onion-spring-set', '4000 5000 6000'],
    ['two thirds of a net of onions', 'onion-spring-set', '2666.7 3333.3 4000'],
    ['half a sack', 'potato-first-early', '10000 12500 13000'],
    ['1/2 a sack', 'potato-first-early', '10000 12500 13000'],
    ['1½ sacks', 'potato-first-early', '30000 37500 39000'],
    ['12 strings', 'onion-spring-set', '14400 18000 30000'],
    ['about 10 bulbs', 'garlic-bulb', '280 500 840'],
    [60, 'garlic-bulb', '2100 3000 4200'],
    ['three boxes', 'carrot-maincrop', '18000 30000 42000'],
    ['a heap', 'onion-spring-set', 'amount-needs-a-unit'],
    [60, 'parsley', 'amount-needs-a-unit'],
    ['-2 kg', 'carrot-maincrop', 'count-negative'],
    ['lots', 'carrot-maincrop', 'amount-not-understood'],
  ])('%s of %s', (written, kind, wanted) => {
    expect(rounded(readWeightG(written, kind))).toBe(wanted);
  });
});

test('every household measure has a range around its middle and a note', () => {
  for (const row of householdMeasures) {
    expect(row.lowG, row.measure).toBeLessThanOrEqual(row.middleG);
    expect(row.middleG, row.measure).toBeLessThanOrEqual(row.highG);
    expect(row.note).not.toBe('');
  }
});

test('a written amount reads back to itself, and any text gives an answer', () => {
  const numbers = fc.integer({ min: 0, max: 5000 });
  fc.assert(
    fc.property(numbers, numbers, numbers, (a, b, c) => {
      const [low, middle, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      const read = readCount(textOfAmount({ low, middle, high }));
      expect(
        typeof read === 'string' ? read : Object.values(read).map((n) => Math.round(n * 1e6) / 1e6),
      ).toEqual([low, middle, high]);
    }),
  );
  fc.assert(
    fc.property(fc.string(), (text) => {
      const read = readWeightG(text, 'onion-spring-set');
      if (typeof read !== 'string') expect(read.low).toBeLessThanOrEqual(read.high);
    }),
    { numRuns: 500 },
  );
});
