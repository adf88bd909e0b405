/** The chosen plan as sowings with ids, numbers, real strips and member runs: what every part of the report reads. */
import { streamFor } from '@twelvemonth/basis';
import { slugOf } from '@twelvemonth/garden';
import type { SowingPlan } from '@twelvemonth/growing';
import {
  type Candidate,
  type Choice,
  type MinutesByAct,
  minutesByAct,
  type PlanningProblem,
  type Scenario,
} from '@twelvemonth/planning';
import { keptIds, keptNumbers } from '../replan/keep-ids.ts';
import type { ReportSowing } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowing.ts';
import { type Draft, layInBeds, type Unplaced } from './lay-in-beds.ts';
import { lendToSowings } from './lend-to-sowings.ts';
import { plantGuests } from './plant-guests.ts';

export type { ChosenSowing } from './chosen-sowing.ts';

const idLetters = 'abcdefghjkmnpqrstuvwxyz23456789';

/** Slug plus six characters drawn from the sowing's own key: the same plan gives the same ids. */
function idOf(candidate: Candidate, seed: number, again: number): string {
  const stream = streamFor(seed, `id/${candidate.plan.id}`, again);
  const tail = Array.from(
    { length: 6 },
    () => idLetters[Math.floor(stream.uniform() * idLetters.length)],
  ).join('');
  return `${slugOf(candidate.plan.kind.id)}-${tail}`;
}

/** The id that people know it by, else a new one that nothing else has or had. */
function idMaker(
  problem: PlanningProblem,
  choices: readonly Choice[],
  before: readonly ReportSowing[],
): (choice: Choice) => string {
  const kept = keptIds(problem.lastPlan, choices);
  const used = new Set([
    ...kept.values(),
    ...problem.standing.map((crop) => crop.plan.id),
    ...before.map((sowing) => sowing.id),
  ]);
  return (choice) => {
    const known = kept.get(choice);
    if (known !== undefined) return known;
    let again = 0;
    let id = idOf(choice.candidate, problem.seed, again);
    while (used.has(id)) id = idOf(choice.candidate, problem.seed, ++again);
    used.add(id);
    return id;
  };
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
  before: readonly ReportSowing[] = [],
): {
  readonly sowings: ChosenSowing[];
  readonly unplaced: readonly Unplaced[];
} {
  const standingById = new Map(problem.standing.map((crop) => [crop.plan.id, crop]));
  const idFor = idMaker(problem, choices, before);
  const draftOf = (choice: Choice): Draft => {
    const { candidate, batches } = choice;
    const standing = candidate.group === null ? null : (standingById.get(candidate.group) ?? null);
    const told = problem.lastPlan?.sowings.find(({ id }) => id === candidate.stays?.id) ?? null;
    const id = standing?.plan.id ?? idFor(choice);
    return { candidate, batches, standing, told, id, plan: scaled(candidate, batches, id) };
  };
  const chosen = choices
    .map(draftOf)
    .sort((a, b) => a.plan.startDay - b.plan.startDay || (a.id < b.id ? -1 : 1));
  const { drafts, placements, rests, unplaced } = layInBeds(problem, chosen, (draft, batches) => ({
    ...draft,
    batches,
    plan: scaled(draft.candidate, batches, draft.id),
  }));
  const numbers = keptNumbers(
    drafts.map(({ id }) => id),
    new Map(before.map((sowing) => [sowing.id, sowing.number])),
  );
  const askers = drafts.map(({ id, plan, candidate, batches, standing }) => ({
    id,
    plan,
    ground: candidate.ground,
    stripsCount: candidate.stripsPerBatch * batches,
    groundFromWeek: candidate.groundFromWeek,
    groundToWeek: candidate.groundToWeek,
    standing: standing !== null,
  }));
  const lent = lendToSowings(problem, askers);
  const sowings = drafts.map((d, i): ChosenSowing => {
    const { plan, runs, kit, withoutKit } = lent.get(d.id)!;
    return {
      ...askers[i]!,
      number: numbers.get(d.id)!,
      state: d.standing === null ? 'draft' : d.standing.state,
      plan,
      bench: d.candidate.bench.map((use) => ({ ...use, m2: use.m2 * d.batches })),
      placements: placements.get(d.id) ?? [],
      runs,
      standing: d.standing,
      rests: rests.get(d.id) ?? [],
      kit,
      withoutKit,
      minutesByAct: minutesOf(problem, scenarios, d.candidate, d.batches, d.plan),
    };
  });
  return { sowings: plantGuests(problem, sowings), unplaced };
}
