/** Promised sowings against each other, their place and their day: what no program needs to be asked. */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { PlanningProblem, StandingCrop } from '@twelvemonth/planning';

const endOf = (crop: StandingCrop): Week => weekOfDay(crop.clearDays[0]!) + 1;

/** All beds of the promised place rest in some week in which it would stand there. */
function standsInRest(problem: PlanningProblem, crop: StandingCrop): boolean {
  const ground = problem.ground[crop.ground]!;
  const beds = ground.beds.filter((bed) => bed.place === crop.place);
  const closed = (ground.closed ?? []).filter((rest) => rest.place === crop.place);
  for (let week = crop.groundFromWeek; week < endOf(crop); week++) {
    const open = beds.filter(
      (bed) => !closed.some((c) => c.number === bed.number && c.fromWeek <= week && week < c.toWeek),
    );
    if (open.reduce((sum, bed) => sum + bed.stripCount, 0) < crop.stripsCount) return true;
  }
  return false;
}

/** A promise that cannot be kept as it stands: no such place or route, forbidden, cut short, resting ground, closed day. */
export function promisesClash(garden: Garden, problem: PlanningProblem): boolean {
  return garden.wishes.some((wish) => {
    if (wish.wish !== 'firm') return false;
    const crop = problem.standing.find(({ plan }) => plan.id === wish.id);
    if (crop === undefined || crop.plan.plantsCount < wish.plantsCount - 1e-6) return true;
    const forbidden = garden.wishes.some((other) => other.wish === 'forbid' && other.kind === wish.kind);
    const onClosedDay = problem.noPlanting.some(
      ({ fromDay, toDay }) => wish.sowDay >= fromDay && wish.sowDay <= toDay,
    );
    return forbidden || onClosedDay || standsInRest(problem, crop);
  });
}
