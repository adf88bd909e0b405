/** Which sowings could still be begun to make good what was lost, measured by the kitchen rule with them added. */
import { type Day, isoFromDay, meanOf } from '@twelvemonth/basis';
import { type Eaten, eat, type Lot, runSowing, type SowingPlan } from '@twelvemonth/growing';
import { type Choice, type PlanningProblem, refill } from '@twelvemonth/planning';
import { scenarioCount } from '../plan/scenario-count.ts';
import type { WhatIfRemedy } from '../report/what-if-report.ts';
import type { LivedAgain } from './lived-again.ts';

const mostRemedies = 6;
/** A sowing that brings back less than this is not worth a line, servings. */
const leastFilled = 0.3;
const longestDelayWeeks = 8;
const stillWorthShare = 0.8;
const triedMembers = 8;

/** Lots by member. */
type MemberLots = readonly (readonly Lot[])[];

interface Tried {
  readonly choice: Choice;
  readonly plan: SowingPlan;
  readonly lots: MemberLots;
  readonly filled: number;
}

const planOf = ({ candidate, batches }: Choice): SowingPlan => ({
  ...candidate.plan,
  plantsCount: candidate.plan.plantsCount * batches,
});

/** Servings of those lost that are eaten after all: what is eaten on top of that in any role and week does not count. */
function broughtBack(
  lostServings: readonly Float64Array[],
  without: readonly Eaten[],
  withAdded: readonly Eaten[],
): number {
  let sum = 0;
  lostServings.forEach((weeks, r) => {
    weeks.forEach((lost, w) => {
      if (lost <= 0) return;
      const more =
        meanOf(withAdded.map((e) => e.eaten[r]![w]!)) - meanOf(without.map((e) => e.eaten[r]![w]!));
      sum += Math.min(lost, more);
    });
  });
  return sum;
}

function eatenWith(lived: LivedAgain, added: readonly MemberLots[]): Eaten[] {
  const { appetite, roles } = lived.problem;
  return lived.lots.map((lots, m) => eat([...lots, ...added.flatMap((more) => more[m]!)], appetite, roles));
}

function lastWorthwhileDay(problem: PlanningProblem, plan: SowingPlan): Day {
  const { context, stores } = problem;
  const end = problem.fromWeek + problem.weekCount;
  const servings = (later: SowingPlan): number =>
    meanOf(
      context.members
        .slice(0, triedMembers)
        .map((member) =>
          runSowing(context, member, later, stores).lots.reduce(
            (sum, lot) => sum + (lot.fromWeek < end ? lot.servings : 0),
            0,
          ),
        ),
    );
  const base = servings(plan);
  let safe = 0;
  while (safe < longestDelayWeeks) {
    const later = { ...plan, startDay: plan.startDay + (safe + 1) * 7 };
    if (servings(later) < stillWorthShare * base) break;
    safe++;
  }
  return plan.startDay + safe * 7;
}

export interface Remedies {
  readonly remedies: readonly WhatIfRemedy[];
  readonly eaten: readonly Eaten[];
}

export function remediesFor(
  lived: LivedAgain,
  lostServings: readonly Float64Array[],
  knownDay: Day,
  stopRequested: () => boolean,
): Remedies {
  const { problem, kept, eaten } = lived;
  const { context, stores } = problem;
  const choices = refill({
    problem,
    fromDay: knownDay,
    kept,
    lostServings,
    scenarioCount,
    stopRequested,
  });
  const gainWith = (added: readonly MemberLots[]): number =>
    broughtBack(lostServings, eaten, eatenWith(lived, added));
  const tried = choices
    .map((choice): Tried => {
      const plan = planOf(choice);
      const lots = context.members.map((member) => runSowing(context, member, plan, stores).lots);
      return { choice, plan, lots, filled: gainWith([lots]) };
    })
    .sort((a, b) => b.filled - a.filled || a.plan.startDay - b.plan.startDay);
  const taken: Tried[] = [];
  let gained = 0;
  for (const one of tried) {
    if (taken.length >= mostRemedies || stopRequested()) break;
    const all = gainWith([...taken.map((t) => t.lots), one.lots]);
    if (all - gained < leastFilled) continue;
    taken.push({ ...one, filled: all - gained });
    gained = all;
  }
  const remedies = taken.map(({ choice, plan, lots, filled }): WhatIfRemedy => {
    const { candidate, batches } = choice;
    const ground = problem.ground[candidate.ground]!;
    return {
      kind: plan.kind.id,
      kindName: plan.kind.name,
      startsAs: plan.kind.startsAs,
      sow: isoFromDay(plan.startDay),
      by: isoFromDay(lastWorthwhileDay(problem, plan)),
      plants: Math.max(1, Math.round(plan.plantsCount)),
      m2: Math.round(batches * candidate.stripsPerBatch * ground.stripM2 * 100) / 100,
      placeNames: [...new Set(ground.beds.map((bed) => bed.placeName))],
      roles: [...new Set(lots.flatMap((of) => of.map((lot) => lot.role)))],
      filled,
    };
  });
  const withAll =
    taken.length === 0
      ? eaten
      : eatenWith(
          lived,
          taken.map((t) => t.lots),
        );
  return { remedies, eaten: withAll };
}
