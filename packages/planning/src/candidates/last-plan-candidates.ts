/**
 * The sowings of the last plan that are still to be begun, as candidates: same day, ground, route and end as people were
 * told, however the weeks that are looked at have shifted since. Their work and ground count for less: what was promised
 * is moved only for more than a trifle.
 */

import { mondayOf } from '@twelvemonth/basis';
import type { Candidate, LastSowing, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { costOf } from '../solve/greedy.ts';
import { candidateOf, probeOf } from './make-candidates.ts';
import { careOf } from './place-care.ts';
import { plantedWhenAllowed } from './planting-days.ts';
import { canGrowIn, plantsPerStrip, routeChoice } from './routes.ts';

/** Part of its price that a sowing is let off for staying as it was. Judged: 0.5 to 1 makes little difference. */
const staysShare = 0.8;

function staying(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  last: LastSowing,
): Candidate | null {
  const kind = problem.kinds.find(({ id }) => id === last.kind);
  const ground = problem.ground[last.ground];
  const choice = routeChoice(problem, last.route);
  if (kind === undefined || ground === undefined || choice === null || !canGrowIn(kind, ground)) return null;
  const plan = {
    id: `${kind.id}/${last.route}/${ground.id}/${last.startDay}`,
    kind,
    route: last.route,
    startDay: last.startDay,
    startSpreadDays: 0,
    stages: choice.stages,
    exposure: ground.exposure,
    plantDay: choice.stages.length === 0 ? null : mondayOf(last.groundFromWeek),
    clearDay: null,
    plantsCount: plantsPerStrip(kind, ground),
    protection: problem.protection,
    keepsSeed: problem.savesSeedOf.has(kind.id),
    care: careOf(ground),
  };
  if (!plantedWhenAllowed(problem, plan)) return null;
  const probe = probeOf(problem, scenarios, plan);
  if (probe === null) return null;
  const groundDay = mondayOf(last.groundFromWeek - last.heldWeeks);
  const candidate = candidateOf(
    problem,
    scenarios,
    ground,
    last.ground,
    choice,
    { ...probe, groundDay },
    last.clearDay,
    last.heldWeeks,
  );
  return { ...candidate, stays: { id: last.id, bonus: staysShare * costOf(candidate) } };
}

const samePlan = (a: Candidate, b: Candidate): boolean =>
  a.plan.kind === b.plan.kind &&
  a.ground === b.ground &&
  a.plan.route === b.plan.route &&
  a.plan.startDay === b.plan.startDay &&
  a.plan.plantDay === b.plan.plantDay &&
  a.plan.clearDay === b.plan.clearDay;

/** The candidates with those of the last plan before them, each in place of its like. */
export function withLastPlan(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
): readonly Candidate[] {
  if (problem.lastPlan === null) return candidates;
  const found = problem.lastPlan.sowings.flatMap((last) => staying(problem, scenarios, last) ?? []);
  const stay = found.filter((candidate, i) => !found.slice(0, i).some((other) => samePlan(other, candidate)));
  return [...stay, ...candidates.filter((candidate) => !stay.some((own) => samePlan(own, candidate)))];
}
