import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bed } from '../problem.ts';
import { chooseStrips, type OfferedStrip } from './choose-strips.ts';

const bed = (number: number): Bed => ({
  place: 'p',
  placeName: 'p',
  number,
  of: 2,
  area: 'home',
  stripCount: 4,
});
const beds = [bed(1), bed(2)];

/** The same price by the words of the rule, for one choice. */
function priceOf(offered: readonly OfferedStrip[], chosen: readonly number[]): number {
  let price = 0;
  const used = new Set<Bed>();
  const isIn = (s: number): boolean => chosen.includes(s);
  offered.forEach((strip, s) => {
    const left = offered[s - 1]?.bed === strip.bed ? s - 1 : -1;
    const right = offered[s + 1]?.bed === strip.bed ? s + 1 : -1;
    if (!isIn(s)) return;
    price += strip.price;
    if (left < 0 || !isIn(left)) {
      price += used.has(strip.bed) ? 0.4 : 0.5;
      if (left >= 0 && offered[left]!.free) price += 0.02;
    }
    if (right >= 0 && !isIn(right) && offered[right]!.free) price += 0.02;
    used.add(strip.bed);
  });
  return price;
}

function subsets(of: readonly number[], size: number): number[][] {
  if (size === 0) return [[]];
  return of.flatMap((first, i) => subsets(of.slice(i + 1), size - 1).map((rest) => [first, ...rest]));
}

describe('the cheapest strips', () => {
  it('are those that trying every choice finds', () => {
    const offer = fc.tuple(
      fc.array(fc.record({ free: fc.boolean(), tenths: fc.integer({ min: -2, max: 12 }) }), {
        minLength: 8,
        maxLength: 8,
      }),
      fc.integer({ min: 1, max: 5 }),
    );
    fc.assert(
      fc.property(offer, ([rows, wanted]) => {
        const offered = rows.map(
          ({ free, tenths }, s): OfferedStrip => ({
            bed: beds[Math.floor(s / 4)]!,
            index: s % 4,
            free,
            price: free ? tenths / 10 : 0,
          }),
        );
        const free = offered.flatMap((strip, s) => (strip.free ? [s] : []));
        const chosen = chooseStrips(offered, wanted);
        expect(chosen).toHaveLength(Math.min(wanted, free.length));
        expect(chosen.every((s) => offered[s]!.free)).toBe(true);
        const best = Math.min(...subsets(free, chosen.length).map((s) => priceOf(offered, s)));
        expect(priceOf(offered, chosen)).toBeCloseTo(best, 9);
      }),
    );
  });

  it('keeps a sowing in one piece where nothing speaks against it', () => {
    const offered = Array.from(
      { length: 8 },
      (_, s): OfferedStrip => ({
        bed: beds[Math.floor(s / 4)]!,
        index: s % 4,
        free: s !== 1,
        price: 0,
      }),
    );
    expect(chooseStrips(offered, 4)).toEqual([4, 5, 6, 7]);
    expect(chooseStrips(offered, 2)).toEqual([2, 3]);
  });
});
