/** The plan lived through members once more, with what went wrong. */
import { mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import {
  type Eaten,
  eat,
  type ForecastContext,
  type Lot,
  openedKey,
  runSowing,
  type SowingPlan,
  withTornCover,
} from '@twelvemonth/growing';
import type { PlanningProblem } from '@twelvemonth/planning';
import type { OpenPlan } from '../argue/open-plan.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { Changes, Gale } from './changes.ts';

export interface LivedAgain {
  /** Problem with the members, exposures and ground as they are after the change. */
  readonly problem: PlanningProblem;
  /** What is left of the sowings; a lost one gives up its ground on the day. */
  readonly kept: readonly ChosenSowing[];
  /** By member of that problem: all lots, and what is eaten of them. */
  readonly lots: readonly (readonly Lot[])[];
  readonly eaten: readonly Eaten[];
}

/** What is left of a lot when its plants are lost in a week: what was taken in or eaten before. */
function lotBefore(lot: Lot, lostWeek: Week): Lot | null {
  const inStore = lot.storeFromWeek !== null && lot.form === 'store';
  if (lot.fromWeek < lostWeek && (inStore || lot.form === 'fresh')) return lot;
  if (lot.fromWeek >= lostWeek) return null;
  return { ...lot, toWeek: lostWeek - 1, storeFromWeek: null, store: null };
}

const isUnder = (context: ForecastContext, exposure: string, cover: string): boolean =>
  context.exposures.get(exposure)?.cover.id === cover;

/** Whether the cover shelters a sowing on the day of the gale or later, and how. */
export function shelterOf(
  context: ForecastContext,
  sowing: ChosenSowing,
  gale: Gale,
): 'grows' | 'raised' | null {
  const { plan, groundFromWeek, groundToWeek } = sowing;
  const under = (key: string): boolean => isUnder(context, key, gale.cover.id);
  if (under(plan.exposure)) return mondayOf(groundToWeek) > gale.day ? 'grows' : null;
  const isRaised = plan.stages.some((stage) => under(stage.exposure));
  return isRaised && mondayOf(groundFromWeek) > gale.day ? 'raised' : null;
}

/** What goes into its ground after the gale goes into uncovered ground. */
function tornPlan(plan: OpenPlan, sowing: ChosenSowing, gale: Gale): SowingPlan {
  const { context } = plan.problem;
  const after = mondayOf(sowing.groundFromWeek) > gale.day;
  return after && isUnder(context, sowing.plan.exposure, gale.cover.id)
    ? { ...sowing.plan, exposure: openedKey(sowing.plan.exposure) }
    : sowing.plan;
}

function problemAfter(plan: OpenPlan, changes: Changes): PlanningProblem {
  const { problem } = plan;
  const { gale, extreme } = changes;
  const torn =
    gale === null
      ? problem.context
      : withTornCover(problem.context, {
          cover: gale.cover.id,
          day: gale.day,
          hasFleece: problem.protection.includes('fleece'),
        });
  const members = extreme === null ? torn.members : extreme.members.map((m) => torn.members[m]!);
  const ground =
    gale === null
      ? problem.ground
      : problem.ground.map((own) =>
          own.bench === null && isUnder(problem.context, own.exposure, gale.cover.id)
            ? { ...own, exposure: openedKey(own.exposure), growsIn: 'open' as const }
            : own,
        );
  return { ...problem, ground, context: { ...torn, members } };
}

export function liveAgain(plan: OpenPlan, changes: Changes): LivedAgain {
  const problem = problemAfter(plan, changes);
  const { context, stores, stock, appetite, roles } = problem;
  const { loss, gale, extreme } = changes;
  const chosen = extreme?.members ?? plan.problem.context.members.map((_, m) => m);
  const kept = plan.sowings.map((sowing): ChosenSowing => {
    const changed = gale !== null && shelterOf(plan.problem.context, sowing, gale) !== null;
    const own = changed ? tornPlan(plan, sowing, gale) : sowing.plan;
    const runs = changed
      ? context.members.map((member) => runSowing(context, member, own, stores))
      : chosen.map((m) => sowing.runs[m]!);
    if (sowing !== loss?.sowing) return { ...sowing, plan: own, runs };
    const lostWeek = weekOfDay(loss.day);
    return {
      ...sowing,
      plan: own,
      groundToWeek: Math.max(sowing.groundFromWeek, Math.min(sowing.groundToWeek, lostWeek + 1)),
      bench: sowing.bench.map((use) => ({ ...use, toWeek: Math.min(use.toWeek, lostWeek + 1) })),
      runs: runs.map((run) => ({ ...run, lots: run.lots.flatMap((lot) => lotBefore(lot, lostWeek) ?? []) })),
    };
  });
  const lots = context.members.map((_, m) => [...stock, ...kept.flatMap((sowing) => sowing.runs[m]!.lots)]);
  return { problem, kept, lots, eaten: lots.map((all) => eat(all, appetite, roles)) };
}
