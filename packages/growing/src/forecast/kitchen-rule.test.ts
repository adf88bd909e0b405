import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allRoles } from '../crops/index.ts';
import { scoreOf } from './eaten-score.ts';
import { type Appetite, eat } from './kitchen-rule.ts';
import type { Lot } from './sowing-plan.ts';

const weekCount = 20;
const roles = ['cooked-greens', 'onions'] as const;
const appetite: Appetite = {
  fromWeek: 100,
  weekCount,
  roles,
  garden: roles.map(() => new Float64Array(weekCount).fill(4)),
  bought: roles.map(() => new Float64Array(weekCount)),
  kindCap: roles.map(() => Number.POSITIVE_INFINITY),
};
const lot = (change: Partial<Lot>): Lot => ({
  source: 's',
  kind: 'k',
  role: 'onions',
  fromWeek: 100,
  toWeek: 110,
  servings: 10,
  lossPerWeekShare: 0,
  form: 'store',
  store: 'dry',
  storeFromWeek: null,
  keptGPerServing: 100,
  putBy: null,
  bolted: false,
  ...change,
});
const sum = (table: readonly Float64Array[]): number =>
  table.reduce((s, row) => s + row.reduce((a, b) => a + b, 0), 0);

const anyLot = fc
  .record({
    role: fc.constantFrom(...roles),
    fromWeek: fc.integer({ min: 95, max: 118 }),
    span: fc.integer({ min: 0, max: 12 }),
    servings: fc.double({ min: 0, max: 30, noNaN: true }),
    lossPerWeekShare: fc.double({ min: 0, max: 0.3, noNaN: true }),
    form: fc.constantFrom('fresh', 'standing', 'store' as const),
  })
  .map(({ span, ...rest }) => lot({ ...rest, toWeek: rest.fromWeek + span }));

describe('the kitchen rule', () => {
  it('eats what spoils first, then what stands, then the store', () => {
    const lots = [
      lot({ form: 'store', servings: 8 }),
      lot({ form: 'standing', store: null, servings: 4, toWeek: 112 }),
      lot({ form: 'fresh', store: null, servings: 4, toWeek: 100 }),
    ];
    const eaten = eat(lots, appetite, []);
    expect(eaten.fromStock[1]!.slice(0, 5)).toEqual(Float64Array.of(0, 0, 4, 4, 0));
    expect(eaten.wasted[1]!.reduce((a, b) => a + b, 0)).toBeCloseTo(0);
  });

  it('never eats more than appetite or than there is, and loses nothing unaccounted', () => {
    fc.assert(
      fc.property(fc.array(anyLot, { maxLength: 12 }), (lots) => {
        const eaten = eat(lots, appetite, []);
        const usable = lots
          .filter((l) => l.toWeek >= 100 && l.fromWeek < 120)
          .reduce((s, l) => s + l.servings, 0);
        const left = usable - sum(eaten.eaten) - sum(eaten.wasted);
        expect(left).toBeGreaterThan(-1e-6);
        for (const row of eaten.eaten) for (const v of row) expect(v).toBeLessThanOrEqual(4 + 1e-9);
      }),
    );
  });

  it('has no foresight: what is eaten up to a week does not depend on what comes later', () => {
    fc.assert(
      fc.property(fc.array(anyLot, { maxLength: 8 }), (lots) => {
        const all = eat(lots, appetite, allRoles());
        const early = eat(
          lots.filter((l) => l.fromWeek <= 107),
          appetite,
          allRoles(),
        );
        for (let r = 0; r < roles.length; r++)
          for (let w = 0; w <= 7; w++) expect(early.eaten[r]![w]!).toBeCloseTo(all.eaten[r]![w]!, 9);
      }),
    );
  });

  it('lets one role stand in for another only up to its share', () => {
    const greensOnly = [
      lot({ role: 'cooked-greens', form: 'fresh', store: null, servings: 40, toWeek: 100 }),
    ];
    const eaten = eat(greensOnly, appetite, allRoles());
    expect(eaten.eaten[1]![0]!).toBeLessThan(4);
  });

  it('counts a week as lean below four fifths of appetite', () => {
    const eaten = eat([lot({ servings: 3.3, toWeek: 100 })], appetite, []);
    expect(scoreOf(eaten, appetite, 0, 1).leanWeeks).toBe(1);
    const enough = eat(
      [3.3, 3.3].map((servings, i) => lot({ servings, role: roles[i]!, toWeek: 100 })),
      appetite,
      [],
    );
    expect(scoreOf(enough, appetite, 0, 1).leanWeeks).toBe(0);
  });
});
