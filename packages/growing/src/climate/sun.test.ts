import { describe, expect, it } from 'vitest';
import {
  dayLengthHours,
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  noonSunAltitudeDeg,
} from './sun.ts';

describe('sun', () => {
  it('is clamped in polar day and night', () => {
    expect(dayLengthHours(69.65, 172)).toBe(24);
    expect(dayLengthHours(75, 355)).toBe(0);
    expect(daylightHours(75, 355)).toBe(0);
    expect(extraterrestrialRadiationMJPerM2Day(75, 355)).toBe(0);
    expect(noonSunAltitudeDeg(75, 355)).toBe(0);
  });

  it('turns the seasons over in the south', () => {
    expect(dayLengthHours(-45, 355)).toBeGreaterThan(15);
    expect(dayLengthHours(-45, 172)).toBeLessThan(9);
    expect(noonSunAltitudeDeg(-45, 355)).toBeGreaterThan(65);
  });

  it('counts twilight as day where asked to', () => {
    expect(dayLengthHours(52, 172, 6) - dayLengthHours(52, 172)).toBeCloseTo(18.366 - 16.735, 2);
  });
});
