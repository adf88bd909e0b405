import { civilFromDay, dayFromCivil } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { dailyFromMonthly, monthlyMeans, slotsFrom } from './year-slots.ts';

describe('a year of slots', () => {
  it('keeps every monthly mean when it spreads months over days', () => {
    const monthly = [5.3, 5.5, 6.8, 8.6, 11.4, 14, 15.7, 15.4, 13.3, 10.4, 7.4, 5.6];
    const means = monthlyMeans(dailyFromMonthly(monthly));
    for (let m = 0; m < 12; m++) expect(means[m]!).toBeCloseTo(monthly[m]!, 4);
  });

  it('gives each date the same slot in common and leap years, 29 February that of 28', () => {
    for (const start of [dayFromCivil(2023, 11, 5), dayFromCivil(2024, 2, 29), dayFromCivil(2024, 2, 28)]) {
      const slots = slotsFrom(start, 1500);
      for (let i = 0; i < 1500; i++) {
        const { month, dayOfMonth } = civilFromDay(start + i);
        const inCommonYear = month === 2 && dayOfMonth === 29 ? 28 : dayOfMonth;
        expect(slots[i]).toBe(dayFromCivil(2023, month, inCommonYear) - dayFromCivil(2023, 1, 1));
      }
    }
  });
});
