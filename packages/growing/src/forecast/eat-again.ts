/**
 * The kitchen rule again after one source of food has changed: the same answer as eating everything anew, found by
 * going on from what lay on the shelves before the change is felt, until the shelves are as they were.
 */
import type { RoleRow } from '../crops/crop-type.ts';
import { type Appetite, arrivalOf, type Eaten, kitchenOf, type Shelf } from './kitchen-rule.ts';
import type { Lot } from './sowing-plan.ts';

/** Shelves are remembered every so many weeks. */
const markEveryWeeks = 4;
const sameServings = 1e-9;

export interface MarkedKitchen {
  readonly appetite: Appetite;
  readonly roleRows: readonly RoleRow[];
  readonly eaten: Eaten;
  /** Lots that come in each week, in the order of their sources. */
  readonly arriving: readonly (readonly { readonly lot: Lot; readonly rank: number }[])[];
  /** Shelves at the beginning of every fourth week. */
  readonly marks: readonly (readonly (readonly Shelf[])[])[];
}

const copyOf = (shelves: readonly (readonly Shelf[])[]): Shelf[][] =>
  shelves.map((role) => role.map((shelf) => ({ ...shelf })));

/** Eats once through, and remembers the shelves. `sources`: lots by source, in the order in which they are offered. */
export function eatMarked(
  sources: readonly (readonly Lot[])[],
  appetite: Appetite,
  roleRows: readonly RoleRow[],
): MarkedKitchen {
  const arriving: { lot: Lot; rank: number }[][] = Array.from({ length: appetite.weekCount }, () => []);
  sources.forEach((lots, rank) => {
    for (const lot of lots) {
      const at = arrivalOf(lot, appetite);
      if (at >= 0) arriving[at]!.push({ lot, rank });
    }
  });
  const kitchen = kitchenOf(appetite, roleRows, null);
  const marks: Shelf[][][] = [];
  arriving.forEach((come, w) => {
    if (w % markEveryWeeks === 0) marks.push(copyOf(kitchen.shelves));
    kitchen.week(
      w,
      come.map(({ lot }) => lot),
    );
  });
  return { appetite, roleRows, eaten: kitchen.eaten, arriving, marks };
}

function isSame(now: readonly (readonly Shelf[])[], then: readonly (readonly Shelf[])[]): boolean {
  return now.every((role, r) => {
    const other = then[r]!;
    if (role.length !== other.length) return false;
    return role.every(({ lot, left }, i) => {
      const { lot: was, left: before } = other[i]!;
      const alike =
        lot === was || (lot.source === was.source && lot.toWeek === was.toWeek && lot.store === was.store);
      return alike && Math.abs(left - before) <= sameServings;
    });
  });
}

const tables = ['offered', 'eaten', 'fromStock', 'stockLeft', 'wasted'] as const;

export interface EatenAgain {
  readonly eaten: Eaten;
  /** Week indices between which anything differs; `to` exclusive. */
  readonly from: number;
  readonly to: number;
}

/** What is eaten when the lots of one source, by its rank, are these instead. */
export function eatAgain(base: MarkedKitchen, rank: number, lots: readonly Lot[]): EatenAgain {
  const { appetite, roleRows, arriving, marks } = base;
  const { weekCount } = appetite;
  const coming: Lot[][] = Array.from({ length: weekCount }, () => []);
  let [first, last] = [weekCount, -1];
  const felt = (w: number): void => {
    first = Math.min(first, w);
    last = Math.max(last, w);
  };
  for (const lot of lots) {
    const at = arrivalOf(lot, appetite);
    if (at < 0) continue;
    coming[at]!.push(lot);
    felt(at);
  }
  arriving.forEach((come, w) => {
    if (come.some((c) => c.rank === rank)) felt(w);
  });
  if (last < 0) return { eaten: base.eaten, from: 0, to: 0 };
  const mark = Math.floor(first / markEveryWeeks);
  const from = mark * markEveryWeeks;
  const kitchen = kitchenOf(appetite, roleRows, null);
  kitchen.lay(marks[mark]!);
  let to = weekCount;
  for (let w = from; w < weekCount; w++) {
    if (w > last && w % markEveryWeeks === 0 && isSame(kitchen.shelves, marks[w / markEveryWeeks]!)) {
      to = w;
      break;
    }
    const before = arriving[w]!.filter((c) => c.rank < rank).map(({ lot }) => lot);
    const after = arriving[w]!.filter((c) => c.rank > rank).map(({ lot }) => lot);
    kitchen.week(w, [...before, ...coming[w]!, ...after]);
  }
  for (const table of tables)
    kitchen.eaten[table].forEach((row, r) => {
      const was = base.eaten[table][r]!;
      row.set(was.subarray(0, from), 0);
      row.set(was.subarray(to), to);
    });
  return { eaten: kitchen.eaten, from, to };
}
