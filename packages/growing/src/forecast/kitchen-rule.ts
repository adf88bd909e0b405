/**
 * The kitchen rule: what a household eats, decided week by week without foresight. In each week and role: first what
 * spoils soonest, then what stands, then the stores; no more of one kind than the household's cap; what is still
 * missing may come from fresh or standing food of a role that can stand in for it. What would spoil at the end of the
 * week goes into the freezer or into jars while there is room; the rest of it, the weekly loss of what lies, and what a
 * store has no room for, is waste.
 */
import { invariant, type Week } from '@twelvemonth/basis';
import type { KitchenRole, RoleRow } from '../crops/crop-type.ts';
import type { Lot } from './sowing-plan.ts';
import { type RoomG, type StoreRoom, storeRoom } from './store-room.ts';

export interface Appetite {
  readonly fromWeek: Week;
  readonly weekCount: number;
  readonly roles: readonly KitchenRole[];
  /** Servings a week that the garden is to give, [role][week]. */
  readonly garden: readonly Float64Array[];
  /** Servings a week bought on purpose, [role][week]. */
  readonly bought: readonly Float64Array[];
  /** Most servings of one kind in a week, by role; Infinity: no cap. */
  readonly kindCap: readonly number[];
  /** Room in the stores that have a stated size, g as kept; the others have room for all. */
  readonly roomG?: RoomG;
}

/** Servings by role and week, [role][week]. */
export interface Eaten {
  readonly offered: readonly Float64Array[];
  readonly eaten: readonly Float64Array[];
  /** Part of `eaten` that came from stores. */
  readonly fromStock: readonly Float64Array[];
  /** Servings in stores at the end of the week. */
  readonly stockLeft: readonly Float64Array[];
  readonly wasted: readonly Float64Array[];
}

const formOrder = { fresh: 0, standing: 1, store: 2 } as const;
const noLimits: RoomG = new Map();

export interface Shelf {
  readonly lot: Lot;
  left: number;
  /** In which order it is eaten: fresh 0, standing 1, stores 2. Standing crops turn into stock when they are lifted. */
  order: number;
}

const inStore = formOrder.store;

const shelfOf = (lot: Lot, left: number, week: Week): Shelf => ({
  lot,
  left,
  order: lot.storeFromWeek !== null && lot.storeFromWeek <= week ? inStore : formOrder[lot.form],
});

/** What comes into a store that is full is eaten this week or lost. */
function intoStore(shelf: Shelf, week: Week, room: StoreRoom): Shelf[] {
  const { lot } = shelf;
  if (lot.store === null || lot.storeFromWeek !== week) return [shelf];
  const fits = Math.min(shelf.left, room.fitting(lot.store, lot));
  room.take(lot.store, lot, fits);
  const over = shelf.left - fits;
  if (over <= 1e-6) return [shelf];
  const spoiling: Lot = { ...lot, form: 'fresh', store: null, storeFromWeek: null, toWeek: week };
  return [
    { lot, left: fits, order: inStore },
    { lot: spoiling, left: over, order: formOrder.fresh },
  ];
}

/** The part of a lot at its end that is frozen or put into jars, as the shelf that it fills; null: none. */
function putByShelf(shelf: Shelf, week: Week, room: StoreRoom): Shelf | null {
  const { putBy } = shelf.lot;
  if (putBy === null || shelf.order === inStore) return null;
  const left = Math.min(shelf.left, room.fitting(putBy.store, shelf.lot));
  if (left <= 1e-6) return null;
  room.take(putBy.store, shelf.lot, left);
  const { store, lifeWeeks, lossPerWeekShare } = putBy;
  const form = 'store' as const;
  const fromWeek = week + 1;
  const lot: Lot = {
    ...shelf.lot,
    form,
    store,
    lossPerWeekShare,
    fromWeek,
    storeFromWeek: null,
    toWeek: week + lifeWeeks,
    putBy: null,
  };
  return { lot, left, order: inStore };
}

function tableOf(appetite: Appetite): Float64Array[] {
  return appetite.roles.map(() => new Float64Array(appetite.weekCount));
}

