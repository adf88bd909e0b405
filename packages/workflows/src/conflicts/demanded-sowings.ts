/**
 * Sowings of the kinds that are demanded, made once and fitted to the ground of each set of demands that is tried: beds
 * that rest are a class of their own, so the classes differ from set to set.
 */
import {
  type Candidate,
  type GroundClass,
  makeCandidates,
  type PlanningProblem,
  plantedWhenAllowed,
  type Scenario,
} from '@twelvemonth/planning';
import { restMark } from '../problem/ground.ts';

const likeness = (ground: GroundClass): string => ground.id.split(restMark)[0]!;

interface Demanded {
  readonly like: string;
  readonly candidate: Candidate;
}

/** With and without what is closed: what suits one set of demands may have been passed over for another. */
export function demandedSowings(
  problems: readonly PlanningProblem[],
  scenarios: readonly Scenario[],
  kinds: ReadonlySet<string>,
): Demanded[] {
  const found = new Map<string, Demanded>();
  for (const problem of problems) {
    const few = { ...problem, kinds: problem.kinds.filter(({ id }) => kinds.has(id)) };
    for (const candidate of kinds.size === 0 ? [] : makeCandidates(few, scenarios, () => {})) {
      const ground = problem.ground[candidate.ground]!;
      const like = likeness(ground);
      found.set(candidate.plan.id.replace(ground.id, like), { like, candidate });
    }
  }
  return [...found.values()];
}

export function sowingsFor(problem: PlanningProblem, demanded: readonly Demanded[]): Candidate[] {
  const kinds = new Set(problem.kinds.map(({ id }) => id));
  return problem.ground.flatMap((ground, g) => {
    const like = likeness(ground);
    return demanded
      .filter((own) => own.like === like && kinds.has(own.candidate.plan.kind.id))
      .filter(({ candidate }) => plantedWhenAllowed(problem, candidate.plan))
      .map(({ candidate }) => ({ ...candidate, ground: g, mostBatches: ground.stripCount }));
  });
}
