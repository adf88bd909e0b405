/**
 * Hours by week: no more work than people have time for, and a price on weeks that are fuller than comfortable, so that
 * work is spread. What stands already may take more than there is; that is dear and never forced out of the program.
 *
 *   t_w = t_{w−1} + Σ change of minutes;   t_w − over_w − beyond_w ≤ comfort_w,   over_w ≤ cap_w − comfort_w
 *
 * One column a week and two coefficients a change of minutes, instead of one a week and candidate.
 */
import { comfortShareOfCap } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { beyondHourPrice, hourPrice } from './price.ts';
import type { ProgramBuilder } from './program-builder.ts';

/** Minutes of standing crops, each in its most laborious way: what cannot be planned away. */
function standingMost(problem: PlanningProblem, candidates: readonly Candidate[]): Float64Array {
  const byGroup = new Map<string, Float64Array>();
  for (const { group, work } of candidates) {
    if (group === null) continue;
    const most = byGroup.get(group) ?? new Float64Array(problem.weekCount);
    byGroup.set(group, most);
    for (const { fromWeek, toWeek, minutes } of work)
      for (let week = fromWeek; week < toWeek; week++) {
        const w = week - problem.fromWeek;
        most[w] = Math.max(most[w]!, minutes);
      }
  }
  const all = new Float64Array(problem.weekCount);
  for (const most of byGroup.values()) for (let w = 0; w < all.length; w++) all[w]! += most[w]!;
  return all;
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
  const standing = standingMost(problem, candidates);
  for (const { from, to } of limitedStretches(caps)) {
    const changes = changesWithin(problem, candidates, columnOf, from, to);
    let before = -1;
    for (let w = from; w < to; w++) {
      const taken = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
      const flow = builder.row(0, 0);
      builder.add(flow, taken, -1);
      if (before >= 0) builder.add(flow, before, 1);
      for (const [column, minutes] of changes[w - from]!) builder.add(flow, column, minutes);
      before = taken;
      const comfort = caps[w]! * comfortShareOfCap;
      const over = builder.column(hourPrice / 60, 0, caps[w]! - comfort, false);
      const row = builder.row(Number.NEGATIVE_INFINITY, comfort);
      builder.add(row, taken, 1);
      builder.add(row, over, -1);
      if (standing[w]! <= 0) continue;
      const beyond = builder.column(beyondHourPrice / 60, 0, standing[w]!, false);
      builder.add(row, beyond, -1);
    }
  }
}

/** By week of the stretch: columns whose minutes begin, end or change, and by how much. */
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
  candidates.forEach(({ work }, c) => {
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