function takeFrom(
  shelves: readonly Shelf[],
  want: number,
  kindCap: number,
  eatenOfKind: Map<string, number> | null,
  onTake: (shelf: Shelf, amount: number) => void,
): number {
  let missing = want;
  for (const shelf of shelves) {
    if (missing <= 1e-9) break;
    if (shelf.left <= 0) continue;
    let amount = Math.min(shelf.left, missing);
    if (eatenOfKind !== null) {
      const had = eatenOfKind.get(shelf.lot.kind) ?? 0;
      amount = Math.min(amount, Math.max(0, kindCap - had));
      eatenOfKind.set(shelf.lot.kind, had + amount);
    }
    shelf.left -= amount;
    missing -= amount;
    onTake(shelf, amount);
  }
  return want - missing;
}

/** Told of every serving as it is eaten: the shelf it came from, the role it was eaten as. Indices of role and week. */
export type OnEat = (lot: Lot, role: number, week: number, servings: number) => void;

/** A household's kitchen, week after week. */
export interface Kitchen {
  readonly eaten: Eaten;
  /** What lies there between two weeks, by role. */
  readonly shelves: Shelf[][];
  /** Lays the shelves as they were between two weeks. */
  lay(shelves: readonly (readonly Shelf[])[]): void;
  /** Goes through a week, an index; the weeks before it have been gone through. */
  week(w: number, arriving: readonly Lot[]): void;
}

const byOrder = (a: Shelf, b: Shelf): number => a.order - b.order || a.lot.toWeek - b.lot.toWeek;

function putInOrder(shelves: Shelf[]): void {
  for (let i = 1; i < shelves.length; i++)
    if (byOrder(shelves[i - 1]!, shelves[i]!) > 0) {
      shelves.sort(byOrder);
      return;
    }
}

/** What is lifted this week is stock from now on; true where some of it wants room in a store. */
function liftStanding(shelves: readonly Shelf[], week: Week): boolean {
  let wantsRoom = false;
  for (const shelf of shelves) {
    if (shelf.lot.storeFromWeek !== week) continue;
    shelf.order = inStore;
    if (shelf.lot.store !== null) wantsRoom = true;
  }
  return wantsRoom;
}

