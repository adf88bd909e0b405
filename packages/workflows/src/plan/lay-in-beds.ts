/**
 * Chosen batches into real strips, class by class. What finds no strips is shrunk to those it found, or dropped, and
 * said; what stands is never shrunk. So a plan that is shown can always be laid out.
 */
import { mondayOf, type Week } from '@twelvemonth/basis';
import type { SowingPlan } from '@twelvemonth/growing';
import {
  type Booking,
  type BrokenRest,
  type Candidate,
  type LastSowing,
  type Placement,
  type PlanningProblem,
  placeInStrips,
  plantedYear,
  type StandingCrop,
} from '@twelvemonth/planning';

export interface Draft {
  readonly id: string;
  readonly candidate: Candidate;
  readonly batches: number;
  readonly standing: StandingCrop | null;
  /** The last plan's sowing that it is, unmoved. */
  readonly told: LastSowing | null;
  readonly plan: SowingPlan;
}

/** A sowing that found fewer strips than it was chosen with. */
export interface Unplaced {
  readonly id: string;
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly wantedStrips: number;
  readonly placedStrips: number;
}

export interface LaidOut {
  readonly drafts: readonly Draft[];
  readonly placements: ReadonlyMap<string, readonly Placement[]>;
  readonly rests: ReadonlyMap<string, readonly BrokenRest[]>;
  readonly unplaced: readonly Unplaced[];
}

function bookingOf(problem: PlanningProblem, draft: Draft): Booking {
  const { candidate, plan, standing, told } = draft;
  const { kind } = plan;
  const planted =
    standing === null
      ? mondayOf(candidate.groundFromWeek)
      : (plan.plantDay ?? plan.plantedDay ?? plan.startDay);
  return {
    id: draft.id,
    family: kind.family,
    fromWeek: candidate.groundFromWeek,
    toWeek: candidate.groundToWeek,
    stripsCount: candidate.stripsPerBatch * draft.batches,
    place: standing?.place ?? told?.place ?? null,
    placeNumber: standing?.placeNumber ?? told?.placeNumber ?? null,
    year: plantedYear(planted, problem.context.site.latitudeDeg),
    compostLPerM2: kind.compostLPerM2,
    spoiltByFresh: kind.freshManure === 'spoils',
  };
}

export function groupedBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}

export function layInBeds(
  problem: PlanningProblem,
  chosen: readonly Draft[],
  shrunk: (draft: Draft, batches: number) => Draft,
): LaidOut {
  let drafts = [...chosen];
  const placements: Placement[] = [];
  const rests: BrokenRest[] = [];
  const wanted = new Map<string, Unplaced>();
  problem.ground.forEach((ground, g) => {
    for (;;) {
      const own = drafts.filter((draft) => draft.candidate.ground === g);
      const laid = placeInStrips(
        ground,
        own.map((draft) => bookingOf(problem, draft)),
      );
      const short = own.filter((draft) => draft.standing === null && laid.lacking.has(draft.id));
      if (short.length === 0) {
        placements.push(...laid.placements);
        rests.push(...laid.rests);
        return;
      }
      for (const draft of short) {
        const { stripsPerBatch, groundFromWeek, groundToWeek } = draft.candidate;
        const left = Math.max(0, draft.batches - Math.ceil(laid.lacking.get(draft.id)! / stripsPerBatch));
        wanted.set(draft.id, {
          id: draft.id,
          plan: draft.plan,
          ground: g,
          fromWeek: groundFromWeek,
          toWeek: groundToWeek,
          wantedStrips: wanted.get(draft.id)?.wantedStrips ?? draft.batches * stripsPerBatch,
          placedStrips: left * stripsPerBatch,
        });
        drafts = drafts.flatMap((d) => (d === draft ? (left > 0 ? [shrunk(draft, left)] : []) : [d]));
      }
    }
  });
  return {
    drafts,
    placements: groupedBy(placements, (placement) => placement.booking),
    rests: groupedBy(rests, (rest) => rest.booking),
    unplaced: [...wanted.values()],
  };
}
