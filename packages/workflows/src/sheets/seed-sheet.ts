import type { Day } from '@twelvemonth/basis';
import type { SeedListLine } from '../report/forecast-report.ts';
import type { PlanReport, ReportMaterials } from '../report/plan-report.ts';
import { dayOf } from './sheet-days.ts';
import { headOf, type SheetHead } from './sheet-head.ts';

export interface SeedLine extends Omit<SeedListLine, 'orderBy' | 'firstUse'> {
  readonly orderBy: Day;
  readonly firstUse: Day;
}

export interface SeedSheet {
  readonly head: SheetHead;
  /** To be bought, soonest first, then what the tin already holds. */
  readonly lines: readonly SeedLine[];
  /** Months that take compost, soonest first. */
  readonly materials: readonly ReportMaterials[];
}

export function seedSheetOf(report: PlanReport, seeds: readonly SeedListLine[], printedDay: Day): SeedSheet {
  const lines = seeds
    .map((s) => ({ ...s, orderBy: dayOf(s.orderBy), firstUse: dayOf(s.firstUse) }))
    .sort(
      (a, b) =>
        Number(b.packets > 0) - Number(a.packets > 0) ||
        a.orderBy - b.orderBy ||
        a.kindName.localeCompare(b.kindName),
    );
  const materials = report.materials.filter((month) => month.compostLitres > 0);
  return { head: headOf(report, printedDay), lines, materials };
}
