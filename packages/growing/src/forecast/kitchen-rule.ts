/**
 * The kitchen rule: what a household eats, decided week by week without foresight. In each week and role: first what
 * spoils soonest, then what stands, then the stores; no more of one kind than the household's cap; what is still
 * missing may come from fresh or standing food of a role that can stand in for it. What passes its last week, and the
 * weekly loss of what lies, is waste.
 */
import { invariant, type Week } from '@twelvemonth/basis';
import type { KitchenRole, RoleRow } from '../crops/crop-type.ts';
import type { Lot } from './sowing-plan.ts';

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

interface Shelf {
  readonly lot: Lot;
  left: number;
}

function tableOf(appetite: Appetite): Float64Array[] {
  return appetite.roles.map(() => new Float64Array(appetite.weekCount));
}

function takeFrom(
  shelves: readonly Shelf[],
  want: number,
  kindCap: number,
  eatenOfKind: Map<string, number>,
  onTake: (shelf: Shelf, amount: number) => void,
): number {
  let missing = want;
  for (const shelf of shelves) {
    if (missing <= 1e-9) break;
    if (shelf.left <= 0) continue;
    let amount = Math.min(shelf.left, missing);
    if (kindCap !== Number.POSITIVE_INFINITY) {
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

export function eat(lots: readonly Lot[], appetite: Appetite, roleRows: readonly RoleRow[]): Eaten {
  const { fromWeek, weekCount, roles } = appetite;
  const result = {
    offered: tableOf(appetite),
    eaten: tableOf(appetite),
    fromStock: tableOf(appetite),
    stockLeft: tableOf(appetite),
    wasted: tableOf(appetite),
  };
  const roleIndex = new Map(roles.map((role, i) => [role, i]));
  const arriving: Shelf[][] = Array.from({ length: weekCount }, () => []);
  for (const lot of lots) {
    const at = Math.max(0, lot.fromWeek - fromWeek);
    if (at < weekCount && lot.toWeek >= fromWeek && roleIndex.has(lot.role))
      arriving[at]!.push({ lot, left: lot.servings });
  }
  const substitutes = roles.map((role) =>
    (roleRows.find((row) => row.id === role)?.substitutes ?? []).flatMap((s) => {
      const index = roleIndex.get(s.role);
      return index === undefined ? [] : [{ ...s, index }];
    }),
  );
  const shelves: Shelf[][] = roles.map(() => []);

  for (let w = 0; w < weekCount; w++) {
    for (const shelf of arriving[w]!) {
      const r = roleIndex.get(shelf.lot.role)!;
      shelves[r]!.push(shelf);
      if (shelf.lot.fromWeek - fromWeek === w) result.offered[r]![w]! += shelf.lot.servings;
    }
    const missing = new Float64Array(roles.length);
    for (let r = 0; r < roles.length; r++) {
      const here = shelves[r]!;
      here.sort((a, b) => formOrder[a.lot.form] - formOrder[b.lot.form] || a.lot.toWeek - b.lot.toWeek);
      const want = appetite.garden[r]![w]!;
      const had = takeFrom(here, want, appetite.kindCap[r]!, new Map(), (shelf, amount) => {
        if (shelf.lot.form === 'store') result.fromStock[r]![w]! += amount;
      });
      result.eaten[r]![w] = had;
      missing[r] = want - had;
    }
    for (let r = 0; r < roles.length; r++) {
      const want = appetite.garden[r]![w]!;
      for (const sub of substitutes[r]!) {
        if (missing[r]! <= 1e-9) break;
        const most = Math.min(missing[r]!, want * sub.mostShare) * sub.exchange;
        const spare = shelves[sub.index]!.filter((shelf) => shelf.lot.form !== 'store');
        const had = takeFrom(spare, most, Number.POSITIVE_INFINITY, new Map(), () => {}) / sub.exchange;
        result.eaten[r]![w]! += had;
        missing[r]! -= had;
      }
    }
    for (let r = 0; r < roles.length; r++) {
      const kept: Shelf[] = [];
      for (const shelf of shelves[r]!) {
        const { lot } = shelf;
        const lost = lot.toWeek - fromWeek <= w ? shelf.left : shelf.left * lot.lossPerWeekShare;
        result.wasted[r]![w]! += lost;
        shelf.left -= lost;
        if (shelf.left <= 1e-6 || lot.toWeek - fromWeek <= w) continue;
        kept.push(shelf);
        if (lot.form === 'store') result.stockLeft[r]![w]! += shelf.left;
      }
      shelves[r] = kept;
    }
  }
  invariant(result.eaten.length === roles.length, 'one row a role');
  return result;
}

/** A role-week is lean when less than this share of appetite is eaten. */
export const leanBelowShare = 0.8;
/** Role-weeks with next to no appetite are not counted, servings. */
export const leastCountedServings = 0.25;

/** Lean: of all that the household would eat, bought on purpose included, less than four fifths is eaten. */
export function isLean(appetite: Appetite, role: number, week: number, eatenServings: number): boolean {
  const garden = appetite.garden[role]![week]!;
  const bought = appetite.bought[role]![week]!;
  return garden >= leastCountedServings && eatenServings + bought < leanBelowShare * (garden + bought);
}

export interface EatenScore {
  readonly leanWeeks: number;
  readonly missingServings: number;
  readonly eatenServings: number;
  readonly wastedServings: number;
}

/** Counts weeks from `first` up to (not with) `last`, indices into the appetite's weeks. */
export function scoreOf(eaten: Eaten, appetite: Appetite, first: number, last: number): EatenScore {
  let [leanWeeks, missingServings, eatenServings, wastedServings] = [0, 0, 0, 0];
  for (let r = 0; r < appetite.roles.length; r++) {
    for (let w = first; w < Math.min(last, appetite.weekCount); w++) {
      const want = appetite.garden[r]![w]!;
      const had = eaten.eaten[r]![w]!;
      eatenServings += had;
      wastedServings += eaten.wasted[r]![w]!;
      missingServings += Math.max(0, want - had);
      if (isLean(appetite, r, w, had)) leanWeeks++;
    }
  }
  return { leanWeeks, missingServings, eatenServings, wastedServings };
}
