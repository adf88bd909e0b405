import type { Lot } from '@twelvemonth/growing';
import { describe, expect, it } from 'vitest';
import { type PlateRules, pour } from './plate.ts';

const rules: PlateRules = {
  weekCount: 5,
  fromWeek: 10,
  appetite: new Float64Array(5).fill(10),
  weight: new Float64Array(5).fill(1),
  roleIndex: new Map([['onions', 0]]),
};
const lot: Lot = {
  source: 's',
  kind: 'k',
  role: 'onions',
  fromWeek: 11,
  toWeek: 12,
  servings: 30,
  lossPerWeekShare: 0,
  form: 'fresh',
  store: null,
  storeFromWeek: null,
  keptGPerServing: 100,
  putBy: null,
  bolted: false,
};

describe('the plate', () => {
  it('is poured only into the weeks in which a lot can be eaten, and no fuller than appetite', () => {
    const plate = { covered: new Float64Array(5) };
    pour(rules, plate, lot, 1, true, null);
    expect([...plate.covered]).toEqual([0, 10, 10, 0, 0]);
  });

  it('fills each week to four fifths before it fills any to the full, and is worth less the fuller it gets', () => {
    const plate = { covered: new Float64Array(5) };
    const first = pour(rules, plate, { ...lot, servings: 16 }, 1, true, null);
    expect([...plate.covered]).toEqual([0, 8, 8, 0, 0]);
    const second = pour(rules, plate, { ...lot, servings: 4 }, 1, true, null);
    expect(second / 4).toBeLessThan(first / 16);
  });

  it('tells the worth without keeping it, and can be undone', () => {
    const plate = { covered: new Float64Array(5) };
    const undo: number[] = [];
    const told = pour(rules, plate, lot, 0.5, false, null);
    expect([...plate.covered]).toEqual([0, 0, 0, 0, 0]);
    expect(pour(rules, plate, lot, 0.5, false, undo)).toBeCloseTo(told);
    for (let i = 0; i < undo.length; i += 2) plate.covered[undo[i]!]! -= undo[i + 1]!;
    expect([...plate.covered]).toEqual([0, 0, 0, 0, 0]);
  });
});
