import { isoOfWeek } from '@twelvemonth/basis';
import type { PlanningProblem } from '@twelvemonth/planning';
import { trayM2 } from '../problem/ground.ts';
import type { ReportBench } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** What each bench holds by week, mat, sill, bench and frame; weeks in which it is empty are left out. */
export function reportBenches(problem: PlanningProblem, sowings: readonly ChosenSowing[]): ReportBench[] {
  return problem.benches.map((bench, b) => {
    const m2 = new Float64Array(problem.shownWeeks);
    for (const sowing of sowings)
      for (const use of sowing.bench)
        if (use.bench === b)
          for (let w = 0; w < problem.shownWeeks; w++)
            if (problem.fromWeek + w >= use.fromWeek && problem.fromWeek + w < use.toWeek) m2[w]! += use.m2;
    return {
      place: bench.place,
      placeName: bench.placeName,
      stage: bench.stage,
      weeks: Array.from(m2).flatMap((held, w) =>
        held <= 0
          ? []
          : [
              {
                weekOf: isoOfWeek(problem.fromWeek + w),
                m2: rounded(held),
                capacityM2: rounded(bench.capacityM2),
                trays: Math.ceil(held / trayM2 - 1e-9),
              },
            ],
      ),
    };
  });
}
