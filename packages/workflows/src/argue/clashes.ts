/** What a sowing takes that others hold: strips, bench, rest between like families, and kit that is owned in metres. */
import { isoOfWeek, mondayOf, type Week } from '@twelvemonth/basis';
import { allFamilies, hazardsOf, inSeasonDays } from '@twelvemonth/growing';
import type { PlanningProblem } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { Clash } from '../report/preview-report.ts';
import { sameBed } from './free-ground.ts';

type Found = Omit<Clash, 'before'>;

/** A strip is half a metre of a bed: so much kit lies over it. */
const stripLengthM = 0.5;
const weeksAYear = 52;
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

const restYears = new Map(allFamilies().map((family) => [family.id, family.restYears]));

function rotationClashes(sowing: ChosenSowing, others: readonly ChosenSowing[]): Found[] {
  const { family, perennial } = sowing.plan.kind;
  const rest = (restYears.get(family) ?? 0) * weeksAYear;
  if (rest <= 0 || perennial) return [];
  return others.flatMap((other): Found[] => {
    if (other.plan.kind.family !== family || other.ground !== sowing.ground) return [];
    const after = sowing.groundFromWeek - other.groundToWeek;
    const before = other.groundFromWeek - sowing.groundToWeek;
    const gap = Math.max(after, before);
    if (gap < 0 || gap >= rest) return [];
    const { strips, place } = sharedStrips(sowing, other);
    if (strips === 0) return [];
    const [from, to] =
      after >= 0 ? [other.groundToWeek, sowing.groundFromWeek] : [sowing.groundToWeek, other.groundFromWeek];
    return [
      {
        over: 'rotation',
        where: place,
        from: isoOfWeek(from),
        to: isoOfWeek(to),
        with: [other.id],
        short: rest - gap,
      },
    ];
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

export type KitMetres = Readonly<Record<'mesh' | 'net', number>>;

/** Kinds of kit that lie over a sowing in a week, for a hazard of its crop. */
function liesOver(problem: PlanningProblem, sowing: ChosenSowing, kit: 'mesh' | 'net', week: Week): boolean {
  if (week < sowing.groundFromWeek || week >= sowing.groundToWeek) return false;
  if (!sowing.plan.protection.includes(kit) || problem.ground[sowing.ground]!.growsIn !== 'open')
    return false;
  const southern = problem.context.site.latitudeDeg < 0;
  return hazardsOf(sowing.plan.kind.crop).some(
    (hazard) =>
      hazard.preventedBy === kit &&
      inSeasonDays(mondayOf(week) + 3, hazard.fromDayOfYear, hazard.toDayOfYear, southern),
  );
}

function kitClashes(
  problem: PlanningProblem,
  owned: KitMetres,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
): Found[] {
  return (['mesh', 'net'] as const).flatMap((kit): Found[] => {
    const needs = hazardsOf(sowing.plan.kind.crop).some((hazard) => hazard.preventedBy === kit);
    if (!needs || !sowing.plan.protection.includes(kit)) return [];
    const metres = (s: ChosenSowing, week: Week): number =>
      liesOver(problem, s, kit, week) ? s.stripsCount * stripLengthM : 0;
    const beside = others.filter(
      (other) =>
        other.groundFromWeek < sowing.groundToWeek &&
        sowing.groundFromWeek < other.groundToWeek &&
        hazardsOf(other.plan.kind.crop).some((hazard) => hazard.preventedBy === kit),
    );
    const use = (week: Week): number => {
      const own = metres(sowing, week);
      return own === 0 ? 0 : beside.reduce((sum, other) => sum + metres(other, week), own);
    };
    const over = overSpan(sowing.groundFromWeek, sowing.groundToWeek, use, owned[kit]);
    if (over === null) return [];
    const ids = beside.filter((other) => metres(other, over.from) > 0).map((other) => other.id);
    return [
      {
        over: 'kit',
        where: kit,
        from: isoOfWeek(over.from),
        to: isoOfWeek(over.to),
        with: ids,
        short: over.short,
      },
    ];
  });
}

export function clashesOf(
  problem: PlanningProblem,
  owned: KitMetres,
  sowing: ChosenSowing,
  others: readonly ChosenSowing[],
): Found[] {
  return [
    ...groundClashes(sowing, others),
    ...benchClashes(problem, sowing, others),
    ...rotationClashes(sowing, others),
    ...kitClashes(problem, owned, sowing, others),
  ];
}
