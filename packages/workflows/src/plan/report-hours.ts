/** Hours of work by week: what the plan's sowings and what stands ask for, against what people have. */
import { isoOfWeek } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { isAwayWeek } from '@twelvemonth/growing';
import { type PlanningProblem, workActs } from '@twelvemonth/planning';
import { visitMinutesPerWeek } from '../problem/hands.ts';
import { hoursInWeek } from '../problem/hours-in-week.ts';
import type { HoursByWork, ReportHours } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

const roundedHours = (minutes: number): number => Math.round((minutes / 60) * 100) / 100;

export function reportHours(
  garden: Garden,
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
): ReportHours[] {
  const visits = visitMinutesPerWeek(garden);
  return Array.from({ length: problem.shownWeeks }, (_, w): ReportHours => {
    const away = isAwayWeek(problem.context.away, problem.fromWeek + w);
    let total = away ? 0 : visits;
    const byWork = Object.fromEntries(
      workActs.map((act) => {
        const minutes = sowings.reduce((sum, s) => sum + (s.minutesByAct?.[act][w] ?? 0), 0);
        total += minutes;
        return [act, roundedHours(minutes)];
      }),
    ) as Omit<HoursByWork, 'visit'>;
    return {
      weekOf: isoOfWeek(problem.fromWeek + w),
      hours: roundedHours(total),
      byWork: { ...byWork, visit: away ? 0 : roundedHours(visits) },
      cap: away ? 0 : hoursInWeek(garden, problem.fromWeek + w),
    };
  });
}
