/** The kit's own ledger: where how much lies from when to when, and what goes straight from one bed to another. */
import { isoOfWeek, type Week } from '@twelvemonth/basis';
import type { KitId, KitUse, PlanningProblem } from '@twelvemonth/planning';
import type { ReportKit } from '../report/ground-report.ts';
import type { ReportSowing } from '../report/plan-report.ts';
import { placeNamesOf } from '../sheets/place-names.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

const kitIds: readonly KitId[] = ['mesh', 'net', 'fleece', 'canes'];
/** What comes off no longer than this before it goes on elsewhere is carried over. */
const carriedWithinWeeks = 2;

interface Lent {
  readonly sowing: string;
  readonly placeName: string;
  readonly use: KitUse;
}

const tidy = (amount: number): number => Math.round(amount * 10) / 10;

function mostOut(lent: readonly Lent[]): number {
  const changes = new Map<Week, number>();
  for (const { use } of lent) {
    changes.set(use.fromWeek, (changes.get(use.fromWeek) ?? 0) + use.amount);
    changes.set(use.toWeek, (changes.get(use.toWeek) ?? 0) - use.amount);
  }
  let out = 0;
  let most = 0;
  for (const [, change] of [...changes].sort((a, b) => a[0] - b[0])) {
    out += change;
    most = Math.max(most, out);
  }
  return most;
}

function movesOf(lent: readonly Lent[], fromWeek: Week): ReportKit['moves'] {
  const off = lent.map((one) => ({ ...one, left: one.use.amount }));
  const on = [...lent].sort((a, b) => a.use.fromWeek - b.use.fromWeek || (a.sowing < b.sowing ? -1 : 1));
  return on.flatMap((to) => {
    if (to.use.fromWeek < fromWeek) return [];
    let need = to.use.amount;
    const moves: ReportKit['moves'][number][] = [];
    for (const from of off) {
      const idle = to.use.fromWeek - from.use.toWeek;
      if (need <= 0.05 || from.left <= 0.05 || idle < 0 || idle > carriedWithinWeeks) continue;
      if (from.sowing === to.sowing) continue;
      const amount = Math.min(need, from.left);
      from.left -= amount;
      need -= amount;
      moves.push({
        day: isoOfWeek(to.use.fromWeek),
        amount: tidy(amount),
        from: from.sowing,
        fromPlaceName: from.placeName,
        to: to.sowing,
        toPlaceName: to.placeName,
      });
    }
    return moves;
  });
}

export function reportKit(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  reported: readonly ReportSowing[],
): ReportKit[] {
  const { ownedKit } = problem;
  if (ownedKit === undefined) return [];
  const byId = new Map(reported.map((sowing) => [sowing.id, sowing]));
  return kitIds.flatMap((kit) => {
    const lent = sowings.flatMap(({ id, kit: uses }): Lent[] =>
      (uses ?? [])
        .filter((use) => use.kit === kit)
        .map((use) => ({ sowing: id, placeName: placeNamesOf(byId.get(id)!), use })),
    );
    if (lent.length === 0) return [];
    lent.sort((a, b) => a.use.fromWeek - b.use.fromWeek || (a.sowing < b.sowing ? -1 : 1));
    return [
      {
        kit,
        owned: ownedKit[kit],
        most: tidy(mostOut(lent)),
        lent: lent.map(({ sowing, placeName, use }) => ({
          sowing,
          placeName,
          amount: tidy(use.amount),
          from: isoOfWeek(use.fromWeek),
          to: isoOfWeek(use.toWeek),
        })),
        moves: kit === 'canes' ? [] : movesOf(lent, problem.fromWeek),
      },
    ];
  });
}
