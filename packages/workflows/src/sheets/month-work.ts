import type { Day } from '@twelvemonth/basis';
import type { HoursByWork, PlanReport, ReportMaterials } from '../report/plan-report.ts';
import { type CalendarMonth, dayOf } from './sheet-days.ts';

/** Work of a month's weeks: the usual week, and the fullest one with what fills it. */
export interface MonthWork {
  readonly weeksCount: number;
  readonly meanHours: number;
  readonly mostHours: number;
  readonly mostMonday: Day;
  readonly mostBy: keyof HoursByWork;
  /** Hours that people have in the fullest week; null: no limit. */
  readonly cap: number | null;
}

type Week = PlanReport['hours'][number];

export function workOf(weeks: readonly Week[]): MonthWork | null {
  const [first] = weeks;
  if (first === undefined || weeks.every((week) => week.hours <= 0)) return null;
  const most = weeks.reduce((a, b) => (b.hours > a.hours ? b : a));
  const kinds = Object.entries(most.byWork) as [keyof HoursByWork, number][];
  return {
    weeksCount: weeks.length,
    meanHours: weeks.reduce((sum, week) => sum + week.hours, 0) / weeks.length,
    mostHours: most.hours,
    mostMonday: dayOf(most.weekOf),
    mostBy: kinds.reduce((a, b) => (b[1] > a[1] ? b : a))[0],
    cap: most.cap,
  };
}

export function monthWorkOf(report: PlanReport, from: Day, to: Day): MonthWork | null {
  return workOf(report.hours.filter(({ weekOf }) => dayOf(weekOf) >= from && dayOf(weekOf) <= to));
}

/** Compost, trays and pots that the month's sowings take. */
export function monthMaterialsOf(report: PlanReport, month: CalendarMonth): ReportMaterials | null {
  const key = `${month.year}-${String(month.month).padStart(2, '0')}`;
  return report.materials.find((m) => m.month === key) ?? null;
}
