/**
 * Beds, kit and bans again, counted day by week by strip without the planner's own sums: metres that lie out against
 * what is owned, hazards that a sowing says are kept off without kit lying on it, families in ground that is barred to
 * them, and rests that are broken and not owned up to.
 */
import { civilFromDay, type Day, dayFromCivil, isoOfWeek, mondayOf, type Week } from '@twelvemonth/basis';
import { familyById, hazardsOf } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import type { CheckedSowing } from './checked-sowing.ts';

const tolerance = 1e-6;
const tidy = (value: number): string => String(Math.round(value * 1000) / 1000);
const weeksOf = (problem: PlanningProblem): Week[] =>
  Array.from({ length: problem.weekCount }, (_, w) => problem.fromWeek + w);

export function kitOver(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const { ownedKit } = problem;
  if (ownedKit === undefined) return [];
  return (['mesh', 'net', 'fleece'] as const).flatMap((kit) =>
    weeksOf(problem).flatMap((week) => {
      const out = sowings
        .flatMap((s) => s.kit ?? [])
        .filter((use) => use.kit === kit && use.fromWeek <= week && week < use.toWeek)
        .reduce((sum, use) => sum + use.amount, 0);
      return out > ownedKit[kit] + tolerance
        ? [`kit-over:${kit}:${isoOfWeek(week)}:${tidy(out)}/${tidy(ownedKit[kit])}`]
        : [];
    }),
  );
}

/** Day of the year as in the north; the south is half a year on. */
function northernDayOfYear(day: Day, southern: boolean): number {
  const { year } = civilFromDay(day);
  const of = day - dayFromCivil(year, 1, 1) + 1;
  return southern ? ((of - 182 - 1 + 730) % 365) + 1 : of;
}

/** A week whose every day is in a hazard's window, in the bed, with the hazard counted as kept off, has its kit. */
export function kitMissing(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const { ownedKit } = problem;
  if (ownedKit === undefined) return [];
  const southern = problem.context.site.latitudeDeg < 0;
  return sowings.flatMap((sowing) => {
    const { plan, kit: lent, groundFromWeek, groundToWeek, ground, stripsCount } = sowing;
    if (lent === undefined || problem.ground[ground]!.bench !== null) return [];
    return hazardsOf(plan.kind.crop).flatMap((hazard) => {
      const kit = hazard.preventedBy;
      if (kit === null || !plan.protection.includes(kit) || ownedKit[kit] <= 0) return [];
      const { fromDayOfYear: from, toDayOfYear: to } = hazard;
      const youngUntil = mondayOf(groundFromWeek) + (hazard.stage === 'young' ? hazard.youngDays : 36500);
      const inside = (day: Day): boolean => {
        const at = northernDayOfYear(day, southern);
        return from <= to ? at >= from + 1 && at < to : at >= from + 1 || at < to;
      };
      return weeksOf(problem)
        .filter((week) => week >= groundFromWeek && week < groundToWeek)
        .filter((week) => mondayOf(week) + 6 < youngUntil)
        .filter((week) => [0, 1, 2, 3, 4, 5, 6].every((d) => inside(mondayOf(week) + d)))
        .filter((week) => {
          const metres = lent
            .filter((use) => use.kit === kit && use.fromWeek <= week && week < use.toWeek)
            .reduce((sum, use) => sum + use.amount, 0);
          return metres < stripsCount * 0.5 - tolerance;
        })
        .map((week) => `kit-missing:${plan.id}:${hazard.id}:${isoOfWeek(week)}`);
    });
  });
}

const yearOf = (problem: PlanningProblem, day: Day): number =>
  civilFromDay(problem.context.site.latitudeDeg < 0 ? day + 182 : day).year;

/** Strips of each real bed: a family back before its rest is over must be among the sowing's own rests. */
export function restsUntold(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const standing = new Set(problem.standing.map(({ plan }) => plan.id));
  const planted = ({ plan, groundFromWeek }: CheckedSowing): number =>
    yearOf(
      problem,
      standing.has(plan.id) ? (plan.plantDay ?? plan.plantedDay ?? plan.startDay) : mondayOf(groundFromWeek),
    );
  return sowings.flatMap((sowing) => {
    const { plan, rests, placements, ground } = sowing;
    const own = problem.ground[ground]!;
    if (rests === undefined || placements === undefined) return [];
    if (own.bench !== null || own.growsIn === 'tub') return [];
    const rest = familyById(plan.kind.family)?.restYears ?? 0;
    const year = planted(sowing);
    let broken = 0;
    for (const { bed, stripsFrom, stripsCount } of placements)
      for (let strip = stripsFrom; strip < stripsFrom + stripsCount; strip++) {
        const back = sowings.some(
          (other) =>
            other !== sowing &&
            other.plan.kind.family === plan.kind.family &&
            other.groundToWeek <= sowing.groundFromWeek &&
            planted(other) < year &&
            year - planted(other) <= rest &&
            other.placements?.some(
              (p) =>
                p.bed.place === bed.place &&
                p.bed.number === bed.number &&
                p.stripsFrom <= strip &&
                strip < p.stripsFrom + p.stripsCount,
            ) === true,
        );
        const before = (own.past ?? []).some(
          (past) =>
            past.family === plan.kind.family &&
            past.place === bed.place &&
            (past.placeNumber ?? bed.number) === bed.number &&
            past.year < year &&
            year - past.year <= rest,
        );
        if (back || before) broken++;
      }
    const told = rests.reduce((sum, r) => sum + r.stripsCount, 0);
    return told === broken ? [] : [`rest-untold:${plan.id}:${told}/${broken}`];
  });
}