export function kitchenOf(appetite: Appetite, roleRows: readonly RoleRow[], onEat: OnEat | null): Kitchen {
  const { fromWeek, roles } = appetite;
  const result = {
    offered: tableOf(appetite),
    eaten: tableOf(appetite),
    fromStock: tableOf(appetite),
    stockLeft: tableOf(appetite),
    wasted: tableOf(appetite),
  };
  const roleIndex = new Map(roles.map((role, i) => [role, i]));
  const substitutes = roles.map((role) =>
    (roleRows.find((row) => row.id === role)?.substitutes ?? []).flatMap((s) => {
      const index = roleIndex.get(s.role);
      return index === undefined ? [] : [{ ...s, index }];
    }),
  );
  const room = storeRoom(appetite.roomG ?? noLimits);
  const limited = appetite.roomG !== undefined && appetite.roomG.size > 0;
  const kitchen: Kitchen = { eaten: result, shelves: roles.map(() => []), lay, week: goThrough };

  function lay(shelves: readonly (readonly Shelf[])[]): void {
    room.clear();
    shelves.forEach((role, r) => {
      kitchen.shelves[r] = role.map((shelf) => ({ ...shelf }));
      for (const { lot, left, order } of role)
        if (limited && lot.store !== null && order === inStore) room.take(lot.store, lot, left);
    });
  }

  function eatOwn(r: number, w: number): number {
    const here = kitchen.shelves[r]!;
    putInOrder(here);
    const want = appetite.garden[r]![w]!;
    const kindCap = appetite.kindCap[r]!;
    const ofKind = kindCap === Number.POSITIVE_INFINITY ? null : new Map<string, number>();
    const had = takeFrom(here, want, kindCap, ofKind, (shelf, amount) => {
      if (shelf.order === inStore) result.fromStock[r]![w]! += amount;
      onEat?.(shelf.lot, r, w, amount);
    });
    result.eaten[r]![w] = had;
    return want - had;
  }

  function eatInstead(r: number, w: number, missing: Float64Array): void {
    const want = appetite.garden[r]![w]!;
    for (const sub of substitutes[r]!) {
      if (missing[r]! <= 1e-9) break;
      const most = Math.min(missing[r]!, want * sub.mostShare) * sub.exchange;
      const spare = kitchen.shelves[sub.index]!.filter((shelf) => shelf.order !== inStore);
      const had =
        takeFrom(spare, most, Number.POSITIVE_INFINITY, null, (shelf, amount) =>
          onEat?.(shelf.lot, r, w, amount / sub.exchange),
        ) / sub.exchange;
      result.eaten[r]![w]! += had;
      missing[r]! -= had;
    }
  }

  function endWeek(w: number): void {
    const week = fromWeek + w;
    const { shelves } = kitchen;
    room.clear();
    const ending: { readonly role: number; readonly shelf: Shelf }[] = [];
    for (let r = 0; r < roles.length; r++) {
      const kept: Shelf[] = [];
      for (const shelf of shelves[r]!) {
        const { lot } = shelf;
        if (lot.toWeek <= week) {
          ending.push({ role: r, shelf });
          continue;
        }
        const lost = shelf.left * lot.lossPerWeekShare;
        result.wasted[r]![w]! += lost;
        shelf.left -= lost;
        if (shelf.left <= 1e-6) continue;
        kept.push(shelf);
        if (shelf.order !== inStore) continue;
        result.stockLeft[r]![w]! += shelf.left;
        if (limited && lot.store !== null) room.take(lot.store, lot, shelf.left);
      }
      shelves[r] = kept;
    }
    for (const { role, shelf } of ending) {
      const saved = putByShelf(shelf, week, room);
      if (saved !== null) {
        shelves[role]!.push(saved);
        result.stockLeft[role]![w]! += saved.left;
      }
      result.wasted[role]![w]! += shelf.left - (saved?.left ?? 0);
    }
  }

  function goThrough(w: number, arriving: readonly Lot[]): void {
    const week = fromWeek + w;
    const { shelves } = kitchen;
    for (const lot of arriving) {
      const r = roleIndex.get(lot.role)!;
      shelves[r]!.push(shelfOf(lot, lot.servings, week));
      if (lot.fromWeek === week) result.offered[r]![w]! += lot.servings;
    }
    for (let r = 0; r < roles.length; r++)
      if (liftStanding(shelves[r]!, week) && limited && w > 0)
        shelves[r] = shelves[r]!.flatMap((shelf) => intoStore(shelf, week, room));
    const missing = new Float64Array(roles.length);
    for (let r = 0; r < roles.length; r++) missing[r] = eatOwn(r, w);
    for (let r = 0; r < roles.length; r++) eatInstead(r, w, missing);
    endWeek(w);
  }
  return kitchen;
}

/** Week index in which a lot comes into the kitchen; −1: never within the appetite's weeks, or nobody eats its role. */
export function arrivalOf(lot: Lot, { fromWeek, weekCount, roles }: Appetite): number {
  const at = Math.max(0, lot.fromWeek - fromWeek);
  return at < weekCount && lot.toWeek >= fromWeek && roles.includes(lot.role) ? at : -1;
}

export function eat(
  lots: readonly Lot[],
  appetite: Appetite,
  roleRows: readonly RoleRow[],
  onEat: OnEat | null = null,
): Eaten {
  const arriving: Lot[][] = Array.from({ length: appetite.weekCount }, () => []);
  for (const lot of lots) {
    const at = arrivalOf(lot, appetite);
    if (at >= 0) arriving[at]!.push(lot);
  }
  const kitchen = kitchenOf(appetite, roleRows, onEat);
  arriving.forEach((come, w) => {
    kitchen.week(w, come);
  });
  invariant(kitchen.eaten.eaten.length === appetite.roles.length, 'one row a role');
  return kitchen.eaten;
}
