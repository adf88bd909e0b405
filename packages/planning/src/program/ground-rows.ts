import type { Candidate, PlanningProblem } from '../problem.ts';
import type { ProgramBuilder } from './program-builder.ts';

const clamp = (problem: PlanningProblem, week: number): number =>
  Math.min(Math.max(0, week - problem.fromWeek), problem.weekCount);

/** Strips of a class of ground: no more taken in any week than there are. */
export function groundRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  problem.ground.forEach((ground, g) => {
    const rows = Array.from({ length: problem.weekCount }, () => -1);
    candidates.forEach((candidate, c) => {
      if (candidate.ground !== g) return;
      for (
        let w = clamp(problem, candidate.groundFromWeek);
        w < clamp(problem, candidate.groundToWeek);
        w++
      ) {
        if (rows[w] === -1) rows[w] = builder.row(Number.NEGATIVE_INFINITY, ground.stripCount);
        builder.add(rows[w]!, columnOf[c]!, candidate.stripsPerBatch);
      }
    });
  });
}

/** Bench space by stage and week. */
export function benchRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  problem.benches.forEach((bench, b) => {
    const rows = Array.from({ length: problem.weekCount }, () => -1);
    candidates.forEach((candidate, c) => {
      for (const use of candidate.bench) {
        if (use.bench !== b) continue;
        for (let w = clamp(problem, use.fromWeek); w < clamp(problem, use.toWeek); w++) {
          if (rows[w] === -1) rows[w] = builder.row(Number.NEGATIVE_INFINITY, bench.capacityM2);
          builder.add(rows[w]!, columnOf[c]!, use.m2);
        }
      }
    });
  });
}

/** A crop that stands goes on in exactly one of its ways. */
export function standingRows(
  builder: ProgramBuilder,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const rows = new Map<string, number>();
  candidates.forEach((candidate, c) => {
    if (candidate.group === null) return;
    let row = rows.get(candidate.group);
    if (row === undefined) {
      row = builder.row(1, 1);
      rows.set(candidate.group, row);
    }
    builder.add(row, columnOf[c]!, 1);
  });
}

/** Wishes on numbers of plants. */
export function plantLimitRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  for (const limit of problem.limits) {
    const own = candidates.flatMap((candidate, c) =>
      candidate.group === null && candidate.plan.kind.id === limit.kind
        ? [{ candidate, column: columnOf[c]! }]
        : [],
    );
    if (own.length === 0) continue;
    const most = Number.isFinite(limit.mostPlants) ? limit.mostPlants : Number.POSITIVE_INFINITY;
    const row = builder.row(Number.NEGATIVE_INFINITY, most);
    for (const { candidate, column } of own) builder.add(row, column, candidate.plan.plantsCount);
    if (limit.leastPlants <= 0) continue;
    const least = builder.row(limit.leastPlants, Number.POSITIVE_INFINITY);
    const missing = builder.column(wishPrice, 0, limit.leastPlants, false);
    builder.add(least, missing, 1);
    for (const { candidate, column } of own) builder.add(least, column, candidate.plan.plantsCount);
  }
}

/** A plant short of a wish, in servings: a wish is priced, never infeasible. */
const wishPrice = 3;

/** Hours: the work of a batch is spread over the weeks in which it is in hand. */
export function workRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const most = problem.minutesPerWeek;
  if (most === null) return;
  const rows = Array.from({ length: problem.weekCount }, () => -1);
  candidates.forEach((candidate, c) => {
    if (candidate.minutes <= 0) return;
    const from = clamp(problem, candidate.startWeek);
    const to = Math.max(from + 1, clamp(problem, candidate.groundToWeek));
    for (let w = from; w < Math.min(to, problem.weekCount); w++) {
      if (rows[w] === -1) rows[w] = builder.row(Number.NEGATIVE_INFINITY, most);
      builder.add(rows[w]!, columnOf[c]!, candidate.minutes / (to - from));
    }
  });
}
