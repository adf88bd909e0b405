import { closedSpans } from '../beds/closed-beds.ts';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { benchGrain } from './bench-grain.ts';
import type { ProgramBuilder } from './program-builder.ts';

const clamp = (problem: PlanningProblem, week: number): number =>
  Math.min(Math.max(0, week - problem.fromWeek), problem.weekCount);

/**
 * A thing of limited amount taken over spans of weeks. What is taken in a week is what was taken the week before, plus
 * what begins, less what ends: a column a week, bounded by what there is, and two coefficients a span instead of one a
 * week.
 */
function occupancyRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  capacity: number,
  spans: readonly {
    readonly column: number;
    readonly from: number;
    readonly to: number;
    readonly amount: number;
  }[],
): void {
  const begins = new Map<number, { column: number; amount: number }[]>();
  const add = (week: number, column: number, amount: number): void => {
    if (week >= problem.weekCount) return;
    begins.set(week, [...(begins.get(week) ?? []), { column, amount }]);
  };
  for (const span of spans) {
    const from = clamp(problem, span.from);
    const to = clamp(problem, span.to);
    if (to <= from) continue;
    add(from, span.column, span.amount);
    add(to, span.column, -span.amount);
  }
  let before = -1;
  for (const week of [...begins.keys()].sort((a, b) => a - b)) {
    const taken = builder.column(0, 0, capacity, false);
    const row = builder.row(0, 0);
    builder.add(row, taken, -1);
    if (before >= 0) builder.add(row, before, 1);
    for (const { column, amount } of begins.get(week)!) builder.add(row, column, amount);
    before = taken;
  }
}

/** Strips of a class of ground: no more taken in any week than there are. */
export function groundRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  problem.ground.forEach((ground, g) => {
    const spans = candidates.flatMap((candidate, c) =>
      candidate.ground === g
        ? [
            {
              column: columnOf[c]!,
              from: candidate.groundFromWeek,
              to: candidate.groundToWeek,
              amount: candidate.stripsPerBatch,
            },
          ]
        : [],
    );
    const closed = closedSpans(ground);
    const rests = closed.length === 0 ? -1 : builder.column(0, 1, 1, false);
    for (const { fromWeek, toWeek, strips } of closed)
      spans.push({ column: rests, from: fromWeek, to: toWeek, amount: strips });
    occupancyRows(builder, problem, ground.stripCount, spans);
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
    const spans = candidates.flatMap((candidate, c) =>
      candidate.bench
        .filter((use) => use.bench === b)
        .map((use) => ({
          column: columnOf[c]!,
          from: use.fromWeek,
          to: use.toWeek,
          amount: benchGrain(use.m2),
        })),
    );
    occupancyRows(builder, problem, bench.capacityM2, spans);
  });
}

/** A crop that stands goes on in exactly one of its ways. */
export function standingRows(
  builder: ProgramBuilder,
  _problem: PlanningProblem,
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
    for (const { candidate, column } of own)
      builder.add(row, column, Math.floor(candidate.plan.plantsCount * 1024) / 1024);
    if (limit.leastPlants <= 0) continue;
    const least = builder.row(limit.leastPlants, Number.POSITIVE_INFINITY);
    const missing = builder.column(wishPrice, 0, limit.leastPlants, false);
    builder.add(least, missing, 1);
    for (const { candidate, column } of own) builder.add(least, column, candidate.plan.plantsCount);
  }
}

/** A plant short of a wish, in servings: a wish is priced, never infeasible. */
export const wishPrice = 6;
