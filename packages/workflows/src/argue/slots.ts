/**
 * Room for one more sowing of a kind: every route, place and week that the planner would think of, in the strips and on
 * the benches that the plan at hand leaves free, ranked by what it would fill on the table. No program is solved.
 */
import { type Day, isoFromDay } from '@twelvemonth/basis';
import { type CropType, runSowing } from '@twelvemonth/growing';
import {
  type Candidate,
  type GreedyState,
  gainOf,
  makeCandidates,
  type PlanningProblem,
  type Scenario,
} from '@twelvemonth/planning';
import { openTin } from '../forecast/seed-tin.ts';
import { kindOf } from '../kinds/garden-kinds.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import { reportSowing } from '../plan/report-sowings.ts';
import type { NoSlotBecause, Slot, SlotInstead, SlotsReport } from '../report/argue-report.ts';
import { meanServings } from './delay.ts';
import { freeRuns, holdersOf, placeInRuns } from './free-ground.ts';
import type { OpenPlan } from './open-plan.ts';
import { describe, fewScenarios, inBatches, stateOf } from './other-sowings.ts';
import { eatenBecause, eatenWith, gapOf, runsOf, triedMembers } from './try-out.ts';

export interface SlotsRequest {
  readonly kind: string;
  /** Plants wanted; null: as many as are still well used. */
  readonly plants: number | null;
  /** How many slots to answer with. */
  readonly most: number;
  readonly today: Day;
}

/** A strip more is worth it while it still brings this share of what the first one does. */
const wellUsedShare = 0.5;
const mostStrips = 16;
const tried = 24;
const triedInstead = 6;
/** Two slots in the same ground within so many weeks are one. */
const alikeWeeks = 3;

interface Option {
  readonly candidate: Candidate;
  readonly batches: number;
  readonly gain: number;
}

function wellUsed(
  state: GreedyState,
  scenarios: readonly Scenario[],
  candidate: Candidate,
  room: number,
  plants: number | null,
): Option | null {
  if (room < 1) return null;
  const { plantsCount } = candidate.plan;
  const gain = (n: number): number => gainOf(state, scenarios, candidate, n);
  if (plants !== null) {
    const n = Math.max(1, Math.ceil(plants / plantsCount - 0.05));
    return n > room ? null : { candidate, batches: n, gain: gain(n) };
  }
  let [batches, worth] = [1, gain(1)];
  const first = worth;
  while (batches * 2 <= Math.min(room, mostStrips)) {
    const more = gain(batches * 2);
    if ((more - worth) / batches < wellUsedShare * first) break;
    [batches, worth] = [batches * 2, more];
  }
  return { candidate, batches, gain: worth };
}

/** The best of each ground and time, best first. */
function unlike(options: readonly Option[], most: number): Option[] {
  const kept: Option[] = [];
  for (const option of [...options].sort((a, b) => b.gain - a.gain || a.batches - b.batches)) {
    const { ground, startWeek } = option.candidate;
    const alike = kept.some(
      ({ candidate }) =>
        candidate.ground === ground && Math.abs(candidate.startWeek - startWeek) <= alikeWeeks,
    );
    if (!alike) kept.push(option);
    if (kept.length >= most) break;
  }
  return kept;
}

function asSowing(
  open: OpenPlan,
  { candidate, batches }: Option,
  others: readonly ChosenSowing[],
): ChosenSowing {
  const { problem } = open;
  const { ground, groundFromWeek, groundToWeek } = candidate;
  const stripsCount = candidate.stripsPerBatch * batches;
  const plan = { ...inBatches(candidate, batches), id: `slot/${candidate.plan.id}` };
  const runs = freeRuns(problem, others, ground, groundFromWeek, groundToWeek);
  return {
    id: plan.id,
    number: 0,
    state: 'draft',
    plan,
    ground,
    stripsCount,
    groundFromWeek,
    groundToWeek,
    bench: candidate.bench.map((use) => ({ ...use, m2: use.m2 * batches })),
    placements: placeInRuns(runs, stripsCount, plan.id),
    runs: problem.context.members.map((member) => runSowing(problem.context, member, plan, problem.stores)),
    standing: null,
  };
}

function slotOf(open: OpenPlan, option: Option): Slot {
  const { problem, sowings, garden } = open;
  const sowing = asSowing(open, option, sowings);
  const base = open.eaten.slice(0, triedMembers);
  const added = eatenWith(open, new Set(), [sowing.runs]);
  const [before, after] = [gapOf(problem, base), gapOf(problem, added)];
  const reported = reportSowing(
    problem,
    [...sowings, sowing],
    sowing,
    before.missing - after.missing,
    openTin(garden.seeds),
  );
  return {
    sowing: reported,
    servings: meanServings(problem, sowing.runs),
    fills: eatenBecause(problem, added, base),
    missingFilled: before.missing - after.missing,
    leanFilled: before.lean - after.lean,
    neverShare:
      sowing.runs.filter((run) => run.harvests.every((h) => h.servings <= 0)).length / sowing.runs.length,
  };
}

