/**
 * The plate of one scenario while a plan is being built: how much of each role-week is covered, and what a lot would
 * add. A lot is poured over the weeks in which it can be eaten: first up to four fifths of each week's appetite, then
 * to the full. Used by the greedy and by the fast previews; the program and the kitchen rule have the last word.
 */
import type { Lot } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import { roleWeight, slices, wastePrice, weekWeight } from '../program/price.ts';

export interface Plate {
  /** Covered servings, [role · weekCount + week]. */
  readonly covered: Float64Array;
}

export interface PlateRules {
  readonly weekCount: number;
  readonly fromWeek: number;
  readonly appetite: Float64Array;
  readonly weight: Float64Array;
  readonly roleIndex: ReadonlyMap<string, number>;
}

export function plateRules(problem: PlanningProblem): PlateRules {
  const { roles, garden } = problem.appetite;
  const { weekCount } = problem;
  const appetite = new Float64Array(roles.length * weekCount);
  const weight = new Float64Array(roles.length * weekCount);
  roles.forEach((_, r) => {
    for (let w = 0; w < weekCount; w++) {
      appetite[r * weekCount + w] = garden[r]![w]!;
      weight[r * weekCount + w] = roleWeight(problem, r) * weekWeight(problem, w);
    }
  });
  return {
    weekCount,
    fromWeek: problem.fromWeek,
    appetite,
    weight,
    roleIndex: new Map(roles.map((role, i) => [role, i])),
  };
}

/** Worth of raising one cell from `from` to `to` servings out of `want`. */
function worthOf(want: number, from: number, to: number): number {
  let worth = 0;
  let low = 0;
  for (const slice of slices) {
    const high = low + slice.share * want;
    worth += slice.price * Math.max(0, Math.min(to, high) - Math.max(from, low));
    low = high;
  }
  return worth;
}

/** Pours `scale` times a lot; returns what it is worth. With `commit` the plate keeps it. */
export function pour(
  rules: PlateRules,
  plate: Plate,
  lot: Lot,
  scale: number,
  commit: boolean,
  undo: number[] | null,
): number {
  const r = rules.roleIndex.get(lot.role);
  if (r === undefined) return 0;
  const base = r * rules.weekCount;
  const from = Math.max(0, lot.fromWeek - rules.fromWeek);
  const to = Math.min(rules.weekCount - 1, lot.toWeek - rules.fromWeek);
  let left = lot.servings * scale;
  let worth = 0;
  const keep = 1 - lot.lossPerWeekShare;
  for (const level of [0.8, 1]) {
    let lying = left;
    for (let w = from; w <= to && lying > 1e-9; w++) {
      if (w > from) lying *= keep;
      const cell = base + w;
      const want = rules.appetite[cell]!;
      const covered = plate.covered[cell]!;
      const amount = Math.min(lying, Math.max(0, level * want - covered));
      if (amount <= 0) continue;
      worth += rules.weight[cell]! * worthOf(want, covered, covered + amount) + wastePrice * amount;
      if (commit || undo !== null) {
        plate.covered[cell] = covered + amount;
        undo?.push(cell, amount);
      }
      lying -= amount;
    }
    left = lying;
    if (left <= 1e-9) break;
  }
  return worth;
}
