import { describe, expect, it } from 'vitest';
import type { StoreId } from '../crops/crop-type.ts';
import { allKinds, allRoles, kindById } from '../crops/index.ts';
import { eatenShareOfHarvest, isPutBy, leftShares, longestKeeping, putByOf } from './keeping.ts';
import { type Appetite, eat } from './kitchen-rule.ts';
import type { Lot } from './sowing-plan.ts';

const weekCount = 30;
const roles = ['beans-peas', 'sweet-roots'] as const;
const appetite = (roomG?: ReadonlyMap<StoreId, number>): Appetite => ({
  fromWeek: 100,
  weekCount,
  roles,
  garden: roles.map(() => new Float64Array(weekCount).fill(2)),
  bought: roles.map(() => new Float64Array(weekCount)),
  kindCap: roles.map(() => Number.POSITIVE_INFINITY),
  ...(roomG === undefined ? {} : { roomG }),
});
const freezer = { store: 'freezer', lifeWeeks: 20, lossPerWeekShare: 0 } as const;
const lot = (change: Partial<Lot>): Lot => ({
  source: 's',
  kind: 'k',
  role: 'beans-peas',
  fromWeek: 100,
  toWeek: 100,
  servings: 22,
  lossPerWeekShare: 0,
  form: 'fresh',
  store: null,
  storeFromWeek: null,
  keptGPerServing: 100,
  putBy: freezer,
  bolted: false,
  ...change,
});
const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);

describe('keeping', () => {
  it('loses its share each week and ends with its life', () => {
    expect(leftShares({ lifeWeeks: 3, lossPerWeekShare: 0.1 })).toEqual([1, 0.9, 0.9 ** 2, 0.9 ** 3]);
  });

  it('takes the store in which a harvest lasts longest, and never freezer or jar for the whole of it', () => {
    for (const harvest of allKinds().flatMap((kind) => kind.harvests)) {
      const all = new Set(harvest.stores.map((rule) => rule.store));
      const best = longestKeeping(harvest, all);
      if (best === null) continue;
      expect(isPutBy(best.store)).toBe(false);
      for (const rule of harvest.stores)
        if (!isPutBy(rule.store)) expect(best.lifeWeeks).toBeGreaterThanOrEqual(rule.lifeWeeks);
    }
  });

  it('knows a glut of peas for the freezer only where there is one', () => {
    const pods = kindById('pea-round')!.harvests.find((harvest) =>
      harvest.stores.some((s) => s.store === 'freezer'),
    )!;
    expect(putByOf(pods, new Set<StoreId>(['freezer', 'dry']))?.store).toBe('freezer');
    expect(putByOf(pods, new Set<StoreId>(['dry']))).toBeNull();
  });

  it('keeps cloves back only where the household does', () => {
    const bulb = kindById('garlic-bulb')!.harvests[0]!;
    expect(eatenShareOfHarvest({ keepsSeed: true }, bulb)).toBeCloseTo(1 - bulb.keptBackShare, 9);
    expect(eatenShareOfHarvest({}, bulb)).toBe(1);
    // A clove gives a bulb of about ten, but bulbs are smaller than what they are bought as: 5 to 8 times (practice).
    expect(1 / bulb.keptBackShare).toBeGreaterThan(5);
    expect(1 / bulb.keptBackShare).toBeLessThan(9);
  });
});

describe('the kitchen with freezer and full stores', () => {
  it('freezes what would spoil, and eats it when nothing fresh is left', () => {
    const eaten = eat([lot({})], appetite(), allRoles());
    expect([...eaten.eaten[0]!.slice(0, 12)]).toEqual([2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 0]);
    expect(eaten.fromStock[0]![0]).toBe(0);
    expect(sum(eaten.fromStock[0]!)).toBe(20);
    expect(sum(eaten.wasted[0]!)).toBe(0);
  });

  it('wastes what the freezer has no room for', () => {
    const eaten = eat([lot({})], appetite(new Map([['freezer', 500]])), allRoles());
    expect(sum(eaten.eaten[0]!)).toBeCloseTo(2 + 5, 9);
    expect(sum(eaten.wasted[0]!)).toBeCloseTo(15, 9);
  });

  it('has room again when something was eaten', () => {
    const lots = [lot({ servings: 7 }), lot({ fromWeek: 110, toWeek: 110, servings: 7 })];
    const eaten = eat(lots, appetite(new Map([['freezer', 500]])), allRoles());
    expect(sum(eaten.eaten[0]!)).toBeCloseTo(14, 9);
  });

  it('lifts standing roots into a store as far as there is room', () => {
    const roots = lot({
      role: 'sweet-roots',
      form: 'standing',
      store: 'sand',
      storeFromWeek: 105,
      toWeek: 125,
      servings: 40,
      putBy: null,
    });
    const room = eat([roots], appetite(new Map([['sand', 1200]])), allRoles());
    // Ten are eaten from the ground in five weeks, two more in the week of lifting; of thirty, twelve find room.
    expect(room.stockLeft[1]![4]).toBe(0);
    expect(sum(room.eaten[1]!)).toBeCloseTo(10 + 2 + 12, 9);
    expect(sum(room.wasted[1]!)).toBeCloseTo(16, 9);
    expect(sum(eat([roots], appetite(), allRoles()).wasted[1]!)).toBeCloseTo(0, 9);
  });

  it('never loses or makes a serving, whatever the room', () => {
    for (const roomKg of [0, 1, 3, 100]) {
      const lots = [
        lot({ servings: 13.7 }),
        lot({ fromWeek: 103, toWeek: 104, servings: 9.1 }),
        lot({
          role: 'sweet-roots',
          form: 'store',
          store: 'sand',
          storeFromWeek: 106,
          fromWeek: 106,
          toWeek: 129,
          servings: 31,
          putBy: null,
        }),
      ];
      const room = new Map<StoreId, number>([
        ['freezer', roomKg * 1000],
        ['sand', roomKg * 700],
      ]);
      const { eaten, wasted, stockLeft } = eat(lots, appetite(room), allRoles());
      const total = roles.reduce(
        (all, _, r) => all + sum(eaten[r]!) + sum(wasted[r]!) + stockLeft[r]!.at(-1)!,
        0,
      );
      expect(total).toBeCloseTo(13.7 + 9.1 + 31, 6);
    }
  });
});
