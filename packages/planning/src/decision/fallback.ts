/**
 * Fallbacks of a risky sowing: possible sowings that fit its own strips from a day on, are off them when it would have
 * been, and feed its weeks. Of each kind the latest start that still gives nearly as much as its best one.
 */
import { type Day, weekOfDay } from '@twelvemonth/basis';
import type { KitchenRole, Lot } from '@twelvemonth/growing';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';

export interface FedWeeks {
  readonly role: KitchenRole;
  readonly fromWeek: number;
  readonly toWeek: number;
  /** What the risky sowing was to give there. */
  readonly servings: number;
}

export interface RiskySowing {
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundToWeek: number;
  readonly feeds: readonly FedWeeks[];
  /** First and last day on which the fallback may be begun. */
  readonly fromDay: Day;
  readonly toDay: Day;
}

export interface Fallback {
  readonly candidate: Candidate;
  readonly batches: number;
  /** Servings of it in the weeks and roles of the risky sowing, no more than that was to give; mean over scenarios. */
  readonly servings: number;
}

/** A start is late enough while it gives this share of what the kind's best one gives. */
const nearlyAsMuchShare = 0.8;

function servingsFor(feeds: readonly FedWeeks[], lots: readonly Lot[], batches: number): number {
  return feeds.reduce((sum, fed) => {
    const own = lots.filter(
      (lot) => lot.role === fed.role && lot.fromWeek <= fed.toWeek && lot.toWeek >= fed.fromWeek,
    );
    return sum + Math.min(fed.servings, batches * own.reduce((all, lot) => all + lot.servings, 0));
  }, 0);
}

function benchHasRoom(
  problem: PlanningProblem,
  freeBench: readonly Float64Array[],
  candidate: Candidate,
  batches: number,
): boolean {
  return candidate.bench.every((use) => {
    for (let week = use.fromWeek; week < use.toWeek; week++) {
      const free = freeBench[use.bench]![week - problem.fromWeek];
      if (free !== undefined && free < use.m2 * batches - 1e-9) return false;
    }
    return true;
  });
}

/** Best first: what feeds most of the same weeks. Empty where nothing that fits feeds any of them. */
export function fallbacksFor(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
  freeBench: readonly Float64Array[],
  risky: RiskySowing,
): Fallback[] {
  const batches = Math.max(1, Math.floor(risky.stripsCount));
  const byKind = new Map<string, Fallback[]>();
  for (const candidate of candidates) {
    const { plan } = candidate;
    if (candidate.group !== null || candidate.ground !== risky.ground || candidate.stripsPerBatch !== 1)
      continue;
    if (plan.startDay < risky.fromDay || plan.startDay > risky.toDay) continue;
    if (candidate.groundToWeek > risky.groundToWeek) continue;
    if (candidate.groundFromWeek < weekOfDay(plan.startDay)) continue;
    if (batches > candidate.mostBatches || !benchHasRoom(problem, freeBench, candidate, batches)) continue;
    const servings = candidate.lots.reduce(
      (sum, lots, s) => sum + servingsFor(risky.feeds, lots, batches) * scenarios[s]!.prob,
      0,
    );
    if (servings <= 0) continue;
    const own = byKind.get(plan.kind.id) ?? [];
    byKind.set(plan.kind.id, [...own, { candidate, batches, servings }]);
  }
  return [...byKind.values()]
    .map((own) => {
      const most = own.reduce((best, one) => Math.max(best, one.servings), 0);
      const late = own.filter((one) => one.servings >= nearlyAsMuchShare * most);
      return late.reduce((a, b) => (b.candidate.plan.startDay > a.candidate.plan.startDay ? b : a));
    })
    .sort(
      (a, b) => b.servings - a.servings || (a.candidate.plan.kind.id < b.candidate.plan.kind.id ? -1 : 1),
    );
}
