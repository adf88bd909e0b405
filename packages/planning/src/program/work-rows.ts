/**
 * Hours by week: no more work than people have time for, and a price on weeks that are fuller than comfortable, so that
 * work is spread. What stands already may take more than there is: that is never forced out of the program, and little
 * that is new is put into such a week (work/room-beside-standing.ts).
 *
 *   t_w = t_{w−1} + Σ change of minutes of new sowings,   t_w ≤ max(0, cap_w − least that what stands asks for)
 *   t_w + Σ minutes of standing crops − over_w − beyond_w ≤ comfort_w,   over_w ≤ cap_w − comfort_w
 *   beyond_w ≤ max(0, most that what stands asks for − cap_w)
 *
 * One column a week and two coefficients a change of minutes, instead of one a week and candidate.
 */
import { comfortShareOfCap } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { beyondHourPrice, hourPrice } from './price.ts';
import type { ProgramBuilder } from './program-builder.ts';

interface StandingWork {
  /** Minutes by week index, each crop in its least and in its most laborious way. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** Columns of ways to go on, with their minutes, by week index. */
  readonly entries: readonly { readonly column: number; readonly minutes: number }[][];
}

function standingWork(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): StandingWork {
  const entries: { column: number; minutes: number }[][] = Array.from(
    { length: problem.weekCount },
    () => [],
  );
  const ways = new Map<string, Float64Array[]>();
  candidates.forEach(({ group, work }, c) => {
    if (group === null) return;
    const byWeek = new Float64Array(problem.weekCount);
    for (const { fromWeek, toWeek, minutes } of work)
      for (let w = fromWeek - problem.fromWeek; w < toWeek - problem.fromWeek; w++) {
        byWeek[w] = minutes;
        entries[w]!.push({ column: columnOf[c]!, minutes });
      }
    ways.set(group, [...(ways.get(group) ?? []), byWeek]);
  });
  const sumOf = (pick: (...minutes: number[]) => number): Float64Array =>
    Float64Array.from({ length: problem.weekCount }, (_, w) =>
      [...ways.values()].reduce((sum, own) => sum + pick(...own.map((byWeek) => byWeek[w]!)), 0),
    );
  return { least: sumOf(Math.min), most: sumOf(Math.max), entries };
}

/** Stretches of weeks with a limit: `to` exclusive, week indices. */
function limitedStretches(caps: Float64Array): { readonly from: number; readonly to: number }[] {
  const stretches: { from: number; to: number }[] = [];
  caps.forEach((cap, w) => {
    if (!Number.isFinite(cap)) return;
    const last = stretches.at(-1);
    if (last?.to === w) last.to++;
    else stretches.push({ from: w, to: w + 1 });
  });
  return stretches;
}

export function workRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const caps = problem.capMinutesByWeek;
  if (caps === null) return;
  const standing = standingWork(problem, candidates, columnOf);
  for (const { from, to } of limitedStretches(caps)) {
    const changes = changesWithin(problem, candidates, columnOf, from, to);
    let before = -1;
    for (let w = from; w < to; w++) {
      const cap = caps[w]!;
      const taken = builder.column(0, 0, Math.max(0, cap - standing.least[w]!), false);
      const flow = builder.row(0, 0);
      builder.add(flow, taken, -1);
      if (before >= 0) builder.add(flow, before, 1);
      for (const [column, minutes] of changes[w - from]!) builder.add(flow, column, minutes);
      before = taken;
      const comfort = cap * comfortShareOfCap;
      const over = builder.column(hourPrice / 60, 0, cap - comfort, false);
      const row = builder.row(Number.NEGATIVE_INFINITY, comfort);
      builder.add(row, taken, 1);
      builder.add(row, over, -1);
      for (const { column, minutes } of standing.entries[w]!) builder.add(row, column, minutes);
      if (standing.most[w]! <= cap) continue;
      const beyond = builder.column(beyondHourPrice / 60, 0, standing.most[w]! - cap, false);
      builder.add(row, beyond, -1);
    }
  }
}

/** By week of the stretch: columns of new sowings whose minutes begin, end or change, and by how much. */
function changesWithin(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
  from: number,
  to: number,
): readonly ReadonlyMap<number, number>[] {
  const changes = Array.from({ length: to - from }, () => new Map<number, number>());
  const change = (w: number, column: number, minutes: number): void => {
    const at = changes[w - from];
    if (at !== undefined) at.set(column, (at.get(column) ?? 0) + minutes);
  };
  candidates.forEach(({ work, group }, c) => {
    if (group !== null) return;
    for (const span of work) {
      const first = Math.max(from, span.fromWeek - problem.fromWeek);
      const end = Math.min(to, span.toWeek - problem.fromWeek);
      if (first >= end) continue;
      change(first, columnOf[c]!, span.minutes);
      change(end, columnOf[c]!, -span.minutes);
    }
  });
  return changes;
}
