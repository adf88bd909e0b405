import { isoOfWeek } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type Eaten, type Lot, NEVER, servingGOf } from '@twelvemonth/growing';
import { type PlanningProblem, roleWeekView } from '@twelvemonth/planning';
import { dayBandOf } from '../forecast/day-band.ts';
import { kindOf } from '../kinds/garden-kinds.ts';
import type { ReportStock, ReportWeek } from '../report/plan-report.ts';

export function reportWeeks(problem: PlanningProblem, eaten: readonly Eaten[]): ReportWeek[] {
  const { appetite } = problem;
  return Array.from({ length: problem.shownWeeks }, (_, w) => ({
    weekOf: isoOfWeek(problem.fromWeek + w),
    roles: Object.fromEntries(appetite.roles.map((role, r) => [role, roleWeekView(appetite, eaten, r, w)])),
  }));
}

/** When a stock lot of a role is used up: taken together with the role's other stores. */
function runsOutDays(problem: PlanningProblem, lot: Lot, eaten: readonly Eaten[]): number[] {
  const r = problem.appetite.roles.indexOf(lot.role);
  const end = lot.toWeek - problem.fromWeek;
  return eaten.map((e) => {
    if (r < 0) return NEVER;
    for (let w = 0; w < Math.min(end, problem.weekCount); w++)
      if (e.stockLeft[r]![w]! < 0.5) return (problem.fromWeek + w) * 7 - 3;
    return lot.toWeek * 7 - 3;
  });
}

export function reportStock(
  garden: Garden,
  problem: PlanningProblem,
  eaten: readonly Eaten[],
): ReportStock[] {
  return problem.stock.map((lot) => {
    const kind = kindOf(garden, lot.kind);
    const prepared = lot.store === 'freezer' || lot.store === 'jar';
    const edible = prepared ? 1 : (kind?.harvests.find((h) => h.role === lot.role)?.edibleShare ?? 1);
    return {
      kind: lot.kind,
      kindName: kind?.name ?? lot.kind,
      store: lot.store ?? 'dry',
      kg: (lot.servings * servingGOf(lot.role)) / edible / 1000,
      servings: lot.servings,
      role: lot.role,
      runsOut: dayBandOf(
        runsOutDays(problem, lot, eaten),
        eaten.map(() => null),
      ),
    };
  });
}
