/** The garden file as a plan took it: without promises that were begun, crops taken as cleared and demands it dropped. */
import type { Garden } from '@twelvemonth/garden';
import { demandsOf, gardenWith, reportDemand } from '../conflicts/demands.ts';
import type { PlanReport } from '../report/plan-report.ts';

export function gardenOfPlan(garden: Garden, report: PlanReport): Garden {
  const cleared = new Set(report.cleared ?? []);
  const begun = new Set(report.sowings.filter((s) => s.begun !== undefined).map(({ id }) => id));
  const since: Garden = {
    ...garden,
    standing: garden.standing.filter(({ id }) => !cleared.has(id)),
    wishes: garden.wishes.filter((wish) => wish.wish !== 'firm' || !begun.has(wish.id)),
  };
  if (report.conflicts.length === 0) return since;
  const dropped = new Set(report.conflicts.map(({ drop }) => JSON.stringify(drop)));
  const kept = demandsOf(since).all.filter(
    (demand) => !dropped.has(JSON.stringify(reportDemand(since, demand))),
  );
  return gardenWith(since, kept);
}
