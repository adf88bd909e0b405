/** What a sowing takes that others hold: strips, bench, rest between like families, and kit that is owned in metres. */
import { isoOfWeek, type Week } from '@twelvemonth/basis';
import {
  type KitId,
  type KitUse,
  kitOfSowing,
  type PlanningProblem,
  plantedYear,
  restYearsMissing,
} from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { Clash } from '../report/preview-report.ts';
import { sameBed } from './free-ground.ts';

type Found = Omit<Clash, 'before'>;

const littleM2 = 1e-6;

function sharedStrips(a: ChosenSowing, b: ChosenSowing): { readonly strips: number; readonly place: string } {
  let [strips, place] = [0, ''];
  for (const p of a.placements)
    for (const q of b.placements) {
      if (!sameBed(p.bed, q.bed)) continue;
      const from = Math.max(p.stripsFrom, q.stripsFrom);
      const to = Math.min(p.stripsFrom + p.stripsCount, q.stripsFrom + q.stripsCount);
      if (to > from) [strips, place] = [strips + to - from, p.bed.place];
    }
  return { strips, place };
}

/** More strips than its beds have in all. */
function tooLarge(sowing: ChosenSowing): Found[] {
  const short = sowing.stripsCount - sowing.placements.reduce((sum, p) => sum + p.stripsCount, 0);
  const first = sowing.placements[0];
  if (short <= 0 || first === undefined) return [];
  const [from, to] = [isoOfWeek(sowing.groundFromWeek), isoOfWeek(sowing.groundToWeek)];
  return [{ over: 'ground', where: first.bed.place, from, to, with: [], short }];
}

function groundClashes(sowing: ChosenSowing, others: readonly ChosenSowing[]): Found[] {
  const shared = others.flatMap((other): Found[] => {
    const from = Math.max(sowing.groundFromWeek, other.groundFromWeek);
    const to = Math.min(sowing.groundToWeek, other.groundToWeek);
    if (other.ground !== sowing.ground || from >= to) return [];
    const { strips, place } = sharedStrips(sowing, other);
    if (strips === 0) return [];
    return [
      {
        over: 'ground',
        where: place,
        from: isoOfWeek(from),
        to: isoOfWeek(to),
        with: [other.id],
        short: strips,
      },
    ];
  });
  return [...shared, ...tooLarge(sowing)];
}

/** By years of planting, as rotation counts them: two crops of one summer count once. */
function rotationClashes(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
): Found[] {
  const { family, perennial } = sowing.plan.kind;
  if (perennial) return [];
  const yearOf = ({ plan }: ChosenSowing): number =>
    plantedYear(plan.plantDay ?? plan.startDay, problem.context.site.latitudeDeg);
  return others.flatMap((other): Found[] => {
    if (other.plan.kind.family !== family || other.ground !== sowing.ground) return [];
    const after = sowing.groundFromWeek - other.groundToWeek;
    const before = other.groundFromWeek - sowing.groundToWeek;
    if (after < 0 && before < 0) return [];
    const [first, second] = after >= 0 ? [other, sowing] : [sowing, other];
    const short = restYearsMissing(family, yearOf(first), yearOf(second));
    const { strips, place } = short > 0 ? sharedStrips(sowing, other) : { strips: 0, place: '' };
    if (strips === 0) return [];
    const [from, to] = [isoOfWeek(first.groundToWeek), isoOfWeek(second.groundFromWeek)];
    return [{ over: 'rotation', where: place, from, to, with: [other.id], short }];
  });
}

/** The weeks in which use goes over what there is, as one span. */
function overSpan(
  from: Week,
  to: Week,
  use: (week: Week) => number,
  limit: number,
): { readonly from: Week; readonly to: Week; readonly short: number } | null {
  let [first, last, short] = [to, from, 0];
  for (let week = from; week < to; week++) {
    const over = use(week) - limit;
    if (over <= littleM2) continue;
    first = Math.min(first, week);
    last = week + 1;
    short = Math.max(short, over);
  }
  return short > 0 ? { from: first, to: last, short } : null;
}

function benchClashes(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
): Found[] {
  return sowing.bench.flatMap((use): Found[] => {
    const bench = problem.benches[use.bench]!;
    const there = others.filter((other) =>
      other.bench.some((b) => b.bench === use.bench && b.fromWeek < use.toWeek && use.fromWeek < b.toWeek),
    );
    const taken = (week: Week): number =>
      there.reduce(
        (sum, other) =>
          other.bench.reduce(
            (own, b) => own + (b.bench === use.bench && b.fromWeek <= week && week < b.toWeek ? b.m2 : 0),
            sum,
          ),
        use.m2,
      );
    const over = overSpan(use.fromWeek, use.toWeek, taken, bench.capacityM2);
    if (over === null) return [];
    const { from, to, short } = over;
    return [
      {
        over: 'bench',
        where: bench.place,
        from: isoOfWeek(from),
        to: isoOfWeek(to),
        with: there.map((other) => other.id),
        short,
      },
    ];
  });
}

/** What a sowing would have lent to it; nothing where it has to do without in the plan already. */
export function kitUses(problem: PlanningProblem, sowing: ChosenSowing): KitUse[] {
  const { plan, withoutKit = [] } = sowing;
  return kitOfSowing(problem, { ...sowing, standing: sowing.standing !== null }).filter(
    ({ kit }) =>
      !withoutKit.includes(kit) && (kit === 'canes' || plan.protection.some((lent) => lent === kit)),
  );
}

function kitClashes(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
  usesOf: (other: ChosenSowing) => readonly KitUse[],
): Found[] {
  const owned = problem.ownedKit;
  const wanted = owned === undefined ? [] : kitUses(problem, sowing);
  if (owned === undefined || wanted.length === 0) return [];
  const beside = others
    .filter(
      (other) => other.groundFromWeek < sowing.groundToWeek && sowing.groundFromWeek < other.groundToWeek,
    )
    .map((other) => ({ id: other.id, uses: usesOf(other) }));
  const amountIn = (uses: readonly KitUse[], kit: KitId, week: Week): number =>
    uses.reduce(
      (sum, use) => sum + (use.kit === kit && use.fromWeek <= week && week < use.toWeek ? use.amount : 0),
      0,
    );
  return wanted.flatMap((use): Found[] => {
    const out = (week: Week): number =>
      beside.reduce((sum, { uses }) => sum + amountIn(uses, use.kit, week), use.amount);
    const over = overSpan(use.fromWeek, use.toWeek, out, owned[use.kit]);
    if (over === null) return [];
    const ids = beside.filter(({ uses }) => amountIn(uses, use.kit, over.from) > 0).map(({ id }) => id);
    const [from, to] = [isoOfWeek(over.from), isoOfWeek(over.to)];
    return [{ over: 'kit', where: use.kit, from, to, with: ids, short: over.short }];
  });
}

/** `usesOf`: the kit of the others, which do not move. */
export function clashesOf(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
  usesOf: (other: ChosenSowing) => readonly KitUse[],
): Found[] {
  return [
    ...groundClashes(sowing, others),
    ...benchClashes(problem, sowing, others),
    ...rotationClashes(problem, sowing, others),
    ...kitClashes(problem, sowing, others, usesOf),
  ];
}
