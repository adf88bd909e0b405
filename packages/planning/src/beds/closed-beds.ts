/** Beds that rest: closed for some weeks, whatever would like to grow there. */
import type { Week } from '@twelvemonth/basis';
import type { Bed, ClosedBed, GroundClass } from '../problem.ts';

const stripsOf = (ground: GroundClass, closed: ClosedBed): number =>
  ground.beds.find((bed) => bed.place === closed.place && bed.number === closed.number)?.stripCount ?? 0;

/** A closed bed as a span of strips taken. */
export function closedSpans(
  ground: GroundClass,
): { readonly fromWeek: Week; readonly toWeek: Week; readonly strips: number }[] {
  return (ground.closed ?? []).map((closed) => ({
    fromWeek: closed.fromWeek,
    toWeek: closed.toWeek,
    strips: stripsOf(ground, closed),
  }));
}

/** Strips of a class that are not closed, by week index. */
export function openStripsByWeek(ground: GroundClass, fromWeek: Week, weekCount: number): Float64Array {
  const open = new Float64Array(weekCount).fill(ground.stripCount);
  for (const span of closedSpans(ground))
    for (let w = Math.max(0, span.fromWeek - fromWeek); w < Math.min(weekCount, span.toWeek - fromWeek); w++)
      open[w]! -= span.strips;
  return open;
}

/** A bed rests in some week of a stay. */
export const isClosed = (
  ground: GroundClass,
  bed: Bed,
  stay: { readonly fromWeek: Week; readonly toWeek: Week },
): boolean =>
  (ground.closed ?? []).some(
    (closed) =>
      closed.place === bed.place &&
      closed.number === bed.number &&
      closed.fromWeek < stay.toWeek &&
      stay.fromWeek < closed.toWeek,
  );
