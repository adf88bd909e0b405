/** Sowings taken as begun as planned, as crops that stand at the stage they are forecast to have reached. */
import { type Day, meanOf, type Week, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type Lot, runSowing, type SowingPlan } from '@twelvemonth/growing';
import type { GroundClass, PlanningProblem, StandingCrop } from '@twelvemonth/planning';
import { plannedOf } from '../argue/sowings-of-report.ts';
import { naturalEnd } from '../problem/standing.ts';
import type { ReportSowing } from '../report/plan-report.ts';

const triedMembers = 12;
/** Less than this part of it left: it is eaten. */
const nothingLeftShare = 0.03;
const worthOtherEndDays = 14;

/** What stands or lies over many weeks is eaten evenly: so much of a lot is left in a week. */
function leftShareOf(lot: Lot, week: Week): number {
  if (lot.toWeek < week) return 0;
  if (lot.form === 'fresh' || lot.fromWeek >= week) return 1;
  return (lot.toWeek + 1 - week) / (lot.toWeek + 1 - lot.fromWeek);
}

/** Part of the plants that is not eaten yet, of those whose food can still be eaten; null when there is none. */
function leftShare(problem: PlanningProblem, plan: SowingPlan): number | null {
  const shares = problem.context.members.slice(0, triedMembers).flatMap((member) => {
    const lots = runSowing(problem.context, member, plan, problem.stores).lots.filter(
      (lot) => lot.toWeek >= problem.fromWeek,
    );
    const all = lots.reduce((sum, lot) => sum + lot.servings, 0);
    const left = lots.reduce((sum, lot) => sum + lot.servings * leftShareOf(lot, problem.fromWeek), 0);
    return all <= 0 ? [] : [left / all];
  });
  return shares.length === 0 ? null : meanOf(shares);
}

function clearDaysOf(problem: PlanningProblem, plan: SowingPlan, told: Day): Day[] {
  if (told < problem.fromDay) return [told];
  const { endDay } = naturalEnd(
    problem.context,
    { ...plan, clearDay: null },
    problem.stores,
    problem.fromDay,
  );
  return endDay > told + worthOtherEndDays ? [told, endDay] : [told];
}

/** Cleared before this plan begins, what it left in store is reckoned on, unless the file has stock of the kind itself. */
function isOver(garden: Garden, kind: string, share: number | null): boolean {
  return (share ?? 0) < nothingLeftShare || garden.stock.some((entry) => entry.kind === kind);
}

/** Crops of the file that the last plan had cleared by now: their ground is free, their store is what is left of it. */
export function clearedCrops(
  garden: Garden,
  problem: PlanningProblem,
  told: ReadonlyMap<string, Day>,
  clearedBefore: readonly string[],
): StandingCrop[] {
  return problem.standing.flatMap((crop): StandingCrop[] => {
    const clearDay = told.get(crop.plan.id);
    const said = garden.standing.find(({ id }) => id === crop.plan.id)?.mayClearFrom ?? null;
    const stays = said !== null && said >= problem.fromDay;
    if (!stays && clearedBefore.includes(crop.plan.id)) return [];
    if (clearDay === undefined || clearDay >= problem.fromDay || stays) return [crop];
    const share = leftShare(problem, { ...crop.plan, clearDay });
    if (isOver(garden, crop.plan.kind.id, share)) return [];
    const plan = { ...crop.plan, plantsCount: crop.plan.plantsCount * (share ?? 1) };
    return [{ ...crop, plan, clearDays: [clearDay], groundFromWeek: problem.fromWeek }];
  });
}

function begunCrop(garden: Garden, problem: PlanningProblem, sowing: ReportSowing): StandingCrop | null {
  const planned = plannedOf(garden, problem, sowing);
  if (planned === null) return null;
  const plantsBegun = sowing.begun?.plants ?? planned.plan.plantsCount;
  const plan = { ...planned.plan, plantsCount: plantsBegun };
  const left = leftShare(problem, plan);
  const told = planned.plan.clearDay!;
  if (told < problem.fromDay && isOver(garden, plan.kind.id, left)) return null;
  const share = left ?? 1;
  return {
    plan: { ...plan, clearDay: null, plantsCount: plantsBegun * share },
    ground: planned.ground,
    stripsCount: planned.stripsCount,
    place: planned.placements[0]?.bed.place ?? sowing.route.at(-1)?.place ?? '',
    placeNumber: planned.placements.length === 1 ? planned.placements[0]!.bed.number : null,
    clearDays: clearDaysOf(problem, plan, told),
    groundFromWeek: Math.max(problem.fromWeek, planned.groundFromWeek),
    state: 'done',
    bench: planned.bench.filter((use) => use.toWeek > problem.fromWeek),
    plantsBegun,
  };
}

/** Strips that are free in every week of a span, what stands cleared as early as it may be. */
function roomFor(
  ground: GroundClass,
  g: number,
  crops: readonly StandingCrop[],
  from: Week,
  to: Week,
): number {
  let room = ground.stripCount;
  for (let week = from; week < to; week++) {
    let free = ground.stripCount;
    for (const crop of crops) {
      const until = crop.plan.kind.perennial ? Number.POSITIVE_INFINITY : weekOfDay(crop.clearDays[0]!) + 1;
      if (crop.ground === g && crop.groundFromWeek <= week && week < until) free -= crop.stripsCount;
    }
    room = Math.min(room, free);
  }
  return Math.max(0, room);
}

export interface BegunCrops {
  readonly crops: readonly StandingCrop[];
  /** Begun by the plan, but the file has something else on its ground, or the ground is gone. */
  readonly withoutRoom: readonly ReportSowing[];
}

/** Crops that the file names keep their ground; what was begun by the plan takes what they leave. */
export function begunCrops(
  garden: Garden,
  problem: PlanningProblem,
  sowings: readonly ReportSowing[],
): BegunCrops {
  const crops: StandingCrop[] = [];
  const withoutRoom: ReportSowing[] = [];
  for (const sowing of sowings) {
    const crop = begunCrop(garden, problem, sowing);
    if (crop === null) continue;
    const to = weekOfDay(crop.clearDays[0]!) + 1;
    const there = [...problem.standing, ...crops];
    const room =
      to <= crop.groundFromWeek
        ? crop.stripsCount
        : roomFor(problem.ground[crop.ground]!, crop.ground, there, crop.groundFromWeek, to);
    if (room < crop.stripsCount) withoutRoom.push(sowing);
    if (room <= 0) continue;
    const kept = Math.min(1, room / crop.stripsCount);
    const plan = { ...crop.plan, plantsCount: crop.plan.plantsCount * kept };
    crops.push({ ...crop, plan, stripsCount: Math.min(crop.stripsCount, room) });
  }
  return { crops, withoutRoom };
}
