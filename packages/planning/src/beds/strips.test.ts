import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GroundClass } from '../problem.ts';
import { type Booking, placeInStrips } from './strips.ts';

const bed = (number: number): GroundClass['beds'][number] => ({
  place: 'bed',
  placeName: 'bed',
  number,
  of: 3,
  area: 'home',
  stripCount: 6,
});
const ground: GroundClass = {
  id: 'g',
  exposure: 'open',
  growsIn: 'open',
  stripM2: 0.6,
  stripLitres: 0,
  beds: [bed(1), bed(2), bed(3)],
  stripCount: 18,
  bannedFamilies: [],
  visitsPerWeek: 7,
  bench: null,
};
const booking = (change: Partial<Booking>): Booking => ({
  id: 'a',
  family: 'Brassicaceae',
  fromWeek: 0,
  toWeek: 10,
  stripsCount: 3,
  place: null,
  placeNumber: null,
  ...change,
});

describe('strips of real beds', () => {
  it('never gives a strip twice in a week and finds room whenever the class has it', () => {
    const any = fc
      .array(
        fc.record({
          fromWeek: fc.integer({ min: 0, max: 40 }),
          length: fc.integer({ min: 1, max: 30 }),
          stripsCount: fc.integer({ min: 1, max: 6 }),
          family: fc.constantFrom('Brassicaceae', 'Alliaceae', 'Fabaceae'),
        }),
        { maxLength: 25 },
      )
      .map((rows) => {
        const taken = new Array<number>(80).fill(0);
        return rows.flatMap((row, i) => {
          const weeks = Array.from({ length: row.length }, (_, w) => row.fromWeek + w);
          if (weeks.some((w) => taken[w]! + row.stripsCount > 18)) return [];
          for (const w of weeks) taken[w]! += row.stripsCount;
          return [
            booking({
              id: `b${i}`,
              fromWeek: row.fromWeek,
              toWeek: row.fromWeek + row.length,
              stripsCount: row.stripsCount,
              family: row.family,
            }),
          ];
        });
      });
    fc.assert(
      fc.property(any, (bookings) => {
        const { placements, unplaced } = placeInStrips(ground, bookings);
        expect(unplaced).toEqual([]);
        const seen = new Set<string>();
        for (const p of placements) {
          const b = bookings.find((x) => x.id === p.booking)!;
          for (let s = p.stripsFrom; s < p.stripsFrom + p.stripsCount; s++)
            for (let w = b.fromWeek; w < b.toWeek; w++) {
              const key = `${p.bed.number}/${s}/${w}`;
              expect(seen.has(key)).toBe(false);
              seen.add(key);
            }
        }
      }),
    );
  });

  it('leaves what stands in its own bed, side by side', () => {
    const { placements } = placeInStrips(ground, [
      booking({ id: 'new', stripsCount: 6 }),
      booking({ id: 'leeks', place: 'bed', placeNumber: 2, stripsCount: 4 }),
    ]);
    const leeks = placements.filter((p) => p.booking === 'leeks');
    expect(leeks).toHaveLength(1);
    expect(leeks[0]!.bed.number).toBe(2);
  });

  it('does not follow a family by itself where another bed is free, and says what it follows', () => {
    const { placements } = placeInStrips(ground, [
      booking({ id: 'kale', toWeek: 5, place: 'bed', placeNumber: 1, stripsCount: 6 }),
      booking({ id: 'beans', family: 'Fabaceae', toWeek: 5, place: 'bed', placeNumber: 2, stripsCount: 6 }),
      booking({ id: 'peas', family: 'Fabaceae', toWeek: 12, place: 'bed', placeNumber: 3, stripsCount: 6 }),
      booking({ id: 'cabbage', fromWeek: 5, toWeek: 9, stripsCount: 6 }),
    ]);
    const cabbage = placements.find((p) => p.booking === 'cabbage')!;
    expect(cabbage.bed.number).toBe(2);
    expect(cabbage.follows).toEqual(['beans']);
  });
});
