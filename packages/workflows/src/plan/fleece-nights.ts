import { type FleeceNight, fleeceNight } from '@twelvemonth/growing';
import type { PlanningProblem } from '@twelvemonth/planning';
import type { ChosenSowing } from './chosen-sowings.ts';

/** By sowing id: the night from which fleece is to be at hand, for sowings of open ground whose plan counts on it. */
export function fleeceNights(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  fromDay: number,
): ReadonlyMap<string, FleeceNight> {
  const found = new Map<string, FleeceNight>();
  for (const { id, plan, runs } of sowings) {
    const material = problem.context.exposures.get(plan.exposure)?.cover.material;
    if (material !== 'open' || !plan.protection.includes('fleece')) continue;
    const sown = runs.map((run, i) => ({
      bed: problem.context.members[i]!.clockOf(plan.exposure),
      groundDay: run.groundDay,
      clearDay: run.clearDay,
      firstDays: run.harvests.map((harvest) => harvest.firstDay),
    }));
    const from = Math.max(fromDay, Math.min(...runs.map((run) => run.groundDay)));
    const night = fleeceNight(plan.kind, sown, from, Math.max(...runs.map((run) => run.clearDay)));
    if (night !== null) found.set(id, night);
  }
  return found;
}
