import type { Day } from '@twelvemonth/basis';
import type { PlanReport } from '../report/plan-report.ts';
import { dayOf, dayOrNull } from './sheet-days.ts';

/** What every sheet says about where it comes from. */
export interface SheetHead {
  readonly household: string;
  readonly site: string;
  readonly invented: boolean;
  readonly eaters: number;
  readonly planDay: Day;
  readonly printedDay: Day;
  readonly seed: number;
  readonly members: number;
  readonly tables: string;
  readonly standstill: readonly { readonly from: Day; readonly to: Day }[];
  /** One year in ten has frost before this day; null: rarely any. */
  readonly frostFrom: Day | null;
}

export function headOf(report: PlanReport, printedDay: Day): SheetHead {
  return {
    ...report.garden,
    planDay: dayOf(report.from),
    printedDay,
    seed: report.seed,
    members: report.members,
    tables: report.tables,
    standstill: report.standstill.map((s) => ({ from: dayOf(s.from), to: dayOf(s.to) })),
    frostFrom: dayOrNull(report.frost.firstAutumn.p10),
  };
}
