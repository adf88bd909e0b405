/**
 * Keeping: a lot in a store loses the same share every week and ends after the store's life for its kind; curing comes
 * before it (the lot can be eaten meanwhile). Of the stores that a household has, a harvest goes into the one in which
 * it lasts longest; freezer and jars take only what would otherwise spoil (see kitchen-rule.ts).
 *
 *   left(w) = (1 − loss)^w  while w ≤ life, then 0
 *
 * | symbol | meaning | unit |
 * | loss | share lost to rot, sprouting and shrivelling | share a week |
 * | life | last week in which it is fit to eat | weeks |
 * Sources: lives from USDA Handbook 66 and household guides, losses judged (tables/kinds-*.csv). Known weakness: a store
 * is the same every winter; what rots does not spread.
 */
import type { Harvest, KeepingRule, StoreId } from '../crops/crop-type.ts';
import { servingGOf } from './servings.ts';
import type { PutBy, SowingPlan } from './sowing-plan.ts';

/** Stores that work is put into: never chosen for a harvest, only for a glut. */
const putByStores: readonly StoreId[] = ['freezer', 'jar'];

export const isPutBy = (store: StoreId): boolean => putByStores.includes(store);

/** Share left at the end of weeks 0, 1, 2 … of the store's life. */
export function leftShares(rule: Pick<KeepingRule, 'lifeWeeks' | 'lossPerWeekShare'>): number[] {
  return Array.from(
    { length: Math.floor(rule.lifeWeeks) + 1 },
    (_, week) => (1 - rule.lossPerWeekShare) ** week,
  );
}

/** The store among these in which the harvest lasts longest; null when it keeps in none. */
export function longestKeeping(harvest: Harvest, stores: ReadonlySet<StoreId>): KeepingRule | null {
  let best: KeepingRule | null = null;
  for (const rule of harvest.stores) {
    if (isPutBy(rule.store) || !stores.has(rule.store)) continue;
    if (best === null || rule.lifeWeeks > best.lifeWeeks) best = rule;
  }
  return best;
}

/** Where a glut of the harvest goes: the freezer first, it is the less work; null when it goes nowhere. */
export function putByOf(harvest: Harvest, stores: ReadonlySet<StoreId>): PutBy | null {
  for (const store of putByStores) {
    const rule = stores.has(store) ? harvest.stores.find((each) => each.store === store) : undefined;
    if (rule !== undefined) return rule;
  }
  return null;
}

/** Weight of a serving as it is kept: with what the cook takes off, g. */
export const keptGPerServing = (harvest: Pick<Harvest, 'role' | 'edibleShare'>): number =>
  servingGOf(harvest.role) / harvest.edibleShare;

/** Share of a harvest that is there to eat: all but what is kept back to plant again. */
export const eatenShareOfHarvest = (plan: Pick<SowingPlan, 'keepsSeed'>, harvest: Harvest): number =>
  plan.keepsSeed === true ? 1 - harvest.keptBackShare : 1;
