import { invariant } from '@twelvemonth/basis';
import { openStripsByWeek } from '../beds/closed-beds.ts';
import type { Candidate, PlanningProblem } from '../problem.ts';
import { stripsAfterCuts } from '../program/cut-rows.ts';

/** Free strips, free bench, free minutes by week, and limits on plants: what a choice may still use. */
export interface GroundLedger {
  /** Batches that still fit, at most. */
  room(candidate: Candidate): number;
  take(candidate: Candidate, batches: number): void;
  /** Free strips of a class in a week index. */
  freeStrips(ground: number, weekIndex: number): number;
  readonly freeBench: readonly Float64Array[];
}

export function groundLedger(problem: PlanningProblem): GroundLedger {
  const { weekCount, fromWeek } = problem;
  const free = problem.ground.map((g) => openStripsByWeek(g, fromWeek, weekCount));
  for (const [g, strips] of free.entries())
    if (problem.groundCuts?.some((cut) => cut.ground === g))
      strips.forEach((open, w) => {
        strips[w] = open - problem.ground[g]!.stripCount + stripsAfterCuts(problem, g, fromWeek + w);
      });
  const freeBench = problem.benches.map((b) => new Float64Array(weekCount).fill(b.capacityM2));
  const freeMinutes = problem.capMinutesByWeek?.slice() ?? null;
  const planted = new Map<string, number>();
  const clamp = (week: number): number => Math.min(Math.max(0, week - fromWeek), weekCount);

  return {
    freeBench,
    freeStrips: (ground, weekIndex) => free[ground]![weekIndex]!,
    room: (candidate) => {
      let room = candidate.mostBatches;
      const strips = free[candidate.ground]!;
      for (let w = clamp(candidate.groundFromWeek); w < clamp(candidate.groundToWeek); w++)
        room = Math.min(room, Math.floor(strips[w]! / candidate.stripsPerBatch + 1e-9));
      for (const use of candidate.bench)
        for (let w = clamp(use.fromWeek); w < clamp(use.toWeek); w++)
          room = Math.min(room, Math.floor(freeBench[use.bench]![w]! / use.m2 + 1e-9));
      if (freeMinutes !== null)
        for (const span of candidate.work)
          for (let w = clamp(span.fromWeek); w < clamp(span.toWeek); w++)
            room = Math.min(room, Math.floor(freeMinutes[w]! / span.minutes + 1e-9));
      const limit = problem.limits.find((l) => l.kind === candidate.plan.kind.id);
      if (limit !== undefined && candidate.group === null) {
        const left = limit.mostPlants - (planted.get(limit.kind) ?? 0);
        room = Math.min(room, Math.floor(left / candidate.plan.plantsCount + 1e-9));
      }
      return Math.max(0, room);
    },
    take: (candidate, batches) => {
      const strips = free[candidate.ground]!;
      for (let w = clamp(candidate.groundFromWeek); w < clamp(candidate.groundToWeek); w++)
        strips[w]! -= candidate.stripsPerBatch * batches;
      for (const use of candidate.bench)
        for (let w = clamp(use.fromWeek); w < clamp(use.toWeek); w++)
          freeBench[use.bench]![w]! -= use.m2 * batches;
      if (freeMinutes !== null)
        for (const span of candidate.work)
          for (let w = clamp(span.fromWeek); w < clamp(span.toWeek); w++)
            freeMinutes[w]! -= span.minutes * batches;
      const kind = candidate.plan.kind.id;
      planted.set(kind, (planted.get(kind) ?? 0) + candidate.plan.plantsCount * batches);
      invariant(Number.isFinite(batches), 'batches are a number', { batches });
    },
  };
}
