/**
 * Food of one scenario through the weeks. A shelf's balance each week is what came, what lay there, less what goes on
 * lying; the difference is eaten.
 *
 *   in(w) + keep·left(w − 1) − left(w) − used(w) ≥ 0,   Σ shelves used = Σ slices eaten
 *
 * A shelf has rows only from the first week in which anything comes to it; rows are added as sowings are.
 */
import type { PlanningProblem } from '../problem.ts';
import type { Inflows } from './inflows.ts';
import { slicePrice, slices } from './price.ts';
import type { ProgramBuilder } from './program-builder.ts';

export interface FoodFlow {
  /** Row of what is eaten by role and week index, −1 where nothing is wanted. */
  readonly eatRow: readonly Int32Array[];
  /** First of the slice columns of a role and week index, the others behind it; −1 where nothing is wanted. */
  readonly sliceColumn: readonly Int32Array[];
  /** Adds what a sowing brings to the balances of its shelves; its column must be newer than the last growth. */
  feed(sowing: number, column: number): void;
}

/**
 * `roles`: indices of the kitchen roles that are looked at. `meanShare`: weight of this scenario's cost in the
 * objective; `tailRow`: row that holds its cost against η.
 */
export function foodFlow(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  inflows: Inflows,
  roles: ReadonlySet<number>,
  scenario: number,
  meanShare: number,
  tailRow: (emptyCost: number) => number,
): FoodFlow {
  const { weekCount, appetite } = problem;
  const eatRow = appetite.roles.map(() => new Int32Array(weekCount).fill(-1));
  const sliceColumn = appetite.roles.map(() => new Int32Array(weekCount).fill(-1));
  const eaten: { column: number; price: number }[] = [];
  let emptyCost = 0;
  appetite.roles.forEach((_, r) => {
    if (!roles.has(r)) return;
    for (let w = 0; w < weekCount; w++) {
      const want = appetite.garden[r]![w]!;
      if (want <= 0.01) continue;
      const row = builder.row(0, Number.POSITIVE_INFINITY);
      eatRow[r]![w] = row;
      sliceColumn[r]![w] = builder.columnCount;
      for (const slice of slices) {
        const price = slicePrice(problem, r, w, slice.price);
        const column = builder.column(-meanShare * price, 0, slice.share * want, false);
        builder.add(row, column, -1);
        eaten.push({ column, price });
        emptyCost += price * slice.share * want;
      }
    }
  });
  const tail = tailRow(emptyCost);
  for (const { column, price } of eaten) builder.add(tail, column, price);

  const rowOf = new Map<number, Int32Array>();
  const openedFrom = new Map<number, number>();
  const stockOf = (shelf: number, week: number): number =>
    inflows.stock.reduce((sum, s) => sum + (s.shelf === shelf && s.week === week ? s.servings : 0), 0);
  const hasStock = new Set(inflows.stock.map((s) => s.shelf));

  /** Balances of a shelf from a week on, each linked to the next. */
  const open = (shelf: number, fromWeek: number): Int32Array => {
    const { role, keepShare, lastWeek } = inflows.shelves[shelf]!;
    const rows = rowOf.get(shelf) ?? new Int32Array(weekCount).fill(-1);
    const known = openedFrom.get(shelf) ?? lastWeek + 1;
    for (let w = known - 1; w >= fromWeek; w--) {
      const row = builder.row(hasStock.has(shelf) ? -stockOf(shelf, w) : 0, Number.POSITIVE_INFINITY);
      rows[w] = row;
      const eat = eatRow[role]![w]!;
      if (eat >= 0) {
        const used = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
        builder.add(row, used, -1);
        builder.add(eat, used, 1);
      }
      if (w < lastWeek) {
        const left = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
        builder.add(row, left, -1);
        builder.add(rows[w + 1]!, left, keepShare);
      }
    }
    rowOf.set(shelf, rows);
    openedFrom.set(shelf, Math.min(known, fromWeek));
    return rows;
  };
  for (const { shelf, week } of inflows.stock) if (roles.has(inflows.shelves[shelf]!.role)) open(shelf, week);

  return {
    eatRow,
    sliceColumn,
    feed: (sowing, column) => {
      const at = sowing * inflows.scenarioCount + scenario;
      for (let e = inflows.starts[at]!; e < inflows.starts[at + 1]!; e++) {
        const [shelf, week] = [inflows.shelf[e]!, inflows.week[e]!];
        if (!roles.has(inflows.shelves[shelf]!.role)) continue;
        builder.add(open(shelf, week)[week]!, column, inflows.servings[e]!);
      }
    },
  };
}
