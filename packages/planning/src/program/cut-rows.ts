/**
 * What real beds refused: in the weeks in which a sowing found too few strips, its class is offered so many fewer. The
 * plan is made again under these rows, a few times at most.
 */
import type { Candidate, GroundCut, PlanningProblem } from '../problem.ts';
import type { ProgramBuilder } from './program-builder.ts';

/** Crops that stand may hold more than a cut leaves: dear, and never infeasible. Weighted servings a strip and week. */
const beyondPrice = 3;

/** Strips that a class has left in an absolute week. */
export function stripsAfterCuts(problem: PlanningProblem, ground: number, week: number): number {
  const cuts = (problem.groundCuts ?? []).filter(
    (cut) => cut.ground === ground && cut.fromWeek <= week && week < cut.toWeek,
  );
  return Math.max(0, problem.ground[ground]!.stripCount - cuts.reduce((sum, cut) => sum + cut.strips, 0));
}

export function cutRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const end = problem.fromWeek + problem.weekCount;
  const weeksOf = ({ fromWeek, toWeek }: GroundCut): number[] => {
    const from = Math.max(fromWeek, problem.fromWeek);
    return Array.from({ length: Math.max(0, Math.min(toWeek, end) - from) }, (_, i) => from + i);
  };
  const cells = new Set(
    (problem.groundCuts ?? []).flatMap((cut) => weeksOf(cut).map((w) => `${cut.ground}/${w}`)),
  );
  for (const cell of cells) {
    const [ground, week] = cell.split('/').map(Number) as [number, number];
    const row = builder.row(Number.NEGATIVE_INFINITY, stripsAfterCuts(problem, ground, week));
    builder.add(row, builder.column(beyondPrice, 0, Number.POSITIVE_INFINITY, false), -1);
    candidates.forEach((candidate, c) => {
      if (candidate.ground !== ground) return;
      if (candidate.groundFromWeek <= week && week < candidate.groundToWeek)
        builder.add(row, columnOf[c]!, candidate.stripsPerBatch);
    });
  }
}
