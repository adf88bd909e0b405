import { describe, expect, it } from 'vitest';
import { leggyShare, stretchingCDays } from './legginess.ts';

/** So many days at a steady temperature and light. */
const leggyAfter = (days: number, meanC: number, lightMJPerM2Day: number): number =>
  leggyShare(days * lightMJPerM2Day, days * stretchingCDays(meanC, meanC));

describe('leggy seedlings', () => {
  it('come of too little light for the warmth', () => {
    expect(leggyAfter(30, 17.5, 0.7)).toBe(1);
    expect(leggyAfter(30, 17.5, 3)).toBeGreaterThan(leggyAfter(30, 17.5, 4));
    expect(leggyAfter(30, 17.5, 3)).toBeCloseTo((0.45 - 3 / 9.5) / 0.35, 12);
    expect(leggyAfter(30, 17.5, 6)).toBe(0);
  });

  it('do not come of cold, however dark', () => {
    expect(leggyAfter(30, 6, 0.7)).toBe(0);
    expect(leggyAfter(30, 12, 1.2)).toBeGreaterThan(0);
  });

  it('come by the ratio, not by how long it lasted', () => {
    expect(leggyAfter(60, 18, 2.5)).toBeCloseTo(leggyAfter(20, 18, 2.5), 12);
  });
});
