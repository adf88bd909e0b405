import type { SowingState } from '@twelvemonth/growing';
import { describe, expect, it } from 'vitest';
import { isSeen, partingRule, rightShareOf } from './parting-rule.ts';

const state = (change: Partial<SowingState>): SowingState => ({
  isUp: true,
  trueLeaves: 5,
  sizeShare: 0.4,
  standingShare: 1,
  boltedShare: 0,
  ...change,
});
const leaves = (of: readonly number[]) => of.map((trueLeaves) => state({ trueLeaves }));

describe('the sign that parts those that succeed from those that fail', () => {
  it('two true leaves, where exactly those with two or more succeed', () => {
    const states = leaves([0.4, 1.2, 1.9, 2.1, 2.6, 3.4, 5, 6]);
    const succeeds = [false, false, false, true, true, true, true, true];
    expect(partingRule(states, succeeds)).toEqual({
      code: 'leaves',
      value: 2,
      parts: 1,
      failsWhenSeen: 0,
      failsWhenNot: 1,
    });
  });

  it('not run to seed, though size differs as well: what is easier to judge comes first', () => {
    const states = [0, 0.05, 0.4, 0.9].map((boltedShare) =>
      state({ boltedShare, sizeShare: boltedShare > 0.2 ? 0.2 : 0.6 }),
    );
    expect(partingRule(states, [true, true, false, false])).toMatchObject({ code: 'not-bolted', value: 0.1 });
  });

  it('counts by hand where nothing parts them wholly', () => {
    // Seen (half or more standing): five, of which one fails; not seen: three, of which one succeeds.
    const states = [0.9, 0.9, 0.8, 0.6, 0.55, 0.4, 0.2, 0].map((standingShare) => state({ standingShare }));
    const succeeds = [true, true, true, true, false, false, false, true];
    const rule = partingRule(states, succeeds)!;
    expect(rule.code).toBe('standing');
    expect(rule.value).toBe(0.7);
    expect(rule.parts).toBeCloseTo(3 / 5 - 0, 9);
    expect(rule.failsWhenSeen).toBe(0);
    expect(rule.failsWhenNot).toBeCloseTo(3 / 5, 9);
    expect(rightShareOf(rule, states, succeeds)).toBeCloseTo(6 / 8, 9);
  });

  it('is none where all succeed, all fail, or all look alike', () => {
    const alike = leaves([3, 3, 3, 3]);
    expect(partingRule(alike, [true, true, true, true])).toBeNull();
    expect(partingRule(alike, [false, false, false, false])).toBeNull();
    expect(partingRule(alike, [true, false, true, false])).toBeNull();
  });

  it('what has not come up shows no other sign', () => {
    const bare = state({ isUp: false, trueLeaves: 0, sizeShare: 0 });
    for (const code of ['up', 'standing', 'not-bolted', 'leaves', 'size'] as const)
      expect(isSeen({ code, value: code === 'not-bolted' ? 0.5 : 0.1 }, bare), code).toBe(false);
  });
});
