/** Beds that people let rest: closed for their weeks; what stands there is cleared in time or keeps its ground. */
import { type Day, type Issue, isoFromDay, mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import type { Garden, Wish } from '@twelvemonth/garden';
import type { ClosedBed, GroundClass, PlanningProblem, StandingCrop } from '@twelvemonth/planning';
import { workflowIssue } from '../workflow-issue-codes.ts';

type Rest = Extract<Wish, { wish: 'rest' }>;

export interface Horizon {
  readonly fromDay: Day;
  readonly fromWeek: Week;
  readonly weekCount: number;
}

const restsOf = (garden: Garden): Rest[] =>
  garden.wishes.filter((wish): wish is Rest => wish.wish === 'rest');

const isThere = (rest: Rest, place: string, number: number | null, count: number): boolean =>
  rest.place === place &&
  (rest.placeNumber === null || rest.placeNumber === number || (number === null && count === 1));

/** Cleared before the rest begins, at once where it has begun; perennials stay, and promises are looked at elsewhere. */
function clearedFor(rest: Rest, crop: StandingCrop, { fromDay }: Horizon): StandingCrop {
  const [from, to] = [weekOfDay(rest.fromDay), rest.toDay === null ? null : weekOfDay(rest.toDay) + 1];
  const comesAfter = to !== null && crop.groundFromWeek >= to;
  if (crop.plan.kind.perennial || crop.state === 'firm' || comesAfter) return crop;
  const inTime = crop.clearDays.filter((day) => weekOfDay(day) < from);
  const last = Math.max(fromDay, mondayOf(from) - 1);
  return { ...crop, clearDays: inTime.length > 0 ? inTime : [Math.min(last, crop.clearDays.at(-1)!)] };
}

const endOf = (crop: StandingCrop): Week =>
  crop.plan.kind.perennial ? Number.POSITIVE_INFINITY : weekOfDay(crop.clearDays.at(-1)!) + 1;

/** The first week from which a bed can be closed beside what stands in its class until its latest end. */
function closableFrom(
  ground: GroundClass,
  standing: readonly StandingCrop[],
  closed: readonly ClosedBed[],
  wanted: ClosedBed,
): Week {
  const stripsOf = (bed: ClosedBed): number =>
    ground.beds.find((b) => b.place === bed.place && b.number === bed.number)?.stripCount ?? 0;
  let from = wanted.fromWeek;
  for (let week = wanted.fromWeek; week < wanted.toWeek; week++) {
    let free = ground.stripCount - stripsOf(wanted);
    for (const crop of standing)
      if (crop.groundFromWeek <= week && week < endOf(crop)) free -= crop.stripsCount;
    for (const other of closed) if (other.fromWeek <= week && week < other.toWeek) free -= stripsOf(other);
    if (free < 0) from = week + 1;
  }
  return from;
}

function wantedOf(rests: readonly Rest[], ground: GroundClass, horizon: Horizon): ClosedBed[] {
  const endWeek = horizon.fromWeek + horizon.weekCount;
  return rests.flatMap((rest) =>
    ground.beds
      .filter((bed) => isThere(rest, bed.place, bed.number, bed.of))
      .map((bed) => ({
        place: bed.place,
        number: bed.number,
        fromWeek: Math.max(horizon.fromWeek, weekOfDay(rest.fromDay)),
        toWeek: rest.toDay === null ? endWeek : Math.min(endWeek, weekOfDay(rest.toDay) + 1),
      }))
      .filter((bed) => bed.fromWeek < bed.toWeek),
  );
}

const overlaps = (a: ClosedBed, b: ClosedBed): boolean =>
  a.place === b.place && a.number === b.number && a.fromWeek < b.toWeek && b.fromWeek < a.toWeek;

export function restBeds(
  garden: Garden,
  ground: readonly GroundClass[],
  standing: readonly StandingCrop[],
  horizon: Horizon,
): { readonly ground: readonly GroundClass[]; readonly standing: readonly StandingCrop[] } {
  const rests = restsOf(garden);
  if (rests.length === 0) return { ground, standing };
  const countOf = (place: string): number => garden.places.find((p) => p.id === place)?.count ?? 1;
  const clearedBy = (crop: StandingCrop, rest: Rest): StandingCrop =>
    isThere(rest, crop.place, crop.placeNumber, countOf(crop.place)) ? clearedFor(rest, crop, horizon) : crop;
  const cleared = standing.map((crop) => rests.reduce(clearedBy, crop));
  const resting = ground.map((own, g) => {
    const here = cleared.filter((crop) => crop.ground === g && crop.state !== 'firm');
    const closed: ClosedBed[] = [];
    for (const wanted of wantedOf(rests, own, horizon)) {
      if (closed.some((other) => overlaps(other, wanted))) continue;
      const fromWeek = closableFrom(own, here, closed, wanted);
      if (fromWeek < wanted.toWeek) closed.push({ ...wanted, fromWeek });
    }
    return closed.length === 0 ? own : { ...own, closed };
  });
  return { ground: resting, standing: cleared };
}

/** Rests that begin later than wished: a week for clearing is nothing to speak of. */
export function restIssues(garden: Garden, problem: PlanningProblem): Issue[] {
  return problem.ground.flatMap((ground) =>
    wantedOf(restsOf(garden), ground, problem).flatMap((wanted) => {
      const closed = (ground.closed ?? []).filter((other) => overlaps(other, wanted));
      const from = Math.min(wanted.toWeek, ...closed.map((other) => other.fromWeek));
      if (from <= wanted.fromWeek + 1) return [];
      const bed = ground.beds.find((b) => b.place === wanted.place && b.number === wanted.number);
      const name = `${bed?.placeName ?? wanted.place}${(bed?.of ?? 1) > 1 ? ` ${wanted.number}` : ''}`;
      return workflowIssue('rest-begins-late', 'wishes', {
        place: name,
        wanted: isoFromDay(mondayOf(wanted.fromWeek)),
        from: from >= wanted.toWeek ? '' : isoFromDay(mondayOf(from)),
      });
    }),
  );
}
