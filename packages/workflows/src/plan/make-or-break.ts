/**
 * Make-or-break days: a risky sowing is looked at on the last day on which what would take its place can be begun, and
 * kept or cleared by what is seen there. Its ground is reserved: the fallback stands on the same strips.
 */
import { type Day, dayFromIso, isoFromDay, meanOf, weekOfDay } from '@twelvemonth/basis';
import { type ForecastContext, NEVER, runSowing, type SowingRun, sowingStateOn } from '@twelvemonth/growing';
import {
  type Candidate,
  type FedWeeks,
  fallbacksFor,
  type PlanningProblem,
  partingRule,
  rightShareOf,
  type Scenario,
} from '@twelvemonth/planning';
import type { ReportDecision, ReportSowing } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

/** Failing in one year of five is worth a date; what fails more often than not in four of five is no longer a risk. */
export const riskyFrom = 0.2;
const hopelessFrom = 0.9;
/** A year fails that gives less than this share of the good years. */
const failsBelowShare = 0.5;
/** What brings less than this even in good years is not worth looking at twice, servings. */
const leastServings = 2;
/** A sign that parts worse than this is no rule. */
const leastParting = 0.5;
const leastFallbackShare = 0.2;
const triedFallbacks = 6;
const leastAgeDays = 14;

export interface DecisionInput {
  readonly problem: PlanningProblem;
  readonly check: ForecastContext;
  readonly candidates: readonly Candidate[];
  readonly scenarios: readonly Scenario[];
  readonly freeBench: readonly Float64Array[];
}

function servingsOf(run: SowingRun, problem: PlanningProblem): number {
  const end = problem.fromWeek + problem.weekCount;
  return run.lots.reduce(
    (sum, lot) => sum + (lot.fromWeek < end && lot.toWeek >= problem.fromWeek ? lot.servings : 0),
    0,
  );
}

/** What it gives when all goes well: the mean of the better half of the members. */
export function goodYearServings(servings: readonly number[]): number {
  const better = [...servings].sort((a, b) => b - a).slice(0, Math.max(1, Math.ceil(servings.length / 2)));
  return meanOf(better);
}

/** The middle first day among the members in which it comes. */
function firstEatenDay(runs: readonly SowingRun[]): Day | null {
  const days = runs
    .map((run) => Math.min(NEVER, ...run.harvests.map((harvest) => harvest.firstDay)))
    .filter((day) => day < NEVER)
    .sort((a, b) => a - b);
  return days[Math.floor((days.length - 1) / 2)] ?? null;
}

const weekOfIso = (iso: string): number => weekOfDay(dayFromIso(iso) ?? 0);

function decisionOf(
  input: DecisionInput,
  sowing: ChosenSowing,
  reported: ReportSowing,
): ReportDecision | undefined {
  const { problem, check, candidates, scenarios, freeBench } = input;
  const { plan, runs } = sowing;
  if (plan.kind.perennial) return undefined;
  const servings = runs.map((run) => servingsOf(run, problem));
  const good = goodYearServings(servings);
  const succeeds = servings.map((value) => value >= failsBelowShare * good);
  const chanceFails = succeeds.filter((ok) => !ok).length / Math.max(1, succeeds.length);
  if (good < leastServings || chanceFails < riskyFrom || chanceFails > hopelessFrom) return undefined;
  const eatenDay = firstEatenDay(runs);
  if (eatenDay === null) return undefined;
  const feeds = reported.reason.feeds.map(
    (fed): FedWeeks => ({
      role: fed.role as FedWeeks['role'],
      fromWeek: weekOfIso(fed.from),
      toWeek: weekOfIso(fed.to),
      servings: fed.servings,
    }),
  );
  const fallbacks = fallbacksFor(problem, scenarios, candidates, freeBench, {
    ground: sowing.ground,
    stripsCount: sowing.stripsCount,
    groundToWeek: sowing.groundToWeek,
    feeds,
    fromDay: Math.max(problem.fromDay + 1, plan.startDay + leastAgeDays),
    toDay: eatenDay - 1,
  });
  for (const fallback of fallbacks.slice(0, triedFallbacks)) {
    if (fallback.servings < leastFallbackShare * good) break;
    const later = fallback.candidate.plan;
    const day = later.startDay;
    const rule = partingRule(
      problem.context.members.map((member) => sowingStateOn(problem.context, member, plan, day)),
      succeeds,
    );
    if (rule === null || rule.parts < leastParting) continue;
    const unseen = check.members.map((member) => runSowing(check, member, plan, problem.stores));
    const succeedsUnseen = unseen.map((run) => servingsOf(run, problem) >= failsBelowShare * good);
    const states = check.members.map((member) => sowingStateOn(check, member, plan, day));
    return {
      decisionDay: isoFromDay(day),
      rule: { code: rule.code, value: rule.value },
      chanceFails,
      failsWhenSeen: rule.failsWhenSeen,
      failsWhenNot: rule.failsWhenNot,
      rightShare: rightShareOf(rule, states, succeedsUnseen),
      fallback: {
        kind: later.kind.id,
        kindName: later.kind.name,
        startsAs: later.kind.startsAs,
        routeId: later.route,
        sow: isoFromDay(later.startDay),
        plants: Math.max(1, Math.round(later.plantsCount * fallback.batches)),
        clear: later.clearDay === null ? reported.clear : isoFromDay(later.clearDay),
        servings: fallback.servings,
      },
    };
  }
  return undefined;
}

/** The report's sowings, the risky ones with their make-or-break day. */
export function withDecisions(
  input: DecisionInput,
  sowings: readonly ChosenSowing[],
  reported: readonly ReportSowing[],
): ReportSowing[] {
  return reported.map((one, i) => {
    const decision = decisionOf(input, sowings[i]!, one);
    return decision === undefined ? one : { ...one, decision };
  });
}
