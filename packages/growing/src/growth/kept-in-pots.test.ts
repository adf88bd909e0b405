import { describe, expect, it } from 'vitest';
import { kindById } from '../crops/catalogue.ts';
import { buttoningYieldShare } from './buttoning.ts';
import { keptInPots, usualPotDays } from './kept-in-pots.ts';

const pot = {
  raisingDays: 18,
  potRoomDays: 6,
  rootboundLossPerDayShare: 0.01,
  buttoningLossPerDayShare: 0.025,
};

describe('plants that wait in pots', () => {
  it('grow freely as far as the pot carries them', () => {
    expect(keptInPots(pot, 18)).toEqual({ sizeDays: 18, checkedDays: 0, restartDays: 0, yieldShare: 1 });
    expect(keptInPots(pot, 24).sizeDays).toBe(24);
    expect(keptInPots(pot, 24).yieldShare).toBe(1);
  });

  it('stop there, and lose by what warmth and light would have let them grow', () => {
    const kept = keptInPots(pot, 32);
    expect(kept.sizeDays).toBe(24);
    expect(kept.checkedDays).toBe(8);
    expect(kept.restartDays).toBeCloseTo(10 * (1 - Math.exp(-8 / 3)), 12);
    expect(kept.yieldShare).toBeCloseTo(Math.exp(-0.035 * 8), 12);
  });

  it('need no longer than a bare-rooted plant to root again', () => {
    expect(keptInPots(pot, 26).restartDays).toBeLessThan(keptInPots(pot, 32).restartDays);
    expect(keptInPots(pot, 80).restartDays).toBeLessThan(10);
    expect(keptInPots(pot, 80).restartDays - keptInPots(pot, 60).restartDays).toBeLessThan(0.001);
  });

  it('button where they make heads, and only there', () => {
    expect(buttoningYieldShare(0.025, 10)).toBeCloseTo(0.7788, 4);
    for (const id of ['calabrese-early', 'cauliflower-summer', 'chinese-cabbage'])
      expect(kindById(id)!.buttoningLossPerDayShare, id).toBeGreaterThan(0);
    for (const id of ['kale-curly', 'leek-late', 'lettuce-leaf'])
      expect(kindById(id)?.buttoningLossPerDayShare ?? 0, id).toBe(0);
  });

  it('leeks wait longest of the kinds that are asked most', () => {
    expect(usualPotDays(kindById('leek-late')!)).toBeGreaterThan(usualPotDays(kindById('lettuce-leaf')!));
  });
});