/** What would have to go where nothing is free: the sowing of the plan that is missed least for it. */
function insteadOf(
  open: OpenPlan,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  request: SlotsRequest,
): SlotInstead | null {
  const { problem, sowings } = open;
  const state = stateOf(problem, sowings, scenarios);
  const options = unlike(
    candidates.flatMap(
      (c) => wellUsed(state, scenarios, c, problem.ground[c.ground]!.stripCount, request.plants) ?? [],
    ),
    triedInstead,
  );
  const base = gapOf(problem, open.eaten.slice(0, triedMembers));
  let best: SlotInstead | null = null;
  for (const { candidate, batches } of options) {
    const { ground, groundFromWeek, groundToWeek } = candidate;
    const holders = holdersOf(sowings, ground, groundFromWeek, groundToWeek)
      .filter((s) => s.state === 'draft' && s.plan.startDay >= request.today)
      .filter((s) => s.groundFromWeek <= groundFromWeek || s.groundToWeek >= groundToWeek)
      .slice(0, triedInstead);
    for (const holder of holders) {
      const fits = Math.min(batches, Math.floor(holder.stripsCount / candidate.stripsPerBatch));
      if (fits < 1) continue;
      const runs = runsOf(problem, inBatches(candidate, fits), triedMembers);
      const gap = gapOf(problem, eatenWith(open, new Set([holder.id]), [runs]));
      const missingChange = gap.missing - base.missing;
      if (best !== null && best.missingChange <= missingChange) continue;
      best = {
        sowing: describe(problem, candidate, fits),
        replaces: { id: holder.id, number: holder.number, kindName: holder.plan.kind.name },
        missingChange,
      };
    }
  }
  return best;
}

function whyNone(problem: PlanningProblem, kind: CropType, possible: number): NoSlotBecause {
  if (possible > 0) return 'nothing-free';
  const holds = problem.ground.filter((g) => kind.growsIn.includes(g.growsIn));
  if (holds.length === 0) return 'no-such-place';
  if (holds.every((g) => g.bannedFamilies.includes(kind.family))) return 'banned';
  return 'never-ready';
}

/** Null where there is no such kind, or it stands for years and is not sown anew. */
export function slotsFor(open: OpenPlan, request: SlotsRequest): SlotsReport | null {
  const { problem, sowings, garden, report } = open;
  const kind = kindOf(garden, request.kind);
  if (kind === undefined || kind.perennial) return null;
  const scenarios = fewScenarios(problem);
  const candidates = makeCandidates({ ...problem, kinds: [kind] }, scenarios, () => {}).filter(
    (c) => c.plan.startDay >= request.today && c.startWeek < problem.fromWeek + problem.shownWeeks,
  );
  const state = stateOf(problem, sowings, scenarios);
  const fitting = (plants: number | null): Option[] =>
    candidates.flatMap((candidate) => {
      const { ground, groundFromWeek, groundToWeek, stripsPerBatch } = candidate;
      const inLedger = state.ledger.room(candidate);
      if (inLedger < 1) return [];
      const strips = freeRuns(problem, sowings, ground, groundFromWeek, groundToWeek).reduce(
        (sum, run) => sum + run.stripsCount,
        0,
      );
      const room = Math.min(inLedger, Math.floor(strips / stripsPerBatch));
      return wellUsed(state, scenarios, candidate, room, plants) ?? [];
    });
  const asked = fitting(request.plants);
  const fewer = asked.length === 0 && request.plants !== null;
  const slots = unlike(fewer ? fitting(null) : asked, tried)
    .map((option) => slotOf(open, option))
    .sort((a, b) => b.missingFilled - a.missingFilled || b.servings - a.servings)
    .slice(0, request.most);
  const limit = problem.limits.find((l) => l.kind === kind.id);
  return {
    schemaVersion: 1,
    about: 'slots',
    kind: kind.id,
    kindName: kind.name,
    startsAs: kind.startsAs,
    from: isoFromDay(problem.fromDay),
    beside: report === null ? 'what-stands' : 'plan',
    inPlan: sowings.filter((s) => s.plan.kind.id === kind.id).map((s) => s.number),
    roleNames: Object.fromEntries(problem.roles.map((role) => [role.id, role.name])),
    slots,
    fewer: fewer && slots.length > 0,
    none: slots.length > 0 ? null : whyNone(problem, kind, candidates.length),
    instead: slots.length > 0 ? null : insteadOf(open, scenarios, candidates, { ...request, plants: null }),
    unwanted: !problem.kinds.some((k) => k.id === kind.id),
    mostPlants: limit === undefined || !Number.isFinite(limit.mostPlants) ? null : limit.mostPlants,
  };
}
