/**
 * Lean stretches and what would mend them. A stretch is a run of weeks of one role in which lean is likelier than not.
 * What binds is found by asking the possible sowings: is there any that feeds these weeks and could still be begun, and
 * is there ground for it as the plan stands? The remedy is the one that fills most for a strip.
 */
import { meanOf, type Week } from '@twelvemonth/basis';
import type { Eaten, KitchenRole } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { roleWeekView } from './simulate.ts';

export interface Shortage {
  readonly role: KitchenRole;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly servingsMissing: number;
  readonly leanWeeks: number;
  readonly binds: 'too-late' | 'ground-open' | 'ground-cover' | 'bench' | 'season' | 'not-worth-it';
  readonly remedy: Remedy | null;
}

export interface Remedy {
  readonly code: 'sow-more' | 'more-cover' | 'more-ground' | 'substitute' | 'buy';
  readonly kind: string | null;
  readonly m2: number;
  readonly byDay: number | null;
  readonly filled: number;
}

const likelyLean = 0.5;
const joinGapWeeks = 2;
const tooLateWithinWeeks = 16;
const triedCandidates = 6;
/** A remedy that fills less of a stretch is none. */
const leastFilledShare = 0.15;
const leastFilledServings = 0.5;

interface Stretch {
  readonly role: number;
  readonly from: number;
  readonly to: number;
  readonly missing: number;
  readonly lean: number;
}

function stretchesOf(problem: PlanningProblem, eaten: readonly Eaten[]): Stretch[] {
  const stretches: Stretch[] = [];
  const { appetite } = problem;
  appetite.roles.forEach((_, role) => {
    let from = -1;
    let to = -1;
    const close = (): void => {
      if (from < 0) return;
      let [missing, lean] = [0, 0];
      for (let w = from; w <= to; w++) {
        const want = appetite.garden[role]![w]!;
        missing += meanOf(eaten.map((e) => Math.max(0, want - e.eaten[role]![w]!)));
        lean += roleWeekView(appetite, eaten, role, w).chanceLean;
      }
      stretches.push({ role, from, to, missing, lean });
      from = -1;
    };
    for (let w = 0; w < problem.shownWeeks; w++) {
      if (roleWeekView(appetite, eaten, role, w).chanceLean < likelyLean) continue;
      if (from >= 0 && w - to > joinGapWeeks) close();
      if (from < 0) from = w;
      to = w;
    }
    close();
  });
  return stretches;
}

/** Mean servings of a batch that can be eaten within the stretch. */
function feeds(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidate: Candidate,
  stretch: Stretch,
): number {
  const role = problem.appetite.roles[stretch.role]!;
  const from = problem.fromWeek + stretch.from;
  const to = problem.fromWeek + stretch.to;
  let sum = 0;
  candidate.lots.forEach((lots, s) => {
    for (const lot of lots) {
      if (lot.role !== role || lot.fromWeek > to || lot.toWeek < from) continue;
      sum += lot.servings * scenarios[s]!.prob;
    }
  });
  return Math.min(sum, stretch.missing);
}

/** Servings of a role's stretch that so many batches of a candidate would fill, found by the kitchen rule with them added. */
export type TryAdding = (
  candidate: Candidate,
  batches: number,
  role: number,
  fromWeek: Week,
  toWeek: Week,
) => number;

export type FreeStrips = (ground: number, weekIndex: number) => number;

function hasRoom(problem: PlanningProblem, free: FreeStrips, candidate: Candidate): boolean {
  const from = Math.max(0, candidate.groundFromWeek - problem.fromWeek);
  const to = Math.min(problem.weekCount, candidate.groundToWeek - problem.fromWeek);
  for (let w = from; w < to; w++) if (free(candidate.ground, w) < candidate.stripsPerBatch) return false;
  return true;
}

function judge(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  free: FreeStrips,
  tryAdding: TryAdding,
  stretch: Stretch,
): Pick<Shortage, 'binds' | 'remedy'> {
  const useful = candidates
    .filter((c) => c.group === null)
    .map((candidate) => ({ candidate, filled: feeds(problem, scenarios, candidate, stretch) }))
    .filter(({ filled }) => filled >= 0.2)
    .sort((a, b) => b.filled - a.filled || a.candidate.startWeek - b.candidate.startWeek);
  const buy: Remedy = { code: 'buy', kind: null, m2: 0, byDay: null, filled: stretch.missing };
  const late = stretch.from < tooLateWithinWeeks;
  if (useful.length === 0) return { binds: late ? 'too-late' : 'season', remedy: buy };
  const tried = useful.slice(0, triedCandidates).map(({ candidate, filled }) => {
    const batches = Math.max(1, Math.ceil(stretch.missing / filled));
    const found = tryAdding(
      candidate,
      batches,
      stretch.role,
      problem.fromWeek + stretch.from,
      problem.fromWeek + stretch.to,
    );
    return { candidate, batches, found, fits: hasRoom(problem, free, candidate) };
  });
  const perBatch = (t: (typeof tried)[number]): number => t.found / t.batches;
  const best = tried.reduce((a, b) =>
    (Number(b.fits) - Number(a.fits) || perBatch(b) - perBatch(a)) > 0 ? b : a,
  );
  if (best.found < Math.max(leastFilledServings, leastFilledShare * stretch.missing))
    return { binds: late ? 'too-late' : 'season', remedy: buy };
  const ground = problem.ground[best.candidate.ground]!;
  const covered = ground.growsIn === 'cover' || ground.growsIn === 'frame';
  const remedy: Remedy = {
    code: best.fits ? 'sow-more' : covered ? 'more-cover' : 'more-ground',
    kind: best.candidate.plan.kind.id,
    m2: Math.round(best.batches * ground.stripM2 * 10) / 10,
    byDay: best.candidate.plan.startDay,
    filled: best.found,
  };
  const binds = best.fits
    ? 'not-worth-it'
    : covered
      ? 'ground-cover'
      : ground.growsIn === 'sill'
        ? 'bench'
        : 'ground-open';
  return { binds, remedy };
}

export function shortagesOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  free: FreeStrips,
  tryAdding: TryAdding,
  eaten: readonly Eaten[],
): Shortage[] {
  return stretchesOf(problem, eaten)
    .filter((stretch) => stretch.missing >= 0.5)
    .map((stretch) => ({
      role: problem.appetite.roles[stretch.role]!,
      fromWeek: problem.fromWeek + stretch.from,
      toWeek: problem.fromWeek + stretch.to,
      servingsMissing: stretch.missing,
      leanWeeks: stretch.lean,
      ...judge(problem, scenarios, candidates, free, tryAdding, stretch),
    }));
}
