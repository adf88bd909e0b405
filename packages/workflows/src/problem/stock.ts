import { type Day, weekOfDay } from '@twelvemonth/basis';
import type { Garden, StockEntry } from '@twelvemonth/garden';
import {
  type CropType,
  isStore,
  type KeepingRule,
  keptGPerServing,
  type Lot,
  type StoreId,
  servingGOf,
  usualKeeping,
} from '@twelvemonth/growing';
import { kindOf } from '../kinds/garden-kinds.ts';

function keepingOf(kind: CropType, store: StoreId): { lifeWeeks: number; lossPerWeekShare: number } {
  const rules: KeepingRule[] = kind.harvests.flatMap((h) => [...h.stores]);
  return rules.find((rule) => rule.store === store) ?? usualKeeping(store);
}

function lotOf(garden: Garden, entry: StockEntry, fromDay: Day): Lot | null {
  const kind = kindOf(garden, entry.kind);
  const harvest =
    kind?.harvests.find((h) => h.stores.some((s) => s.store === entry.store)) ?? kind?.harvests.at(-1);
  if (kind === undefined || harvest === undefined || !isStore(entry.store)) return null;
  const keeping = keepingOf(kind, entry.store);
  const since = entry.since === null ? fromDay : Math.round((entry.since.fromDay + entry.since.toDay) / 2);
  const prepared = entry.store === 'freezer' || entry.store === 'jar';
  return {
    source: entry.id,
    kind: kind.id,
    role: harvest.role,
    fromWeek: weekOfDay(fromDay),
    toWeek: Math.max(weekOfDay(fromDay) + 1, weekOfDay(since) + keeping.lifeWeeks),
    servings:
      (Math.max(0, entry.amountG.middle - entry.keepBackG) * (prepared ? 1 : harvest.edibleShare)) /
      servingGOf(harvest.role),
    lossPerWeekShare: keeping.lossPerWeekShare,
    form: 'store',
    store: entry.store,
    storeFromWeek: weekOfDay(fromDay),
    keptGPerServing: prepared ? servingGOf(harvest.role) : keptGPerServing(harvest),
    putBy: null,
    bolted: false,
  };
}

export function stockLots(garden: Garden, fromDay: Day): Lot[] {
  return garden.stock.flatMap((entry) => lotOf(garden, entry, fromDay) ?? []);
}

/** Room in the stores that have a stated size, g. */
export function roomOf(garden: Garden): Map<StoreId, number> {
  const roomG = new Map<StoreId, number>();
  for (const { store, capacityKg } of garden.stores)
    if (isStore(store) && capacityKg !== null) roomG.set(store, (roomG.get(store) ?? 0) + capacityKg * 1000);
  return roomG;
}

export function storesOf(garden: Garden): Set<StoreId> {
  return new Set(garden.stores.map((s) => s.store).filter(isStore));
}
