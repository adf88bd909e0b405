import { isoOfWeek } from '@twelvemonth/basis';
import { handoversOf, type PlanningProblem } from '@twelvemonth/planning';
import type { ReportHandover } from '../report/ground-report.ts';
import type { ReportSowing } from '../report/plan-report.ts';
import { placeNamesOf } from '../sheets/place-names.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

/** Handovers that still lie ahead, from newly cleared to newly planted. */
export function reportHandovers(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  reported: readonly ReportSowing[],
): ReportHandover[] {
  const nameOf = new Map(reported.map((sowing) => [sowing.id, sowing]));
  const stripM2 = new Map(sowings.map((s) => [s.id, problem.ground[s.ground]!.stripM2]));
  const holders = sowings
    .filter((sowing) => problem.ground[sowing.ground]!.bench === null)
    .map(({ id, plan, groundFromWeek, groundToWeek, placements }) => ({
      id,
      kind: plan.kind.id,
      groundFromWeek,
      groundToWeek,
      placements,
    }));
  return handoversOf(holders).flatMap(({ from, toKind, passes }): ReportHandover[] => {
    const ahead = passes.filter((pass) => pass.week >= problem.fromWeek);
    const before = nameOf.get(from);
    const first = nameOf.get(ahead[0]?.to ?? '');
    if (before === undefined || first === undefined) return [];
    return [
      {
        from,
        fromKindName: before.kindName,
        toKind,
        toKindName: first.kindName,
        placeName: placeNamesOf(before),
        passes: ahead.map(({ week, strips, to }) => ({
          week: isoOfWeek(week),
          strips,
          m2: Math.round(strips * stripM2.get(to)! * 100) / 100,
          to,
        })),
      },
    ];
  });
}
