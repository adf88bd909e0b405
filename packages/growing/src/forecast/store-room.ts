/** How much room the household's stores have left, in grams as kept; a store without a stated size has room for all. */
import type { StoreId } from '../crops/crop-type.ts';
import type { Lot } from './sowing-plan.ts';

export type RoomG = ReadonlyMap<StoreId, number>;

export interface StoreRoom {
  /** Servings of a lot that still fit into a store. */
  fitting(store: StoreId, lot: Lot): number;
  take(store: StoreId, lot: Lot, servings: number): void;
  /** Forgets what was taken: the shelves are counted anew each week. */
  clear(): void;
}

export function storeRoom(roomG: RoomG): StoreRoom {
  const takenG = new Map<StoreId, number>();
  return {
    fitting: (store, lot) => {
      const whole = roomG.get(store);
      if (whole === undefined) return Number.POSITIVE_INFINITY;
      return Math.max(0, whole - (takenG.get(store) ?? 0)) / lot.keptGPerServing;
    },
    take: (store, lot, servings) => {
      if (roomG.has(store)) takenG.set(store, (takenG.get(store) ?? 0) + servings * lot.keptGPerServing);
    },
    clear: () => takenG.clear(),
  };
}
