import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import type { DailyWeather } from './climate.ts';
import { extremeOf, type SeasonExtreme, seasonAfter, seasonValue } from './season-extremes.ts';

const spanOf = (extreme: SeasonExtreme, iso: string, southern: boolean): string[] => {
  const { fromDay, toDay } = seasonAfter(extreme, dayFromIso(iso)!, southern);
  return [isoFromDay(fromDay), isoFromDay(toDay)];
};

describe('the season meant', () => {
  it.each([
    ['late-spring', '2026-08-20', false, ['2027-03-01', '2027-06-01']],
    ['late-spring', '2026-08-20', true, ['2026-09-01', '2026-12-01']],
    ['late-spring', '2027-04-10', false, ['2027-03-01', '2027-06-01']],
    ['late-spring', '2027-05-01', false, ['2028-03-01', '2028-06-01']],
    ['dry-may', '2026-08-20', false, ['2027-05-01', '2027-06-01']],
    ['dry-may', '2026-08-20', true, ['2026-11-01', '2026-12-01']],
    ['dry-may', '2027-05-20', false, ['2028-05-01', '2028-06-01']],
  ] as const)('%s after %s (south: %s)', (extreme, day, southern, span) => {
    expect(spanOf(extreme, day, southern)).toEqual(span);
  });
});

describe('the members it is found in', () => {
  const constant = (startDay: number, meanC: number, rainMm: number): DailyWeather => {
    const fill = (value: number): Float64Array => new Float64Array(400).fill(value);
    return {
      startDay,
      tmaxC: fill(meanC + 4),
      tminC: fill(meanC - 4),
      rainMm: fill(rainMm),
      radiationMJPerM2Day: fill(10),
    };
  };

  it('are measured by mean temperature, and by rain of the month', () => {
    const startDay = dayFromIso('2027-01-01')!;
    const season = seasonAfter('late-spring', startDay, false);
    expect(seasonValue(constant(startDay, 9, 2), 'late-spring', season)).toBeCloseTo(9, 9);
    const may = seasonAfter('dry-may', startDay, false);
    expect(seasonValue(constant(startDay, 9, 2), 'dry-may', may)).toBeCloseTo(62, 9);
  });

  it('are the lowest fifth, at least one, ties to the first', () => {
    expect(extremeOf([9, 7, 8, 7, 9, 9, 9, 9, 9, 10])).toEqual([1, 3]);
    expect(extremeOf([5, 4])).toEqual([1]);
  });
});
