import type { Day, Issue } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type Lot, roleById } from '@twelvemonth/growing';
import { kindOf } from '../kinds/garden-kinds.ts';
import { eatersOf } from '../problem/appetite.ts';
import { stockLots } from '../problem/stock.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';

const farOver = 10;

/** Servings of the lot's role that the household eats while the lot keeps (a month at least). */
function eatenMeanwhile(garden: Garden, lot: Lot): number {
  const wish = garden.household.appetite.find(({ role }) => role === lot.role);
  const byMonth = wish?.servingsPerWeekByMonth ?? roleById(lot.role)?.servingsPerWeekByMonth ?? [];
  const perWeek = byMonth.reduce((sum, servings) => sum + servings, 0) / 12;
  return Math.max(0.25, perWeek) * eatersOf(garden, lot.role) * Math.max(4, lot.toWeek - lot.fromWeek);
}

/** Stock that is likely a slip of the pen: ten times what is eaten of its like while it keeps. */
export function stockIssues(garden: Garden, fromDay: Day): Issue[] {
  return garden.stock.flatMap((entry, i) => {
    const lot = stockLots({ ...garden, stock: [entry] }, fromDay)[0];
    if (lot === undefined || lot.servings <= 0) return [];
    const usual = eatenMeanwhile(garden, lot);
    if (lot.servings <= farOver * usual) return [];
    const kg = entry.amountG.middle / 1000;
    const detail = {
      kind: kindOf(garden, entry.kind)?.name ?? entry.kind,
      kg: Math.round(kg),
      usualKg: Math.max(1, Math.round((kg * usual) / lot.servings)),
    };
    return [workflowIssue('stock-far-over-usual', `stock[${i}].amount`, detail)];
  });
}
