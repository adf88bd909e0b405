/**
 * Lean stretches and what would mend them. A stretch is a run of weeks of one role in which lean is likelier than not.
 * What binds is found by asking the possible sowings: is there any that feeds these weeks, itself or by standing in for
 * the role, that can still be begun, and is there ground, bench and time for it as the plan stands? The most promising
 * are tried by the kitchen rule, those that fit first; of what fills about as much the one that takes least is named.
 */
import { type Day, meanOf, type Week } from '@twelvemonth/basis';
import type { Eaten, KitchenRole } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import type { GroundLedger } from '../solve/ground-ledger.ts';
import { bindsOn, type Scarce } from './scarce.ts';
import { roleWeekView } from './simulate.ts';

export interface Shortage {
  readonly role: KitchenRole;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly servingsMissing: number;
  readonly leanWeeks: number;
  readonly binds: Scarce | 'too-late' | 'season' | 'not-worth-it';
  readonly remedy: Remedy | null;
}

export interface Remedy {
  /** 'substitute': sown to stand in for the role. */
  readonly code:
    | 'sow-more'
    | 'more-cover'
    | 'more-ground'
    | 'more-bench'
    | 'more-hours'
    | 'substitute'
    | 'buy';
  readonly kind: string | null;
  readonly m2: number;
  readonly byDay: number | null;
  readonly filled: number;
  /** What was tried and found to help, and so many batches of it; null: to be bought. */
  readonly candidate: Candidate | null;
  readonly batches: number;
}

/** A role-week is called lean where lean is at least so likely. */
export const likelyLean = 0.5;
const joinGapWeeks = 2;
const leastMissingServings = 0.5;
/** Tried by the kitchen rule: so many that fit, and so many that do not; of one kind no more than two. */
const triedFitting = 10;
const triedOthers = 6;
const triedOfKind = 2;
/** What fills this share of the best is as good, if it takes less. */
const nearlyShare = 0.75;
/** A remedy that fills less of a stretch is none. */
const leastFilledShare = 0.15;
const leastFilledServings = 0.5;
const leastFed = 0.2;
const aYearWeeks = 52;
/** Without the same weeks of another year to compare with, what is nearer than this is too late to be grown for. */
const tooLateWithinWeeks = 16;

/** Weeks as indices, both inclusive; role as index. */
export interface LeanStretch {
  readonly role: number;
  readonly from: number;
  readonly to: number;
  readonly missing: number;
  readonly lean: number;
}

export function stretchOf(
  problem: PlanningProblem,
  eaten: readonly Eaten[],
  role: number,
  from: number,
  to: number,
): LeanStretch {
  const { appetite } = problem;
  let [missing, lean] = [0, 0];
  for (let w = from; w <= to; w++) {
    const want = appetite.garden[role]![w]!;
    missing += meanOf(eaten.map((e) => Math.max(0, want - e.eaten[role]![w]!)));
    lean += roleWeekView(appetite, eaten, role, w).chanceLean;
  }
  return { role, from, to, missing, lean };
}

export function leanStretches(problem: PlanningProblem, eaten: readonly Eaten[]): LeanStretch[] {
  const stretches: LeanStretch[] = [];
  problem.appetite.roles.forEach((_, role) => {
    let [from, to] = [-1, -1];
    const close = (): void => {
      if (from >= 0) stretches.push(stretchOf(problem, eaten, role, from, to));
      from = -1;
    };
    for (let w = 0; w < problem.shownWeeks; w++) {
      if (roleWeekView(problem.appetite, eaten, role, w).chanceLean < likelyLean) continue;
      if (from >= 0 && w - to > joinGapWeeks) close();
      if (from < 0) from = w;
      to = w;
    }
    close();
  });
  return stretches;
}

/** Mean servings of a batch that can be eaten in a role between two absolute weeks, substitutes at their exchange. */
function feeds(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidate: Candidate,
  role: number,
  from: Week,
  to: Week,
): number {
  const own = problem.appetite.roles[role]!;
  const standIns = problem.roles.find((row) => row.id === own)?.substitutes ?? [];
  let sum = 0;
  candidate.lots.forEach((lots, s) => {
    for (const lot of lots) {
      if (lot.fromWeek > to || lot.toWeek < from) continue;
      const standIn = standIns.find((other) => other.role === lot.role);
      if (lot.role === own) sum += lot.servings * scenarios[s]!.prob;
      else if (standIn !== undefined && lot.form !== 'store')
        sum += (lot.servings / standIn.exchange) * standIn.mostShare * scenarios[s]!.prob;
    }
  });
  return sum;
}

/** Servings of a role's stretch that so many batches of a candidate would fill, found by the kitchen rule with them added. */
export type TryAdding = (
  candidate: Candidate,
  batches: number,
  role: number,
  fromWeek: Week,
  toWeek: Week,
) => number;

export interface ShortageInput {
  readonly problem: PlanningProblem;
  readonly scenarios: readonly Scenario[];
  readonly candidates: readonly Candidate[];
  /** With all of the plan taken from it. */
  readonly ledger: GroundLedger;
  readonly tryAdding: TryAdding;
  /** Nothing can be begun before it. */
  readonly fromDay: Day;
}

