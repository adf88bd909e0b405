import { type Day, weekOfDay } from '@twelvemonth/basis';
import type { Garden, StockEntry } from '@twelvemonth/garden';
import { type KeepingRule, kindById, type Lot, type StoreId, servingGOf } from '@twelvemonth/growing';

/** Where the tables have no rule for a kind in a store. Judged: household practice. */
const usualKeeping: Readonly<Record<StoreId, { lifeWeeks: number; lossPerWeekShare: number }>> = {
  dry: { lifeWeeks: 20, lossPerWeekShare: 0.02 },
  'cool-damp': { lifeWeeks: 12, lossPerWeekShare: 0.02 },
  'frost-free': { lifeWeeks: 12, lossPerWeekShare: 0.02 },
  sand: { lifeWeeks: 18, lossPerWeekShare: 0.01 },
  fridge: { lifeWeeks: 2, lossPerWeekShare: 0.05 },
  freezer: { lifeWeeks: 43, lossPerWeekShare: 0 },
  jar: { lifeWeeks: 52, lossPerWeekShare: 0 },
};

function keepingOf(kindId: string, store: StoreId): { lifeWeeks: number; lossPerWeekShare: number } {
  const rules: KeepingRule[] = kindById(kindId)?.harvests.flatMap((h) => [...h.stores]) ?? [];
  return rules.find((rule) => rule.store === store) ?? usualKeeping[store];
}

export function isStore(store: string): store is StoreId {
  return store in usualKeeping;
}

function lotOf(entry: StockEntry, fromDay: Day): Lot | null {
  const kind = kindById(entry.kind);
  const harvest =
    kind?.harvests.find((h) => h.stores.some((s) => s.store === entry.store)) ?? kind?.harvests.at(-1);
  if (kind === undefined || harvest === undefined || !isStore(entry.store)) return null;
  const keeping = keepingOf(kind.id, entry.store);
  const since = entry.since === null ? fromDay : Math.round((entry.since.fromDay + entry.since.toDay) / 2);
  const prepared = entry.store === 'freezer' || entry.store === 'jar';
  return {
    source: entry.id,
    kind: kind.id,
    role: harvest.role,
    fromWeek: weekOfDay(fromDay),
    toWeek: Math.max(weekOfDay(fromDay) + 1, weekOfDay(since) + keeping.lifeWeeks),
    servings: (entry.amountG.middle * (prepared ? 1 : harvest.edibleShare)) / servingGOf(harvest.role),
    lossPerWeekShare: keeping.lossPerWeekShare,
    form: 'store',
    store: entry.store,
    bolted: false,
  };
}

export function stockLots(garden: Garden, fromDay: Day): Lot[] {
  return garden.stock.flatMap((entry) => lotOf(entry, fromDay) ?? []);
}

export function storesOf(garden: Garden): Set<StoreId> {
  return new Set(garden.stores.map((s) => s.store).filter(isStore));
}
