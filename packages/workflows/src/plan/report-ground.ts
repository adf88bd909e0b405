/** Everything the report says about the ground itself. */
import { isoFromDay } from '@twelvemonth/basis';
import type { PlanningProblem } from '@twelvemonth/planning';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';
import type { Unplaced } from './lay-in-beds.ts';
import { reportFeeding } from './report-feeding.ts';
import { reportHandovers } from './report-handovers.ts';
import { reportKit } from './report-kit.ts';

type GroundField = 'handovers' | 'feeding' | 'kitLedger' | 'notPlaced';
export type ReportGround = { readonly [K in GroundField]: NonNullable<PlanReport[K]> };

export function reportGround(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  reported: readonly ReportSowing[],
  unplaced: readonly Unplaced[],
): ReportGround {
  const m2 = (strips: number, ground: number): number =>
    Math.round(strips * problem.ground[ground]!.stripM2 * 100) / 100;
  return {
    handovers: reportHandovers(problem, sowings, reported),
    feeding: reportFeeding(problem, sowings),
    kitLedger: reportKit(problem, sowings, reported),
    notPlaced: unplaced.map(({ plan, ground, wantedStrips, placedStrips }) => ({
      kind: plan.kind.id,
      kindName: plan.kind.name,
      sow: isoFromDay(plan.startDay),
      wantedM2: m2(wantedStrips, ground),
      placedM2: m2(placedStrips, ground),
    })),
  };
}
