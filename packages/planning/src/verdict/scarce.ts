/** Why a possible sowing has no room beside a plan: the first of ground, bench and hours that is taken. */
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { GroundLedger } from '../solve/ground-ledger.ts';

export type Scarce = 'ground-open' | 'ground-cover' | 'bench' | 'hours';

const grain = 1e-9;

export function bindsOn(problem: PlanningProblem, ledger: GroundLedger, candidate: Candidate): Scarce {
  const ground = problem.ground[candidate.ground]!;
  const weekIndex = (week: number): number =>
    Math.min(Math.max(0, week - problem.fromWeek), problem.weekCount);
  for (let w = weekIndex(candidate.groundFromWeek); w < weekIndex(candidate.groundToWeek); w++)
    if (ledger.freeStrips(candidate.ground, w) < candidate.stripsPerBatch - grain) {
      if (ground.bench !== null) return 'bench';
      return ground.growsIn === 'cover' || ground.growsIn === 'frame' ? 'ground-cover' : 'ground-open';
    }
  for (const use of candidate.bench)
    for (let w = weekIndex(use.fromWeek); w < weekIndex(use.toWeek); w++)
      if (ledger.freeBench[use.bench]![w]! < use.m2 - grain) return 'bench';
  return 'hours';
}
