import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import type { GroundClass } from '../problem.ts';
import { plantedYear } from './planted-year.ts';
import { restPricePerM2 } from './strip-prices.ts';
import { type Booking, placeInStrips } from './strips.ts';

const ground = (change: Partial<GroundClass> = {}): GroundClass => ({
  id: 'g',
  exposure: 'open',
  growsIn: 'open',
  stripM2: 0.5,
  stripLitres: 0,
  beds: [1, 2].map((number) => ({
    place: 'bed',
    placeName: 'bed',
    number,
    of: 2,
    area: 'home',
    stripCount: 4,
  })),
  stripCount: 8,
  bannedFamilies: [],
  visitsPerWeek: 7,
  bench: null,
  ...change,
});
const booking = (id: string, change: Partial<Booking>): Booking => ({
  id,
  family: 'Brassicaceae',
  fromWeek: 0,
  toWeek: 10,
  stripsCount: 4,
  place: null,
  placeNumber: null,
  year: 2026,
  ...change,
});
const kale = booking('kale', { place: 'bed', placeNumber: 1 });
const beans = booking('beans', { family: 'Fabaceae', place: 'bed', placeNumber: 2, toWeek: 14 });

describe('rests of families', () => {
  it('falls in proportion as the rest goes on, and two crops of one year count once', () => {
    const price = (later: number): number => restPricePerM2('Brassicaceae', 2026, later, false);
    expect([2026, 2027, 2028, 2029, 2030].map(price)).toEqual([
      0,
      0.6,
      expect.closeTo(0.4, 9),
      expect.closeTo(0.2, 9),
      0,
    ]);
    expect(restPricePerM2('Brassicaceae', 2026, 2027, true)).toBe(5);
    expect(restPricePerM2('Caprifoliaceae', 2026, 2027, false)).toBe(0);
  });

  it('counts the year of planting, which turns at midwinter on either half of the globe', () => {
    const [may, august] = [dayFromIso('2027-05-20')!, dayFromIso('2027-08-20')!];
    expect(plantedYear(may, 52)).toBe(plantedYear(august, 52));
    expect(plantedYear(may, -38)).toBe(plantedYear(august, -38) - 1);
  });

  it('plants brassicas of the next year where beans stood, and says what is broken where it cannot', () => {
    const cabbage = booking('cabbage', { fromWeek: 20, toWeek: 40, year: 2027 });
    const free = placeInStrips(ground(), [kale, beans, cabbage]);
    expect(free.placements.filter((p) => p.booking === 'cabbage').map((p) => p.bed.number)).toEqual([2]);
    expect(free.rests).toEqual([]);
    const tight = placeInStrips(ground(), [kale, beans, { ...cabbage, stripsCount: 6 }]);
    expect(tight.rests).toEqual([
      {
        booking: 'cabbage',
        family: 'Brassicaceae',
        afterYears: 1,
        restYears: 3,
        stripsCount: 2,
        onRecord: false,
      },
    ]);
  });

  it('looks ahead: an early sowing leaves the strips that a later one needs', () => {
    const first = booking('spinach', { family: 'Amaranthaceae', fromWeek: 15, toWeek: 20, year: 2027 });
    const second = booking('cabbage', { fromWeek: 16, toWeek: 40, year: 2027 });
    const { placements, rests } = placeInStrips(ground(), [kale, beans, first, second]);
    expect(rests).toEqual([]);
    expect(placements.find((p) => p.booking === 'spinach')!.bed.number).toBe(1);
  });

  it('rests from what the file says grew there, and not in tubs', () => {
    const past = [{ family: 'Brassicaceae', place: 'bed', placeNumber: 1, year: 2025 }];
    const cabbage = booking('cabbage', {});
    expect(placeInStrips(ground({ past }), [cabbage]).placements[0]!.bed.number).toBe(2);
    const full = booking('cabbage', { stripsCount: 8 });
    expect(placeInStrips(ground({ past }), [full]).rests[0]).toMatchObject({ afterYears: 1, stripsCount: 4 });
    expect(placeInStrips(ground({ past, growsIn: 'tub' }), [full]).rests).toEqual([]);
  });

  it('says how many strips were not to be had', () => {
    const { lacking, placements } = placeInStrips(ground(), [kale, booking('b', { stripsCount: 7 })]);
    expect(lacking.get('b')).toBe(3);
    expect(placements.reduce((sum, p) => sum + p.stripsCount, 0)).toBe(8);
  });
});
