/** The chosen plan as sowings with ids, numbers, real strips and member runs: what every part of the report reads. */
import { streamFor, type Week } from '@twelvemonth/basis';
import { slugOf } from '@twelvemonth/garden';
import { runSowing, type SowingPlan, type SowingRun } from '@twelvemonth/growing';
import {
  type BenchUse,
  type Booking,
  type Candidate,
  type Choice,
  type MinutesByAct,
  minutesByAct,
  type Placement,
  type PlanningProblem,
  placeInStrips,
  type Scenario,
  type StandingCrop,
} from '@twelvemonth/planning';

export interface ChosenSowing {
  readonly id: string;
  readonly number: number;
  readonly state: 'done' | 'firm' | 'draft';
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
  readonly placements: readonly Placement[];
  readonly runs: readonly SowingRun[];
  readonly standing: StandingCrop | null;
  /** Work by week index as the program reckoned it; absent where no scenarios were at hand. */
  readonly minutesByAct?: MinutesByAct;
}

const idLetters = 'abcdefghjkmnpqrstuvwxyz23456789';

/** Slug plus six characters drawn from the sowing's own key: the same plan gives the same ids. */
function idOf(candidate: Candidate, seed: number): string {
  const stream = streamFor(seed, `id/${candidate.plan.id}`, 0);
  const tail = Array.from(
    { length: 6 },
    () => idLetters[Math.floor(stream.uniform() * idLetters.length)],
  ).join('');
  return `${slugOf(candidate.plan.kind.id)}-${tail}`;
}

function scaled(candidate: Candidate, batches: number, id: string): SowingPlan {
  const plants = candidate.group === null ? candidate.plan.plantsCount * batches : candidate.plan.plantsCount;
  return { ...candidate.plan, id, plantsCount: plants };
}

function minutesOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidate: Candidate,
  batches: number,
  plan: SowingPlan,
): MinutesByAct {
  const sowing = {
    ...candidate,
    plan,
    stripsCount: candidate.stripsPerBatch * batches,
    bench: candidate.bench.map((use) => ({ ...use, m2: use.m2 * batches })),
  };
  const outcomes = candidate.lots.map((lots, s) => ({ prob: scenarios[s]!.prob * batches, lots }));
  return minutesByAct(problem, sowing, outcomes);
}

export function chosenSowings(
  problem: PlanningProblem,
  choices: readonly Choice[],
  scenarios: readonly Scenario[],
): {
  readonly sowings: ChosenSowing[];
  readonly unplaced: readonly string[];
} {
  const standingById = new Map(problem.standing.map((crop) => [crop.plan.id, crop]));
  const drafts = choices
    .map(({ candidate, batches }) => {
      const standing = candidate.group === null ? null : (standingById.get(candidate.group) ?? null);
      const id = standing === null ? idOf(candidate, problem.seed) : standing.plan.id;
      return { candidate, batches, standing, id, plan: scaled(candidate, batches, id) };
    })
    .sort((a, b) => a.plan.startDay - b.plan.startDay || (a.id < b.id ? -1 : 1));
  const placements = new Map<string, Placement[]>();
  const unplaced: string[] = [];
  problem.ground.forEach((ground, g) => {
    const bookings: Booking[] = drafts
      .filter((d) => d.candidate.ground === g)
      .map((d) => ({
        id: d.id,
        family: d.plan.kind.family,
        fromWeek: d.candidate.groundFromWeek,
        toWeek: d.candidate.groundToWeek,
        stripsCount: d.candidate.stripsPerBatch * d.batches,
        place: d.standing?.place ?? null,
        placeNumber: d.standing?.placeNumber ?? null,
      }));
    const placed = placeInStrips(ground, bookings);
    unplaced.push(...placed.unplaced);
    for (const placement of placed.placements)
      placements.set(placement.booking, [...(placements.get(placement.booking) ?? []), placement]);
  });
  const sowings = drafts.map(
    (d, i): ChosenSowing => ({
      id: d.id,
      number: i + 1,
      state: d.standing === null ? 'draft' : d.standing.state,
      plan: d.plan,
      ground: d.candidate.ground,
      stripsCount: d.candidate.stripsPerBatch * d.batches,
      groundFromWeek: d.candidate.groundFromWeek,
      groundToWeek: d.candidate.groundToWeek,
      bench: d.candidate.bench.map((use) => ({ ...use, m2: use.m2 * d.batches })),
      placements: placements.get(d.id) ?? [],
      runs: problem.context.members.map((member) =>
        runSowing(problem.context, member, d.plan, problem.stores),
      ),
      standing: d.standing,
      minutesByAct: minutesOf(problem, scenarios, d.candidate, d.batches, d.plan),
    }),
  );
  return { sowings, unplaced };
}
