/** Days on which people plant nothing: what waits on a bench goes out after them. */
import { weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DaySpan, StandingCrop } from '@twelvemonth/planning';

export const noPlantingOf = (garden: Garden): DaySpan[] =>
  garden.wishes.flatMap((wish) =>
    wish.wish === 'no-planting' ? [{ fromDay: wish.fromDay, toDay: wish.toDay }] : [],
  );

export function plantedLater(crop: StandingCrop, spans: readonly DaySpan[]): StandingCrop {
  const { plan } = crop;
  if (crop.state === 'firm' || plan.plantDay === null || plan.stages.length === 0) return crop;
  let day = plan.plantDay;
  for (const span of [...spans].sort((a, b) => a.fromDay - b.fromDay))
    if (day >= span.fromDay && day <= span.toDay) day = span.toDay + 1;
  if (day === plan.plantDay) return crop;
  return {
    ...crop,
    plan: { ...plan, plantDay: day },
    groundFromWeek: Math.max(crop.groundFromWeek, weekOfDay(day)),
  };
}