interface Tried {
  readonly candidate: Candidate;
  readonly batches: number;
  readonly fits: boolean;
  readonly found: number;
  readonly stripWeeks: number;
}

function mostPromising(input: ShortageInput, stretch: LeanStretch): Tried[] {
  const { problem, scenarios, ledger } = input;
  const [from, to] = [problem.fromWeek + stretch.from, problem.fromWeek + stretch.to];
  const useful = input.candidates
    .filter((c) => c.group === null && c.plan.startDay >= input.fromDay)
    .map((candidate) => {
      const fed = feeds(problem, scenarios, candidate, stretch.role, from, to);
      return { candidate, fed, filled: Math.min(fed, stretch.missing) };
    })
    .filter(({ filled }) => filled >= leastFed)
    .sort((a, b) => b.filled - a.filled || b.fed - a.fed || a.candidate.startWeek - b.candidate.startWeek);
  const tried: Tried[] = [];
  const left = { fitting: triedFitting, others: triedOthers };
  const ofKind = new Map<string, number>();
  for (const { candidate, filled } of useful) {
    const room = ledger.room(candidate);
    const fits = room >= 1;
    const key = `${candidate.plan.kind.id}/${fits}`;
    const list = fits ? 'fitting' : 'others';
    if (left[list] === 0 || (ofKind.get(key) ?? 0) >= triedOfKind) continue;
    left[list]--;
    ofKind.set(key, (ofKind.get(key) ?? 0) + 1);
    const wanted = Math.max(1, Math.ceil(stretch.missing / filled));
    const batches = Math.min(wanted, fits ? room : candidate.mostBatches);
    tried.push({
      candidate,
      batches,
      fits,
      found: input.tryAdding(candidate, batches, stretch.role, from, to),
      stripWeeks: batches * candidate.stripsPerBatch * (candidate.groundToWeek - candidate.groundFromWeek),
    });
  }
  return tried;
}

/** Of those that fill nearly as much as the best the one that takes least. */
function cheapest(tried: readonly Tried[], least: number): Tried | null {
  const most = tried.reduce((best, t) => Math.max(best, t.found), 0);
  if (most < least) return null;
  return tried
    .filter((t) => t.found >= nearlyShare * most)
    .reduce((a, b) => (b.stripWeeks < a.stripWeeks ? b : a));
}

/** Begun in time it could be grown: possible sowings feed the same weeks of another year. */
function isTooLate({ problem, scenarios, candidates }: ShortageInput, stretch: LeanStretch): boolean {
  const [from, to] = [
    problem.fromWeek + stretch.from + aYearWeeks,
    problem.fromWeek + stretch.to + aYearWeeks,
  ];
  if (from >= problem.fromWeek + problem.weekCount) return stretch.from < tooLateWithinWeeks;
  return candidates.some(
    (c) => c.group === null && feeds(problem, scenarios, c, stretch.role, from, to) >= leastFed,
  );
}

const codeOf: Readonly<Record<Scarce, Remedy['code']>> = {
  'ground-cover': 'more-cover',
  'ground-open': 'more-ground',
  bench: 'more-bench',
  hours: 'more-hours',
};

export function judgeStretch(input: ShortageInput, stretch: LeanStretch): Pick<Shortage, 'binds' | 'remedy'> {
  const { problem } = input;
  const tried = mostPromising(input, stretch);
  const least = Math.max(leastFilledServings, leastFilledShare * stretch.missing);
  const fitting = cheapest(
    tried.filter((t) => t.fits),
    least,
  );
  const best = fitting ?? cheapest(tried, least);
  if (best === null) {
    const binds = isTooLate(input, stretch) ? 'too-late' : 'season';
    const buy = { kind: null, m2: 0, byDay: null, filled: stretch.missing, candidate: null, batches: 0 };
    return { binds, remedy: { code: 'buy', ...buy } };
  }
  const { candidate, batches, found } = best;
  const { kind, startDay } = candidate.plan;
  const scarce = fitting === null ? bindsOn(problem, input.ledger, candidate) : null;
  const role = problem.appetite.roles[stretch.role]!;
  const own = kind.harvests.some((harvest) => harvest.role === role);
  return {
    binds: scarce ?? 'not-worth-it',
    remedy: {
      code: scarce === null ? (own ? 'sow-more' : 'substitute') : codeOf[scarce],
      kind: kind.id,
      m2:
        Math.round(batches * candidate.stripsPerBatch * problem.ground[candidate.ground]!.stripM2 * 10) / 10,
      byDay: startDay,
      filled: found,
      candidate,
      batches,
    },
  };
}

export function shortagesOf(input: ShortageInput, eaten: readonly Eaten[]): Shortage[] {
  const { problem } = input;
  return leanStretches(problem, eaten)
    .filter((stretch) => stretch.missing >= leastMissingServings)
    .map((stretch) => ({
      role: problem.appetite.roles[stretch.role]!,
      fromWeek: problem.fromWeek + stretch.from,
      toWeek: problem.fromWeek + stretch.to,
      servingsMissing: stretch.missing,
      leanWeeks: stretch.lean,
      ...judgeStretch(input, stretch),
    }));
}
