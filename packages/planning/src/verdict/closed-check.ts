/** The gardener's closed beds and days without planting, counted again: part of the independent check. */
import { isoFromDay, isoOfWeek, type Week } from '@twelvemonth/basis';
import type { SowingPlan } from '@twelvemonth/growing';
import type { Placement } from '../beds/strips.ts';
import type { PlanningProblem } from '../problem.ts';

interface Placed {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly placements?: readonly Placement[];
}

function bedsRest(problem: PlanningProblem, sowing: Placed): string[] {
  const closed = problem.ground[sowing.ground]!.closed ?? [];
  return (sowing.placements ?? []).flatMap(({ bed }) =>
    closed
      .filter((rest) => rest.place === bed.place && rest.number === bed.number)
      .filter((rest) => rest.fromWeek < sowing.groundToWeek && sowing.groundFromWeek < rest.toWeek)
      .map((rest) => `bed-rests:${sowing.plan.id}:${bed.place}:${bed.number}:${isoOfWeek(rest.fromWeek)}`),
  );
}

/** In no week are there more strips taken than beds that are not closed have. */
function openGroundSuffices(problem: PlanningProblem, sowings: readonly Placed[]): string[] {
  return problem.ground.flatMap((ground, g) => {
    const found: string[] = [];
    if (ground.closed === undefined) return found;
    for (let week = problem.fromWeek; week < problem.fromWeek + problem.weekCount; week++) {
      const isIn = (from: Week, to: Week): boolean => from <= week && week < to;
      let open = 0;
      for (const bed of ground.beds)
        if (
          !ground.closed.some(
            (c) => c.place === bed.place && c.number === bed.number && isIn(c.fromWeek, c.toWeek),
          )
        )
          open += bed.stripCount;
      let taken = 0;
      for (const s of sowings)
        if (s.ground === g && isIn(s.groundFromWeek, s.groundToWeek)) taken += s.stripsCount;
      if (taken > open + 1e-6) found.push(`ground-closed:${ground.id}:${isoOfWeek(week)}:${taken}/${open}`);
    }
    return found;
  });
}

function daysKept(problem: PlanningProblem, { plan }: Placed): string[] {
  return [plan.startDay, plan.plantDay].flatMap((day) =>
    day !== null && problem.noPlanting.some((span) => day >= span.fromDay && day <= span.toDay)
      ? [`no-planting:${plan.id}:${isoFromDay(day)}`]
      : [],
  );
}

/** `fresh`: what the plan begins itself; what stands or is promised has its day already. */
export function closuresKept(
  problem: PlanningProblem,
  sowings: readonly Placed[],
  fresh: readonly Placed[],
): string[] {
  return [
    ...sowings.flatMap((sowing) => bedsRest(problem, sowing)),
    ...openGroundSuffices(problem, sowings),
    ...fresh.flatMap((sowing) => daysKept(problem, sowing)),
  ];
}
