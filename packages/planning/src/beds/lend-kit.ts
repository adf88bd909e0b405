/**
 * Who gets the kit: what stands already first, then the sowings in which it keeps off most, each whole or not at all. A
 * sowing that gets none is planned, and forecast, without. Canes are never refused: what is short is to be got.
 */
import type { Week } from '@twelvemonth/basis';
import { hazardsOf, type SowingPlan } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import { type KitId, type KitUse, kitNeeds } from './kit-needs.ts';

export interface KitAsker {
  readonly id: string;
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly standing: boolean;
}

export interface KitLedger {
  /** Takes it when there is enough in all its weeks; false: there is not, and nothing was taken. */
  take(uses: readonly KitUse[]): boolean;
  /** Pieces or metres that are out in a week. */
  out(kit: KitId, week: Week): number;
}

const tolerance = 1e-9;

export function kitLedger(problem: PlanningProblem): KitLedger {
  const owned = problem.ownedKit;
  const out = new Map<string, number>();
  const keyOf = (kit: KitId, week: Week): string => `${kit}/${week}`;
  const weeksOf = ({ fromWeek, toWeek }: KitUse): Week[] =>
    Array.from({ length: Math.max(0, toWeek - fromWeek) }, (_, i) => fromWeek + i);
  return {
    out: (kit, week) => out.get(keyOf(kit, week)) ?? 0,
    take: (uses) => {
      const fits = uses.every((use) =>
        weeksOf(use).every(
          (week) =>
            use.kit === 'canes' ||
            owned === undefined ||
            (out.get(keyOf(use.kit, week)) ?? 0) + use.amount <= owned[use.kit] + tolerance,
        ),
      );
      if (!fits) return false;
      for (const use of uses)
        for (const week of weeksOf(use)) {
          const key = keyOf(use.kit, week);
          out.set(key, (out.get(key) ?? 0) + use.amount);
        }
      return true;
    },
  };
}

/** Kit of a whole sowing. */
export function kitOfSowing(problem: PlanningProblem, asker: KitAsker): KitUse[] {
  if (problem.ownedKit === undefined) return [];
  const { plan, stripsCount, groundFromWeek, groundToWeek } = asker;
  return kitNeeds(
    plan.kind,
    problem.ground[asker.ground]!,
    problem.ownedKit,
    plan.stages.length > 0,
    problem.context.site.latitudeDeg < 0,
    groundFromWeek,
    groundToWeek,
  ).map((use) => ({ ...use, amount: use.amount * stripsCount }));
}

const keptOffShare = ({ plan }: KitAsker, kit: KitId): number =>
  hazardsOf(plan.kind.crop).reduce(
    (sum, hazard) => sum + (hazard.preventedBy === kit ? hazard.lossShare * hazard.preventedShare : 0),
    0,
  );

/** Mesh, nets and canes by sowing; `refused` names the kits that a sowing has to do without. */
export function lendKit(
  problem: PlanningProblem,
  ledger: KitLedger,
  askers: readonly KitAsker[],
): {
  readonly lent: ReadonlyMap<string, readonly KitUse[]>;
  readonly refused: ReadonlyMap<string, readonly KitId[]>;
} {
  const lent = new Map<string, KitUse[]>();
  const refused = new Map<string, KitId[]>();
  const asks = askers.flatMap((asker) => {
    const uses = kitOfSowing(problem, asker);
    return [...new Set(uses.map((use) => use.kit))].map((kit) => ({
      asker,
      kit,
      uses: uses.filter((use) => use.kit === kit),
      worth: keptOffShare(asker, kit),
    }));
  });
  asks.sort(
    (a, b) =>
      Number(b.asker.standing) - Number(a.asker.standing) ||
      b.worth - a.worth ||
      a.asker.groundFromWeek - b.asker.groundFromWeek ||
      (a.asker.id < b.asker.id ? -1 : 1),
  );
  for (const { asker, kit, uses } of asks) {
    if (kit !== 'canes' && !asker.plan.protection.includes(kit)) continue;
    if (ledger.take(uses)) lent.set(asker.id, [...(lent.get(asker.id) ?? []), ...uses]);
    else refused.set(asker.id, [...(refused.get(asker.id) ?? []), kit]);
  }
  return { lent, refused };
}
