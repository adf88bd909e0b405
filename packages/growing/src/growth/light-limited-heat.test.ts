import { describe, expect, it } from 'vitest';
import { effectiveDayDegrees } from './light-limited-heat.ts';

describe('light-limited heat', () => {
  it.each([
    [4, 2, 0, 4.0],
    [4, 2, 0.14, 3.12],
    [9, 13, 0.3, 7.45],
    [15.5, 17, 0.14, 13.75],
    [10, 4, 0.8, 3.33],
    [18, 20, 0.07, 16.93],
  ])('gives the published arithmetic for %d °C·d, %d MJ, f %d', (heat, light, factor, expected) => {
    expect(effectiveDayDegrees(heat, light, factor, 0)).toBeCloseTo(expected, 2);
  });

  it('stands still in the cold and below the compensation point', () => {
    expect(effectiveDayDegrees(-1, 10, 0.8, 0.6)).toBe(0);
    expect(effectiveDayDegrees(0, 10, 0.8, 0.6)).toBe(0);
    expect(effectiveDayDegrees(5, 0.6, 0.8, 0.6)).toBe(0);
  });

  it('never exceeds the heat, and rises with light', () => {
    let before = 0;
    for (let light = 0.7; light < 20; light += 0.5) {
      const now = effectiveDayDegrees(8, light, 0.8, 0.6);
      expect(now).toBeGreaterThan(before);
      expect(now).toBeLessThan(8);
      before = now;
    }
  });
});
