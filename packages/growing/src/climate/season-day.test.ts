import { dayFromIso } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import { inSeasonDays, seasonDayOfYear } from './season-day.ts';

const day = (iso: string) => dayFromIso(iso)!;

test('the last day of a leap year is not the first of the next', () => {
  expect(seasonDayOfYear(day('2028-12-31'), false)).toBe(365);
  expect(seasonDayOfYear(day('2027-12-31'), false)).toBe(365);
  expect(seasonDayOfYear(day('2029-01-01'), false)).toBe(1);
});

test('the south has each season half a year later, over New Year and leap days too', () => {
  expect(seasonDayOfYear(day('2027-07-01'), true)).toBeGreaterThanOrEqual(364);
  expect(seasonDayOfYear(day('2027-07-05'), true)).toBeLessThan(10);
  expect(Math.abs(seasonDayOfYear(day('2028-12-31'), true) - 181)).toBeLessThanOrEqual(2);
});

test('a season may run over New Year', () => {
  const planting = (iso: string, southern = false) => inSeasonDays(day(iso), 274, 60, southern);
  expect(['2027-10-01', '2027-12-31', '2028-02-29', '2028-03-01'].map((iso) => planting(iso))).not.toContain(
    false,
  );
  expect([planting('2027-09-29'), planting('2028-03-03')]).toEqual([false, false]);
  expect([planting('2027-06-15', true), planting('2027-12-15', true)]).toEqual([true, false]);
});
