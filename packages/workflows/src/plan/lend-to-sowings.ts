/**
 * Kit and forecast of each sowing: mesh, nets and canes by their hazards, then fleece for the weeks of its cold nights.
 * Where kit is refused, the sowing is run again without it, so that its forecast is that of an unprotected crop.
 */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import { fleeceNight, NEVER, runSowing, type SowingPlan, type SowingRun } from '@twelvemonth/growing';
import {
  type KitAsker,
  type KitId,
  type KitUse,
  kitLedger,
  lendKit,
  type PlanningProblem,
  stripLengthM,
} from '@twelvemonth/planning';

export interface Lent {
  readonly plan: SowingPlan;
  readonly runs: readonly SowingRun[];
  readonly kit: readonly KitUse[];
  readonly withoutKit: readonly KitId[];
}

const without = (plan: SowingPlan, kits: readonly KitId[]): SowingPlan =>
  kits.length === 0
    ? plan
    : { ...plan, protection: plan.protection.filter((kit) => !(kits as readonly string[]).includes(kit)) };

/** Fleece stays at hand through milder weeks between. Judged. */
const staysForWeeks = 3;

/** Weeks in which fleece is to be at hand: from the first cold night to the last, in pieces where long apart. */
function fleeceUses(
  problem: PlanningProblem,
  asker: KitAsker,
  plan: SowingPlan,
  runs: readonly SowingRun[],
): KitUse[] {
  const material = problem.context.exposures.get(plan.exposure)?.cover.material;
  const owned = problem.ownedKit?.fleece ?? 0;
  if (material !== 'open' || !plan.protection.includes('fleece') || owned <= 0) return [];
  const sown = runs.map((run, i) => ({
    bed: problem.context.members[i]!.clockOf(plan.exposure),
    groundDay: run.groundDay,
    clearDay: run.clearDay,
    firstDays: run.harvests.map((harvest) => harvest.firstDay),
  }));
  const toDay = Math.max(...runs.map((run) => run.clearDay));
  const weeks: Week[] = [];
  let from = Math.max(problem.fromDay, Math.min(...runs.map((run) => run.groundDay)));
  while (from < NEVER && from < toDay) {
    const night = fleeceNight(plan.kind, sown, from, toDay);
    if (night === null) break;
    weeks.push(weekOfDay(Math.max(night.day, problem.fromDay)));
    from = Math.max(from, night.day) + 7;
  }
  const uses: { kit: 'fleece'; fromWeek: Week; toWeek: Week; amount: number; why: string[] }[] = [];
  for (const week of weeks) {
    const open = uses.at(-1);
    if (open !== undefined && week <= open.toWeek + staysForWeeks)
      open.toWeek = Math.max(open.toWeek, week + 1);
    else
      uses.push({
        kit: 'fleece',
        fromWeek: week,
        toWeek: week + 1,
        amount: asker.stripsCount * stripLengthM,
        why: ['frost'],
      });
  }
  return uses;
}

export function lendToSowings(
  problem: PlanningProblem,
  askers: readonly KitAsker[],
): ReadonlyMap<string, Lent> {
  const ledger = kitLedger(problem);
  const { lent, refused } = lendKit(problem, ledger, askers);
  const runsOf = (plan: SowingPlan): SowingRun[] =>
    problem.context.members.map((member) => runSowing(problem.context, member, plan, problem.stores));
  const byStart = [...askers].sort(
    (a, b) =>
      Number(b.standing) - Number(a.standing) ||
      a.groundFromWeek - b.groundFromWeek ||
      (a.id < b.id ? -1 : 1),
  );
  const found = new Map<string, Lent>();
  for (const asker of byStart) {
    const withoutKit = [...(refused.get(asker.id) ?? [])];
    let plan = without(asker.plan, withoutKit);
    let runs = runsOf(plan);
    const fleece = fleeceUses(problem, asker, plan, runs);
    const hasFleece = ledger.take(fleece);
    if (!hasFleece) {
      withoutKit.push('fleece');
      plan = without(plan, ['fleece']);
      runs = runsOf(plan);
    }
    const kit = [...(lent.get(asker.id) ?? []), ...(hasFleece ? fleece : [])];
    found.set(asker.id, { plan, runs, kit, withoutKit });
  }
  return found;
}
