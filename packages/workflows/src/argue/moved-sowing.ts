/** A sowing of the plan with some of its days, its place or its number changed: what it then takes, or why it may not. */
import { type Day, type Week, weekOfDay } from '@twelvemonth/basis';
import { NEVER, type SowingRun } from '@twelvemonth/growing';
import { type PlanningProblem, plantsPerStrip } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { MoveForbidden } from '../report/preview-report.ts';
import { canBeHad } from './delay.ts';
import { type FreeRun, freeRuns, placeInRuns } from './free-ground.ts';
import { runsOf } from './try-out.ts';

/** What is not given stays as it is in the plan. */
export interface SowingMove {
  readonly sowing: string;
  readonly startDay?: Day;
  readonly plantDay?: Day;
  readonly clearDay?: Day;
  /** Place id, and which of the like places, 1-based; null: any of them. */
  readonly place?: { readonly id: string; readonly number: number | null };
  readonly plants?: number;
}

/** Plants may be a little tighter than reckoned before another strip is taken. */
const tightShare = 0.05;

export function forbiddenBecause(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  move: SowingMove,
): MoveForbidden[] {
  const why: MoveForbidden[] = [];
  const { plan, state } = sowing;
  const { kind } = plan;
  const stands = state === 'done';
  const startDay = move.startDay ?? plan.startDay;
  const plantDay = move.plantDay ?? plan.plantDay;
  const clearDay = move.clearDay ?? plan.clearDay;
  const moved = move.startDay ?? move.plantDay ?? move.place ?? move.plants;
  if (stands && moved !== undefined) why.push('stands-already');
  if (!stands && move.startDay !== undefined && startDay < problem.fromDay) why.push('in-the-past');
  if (plantDay !== null && plantDay < startDay) why.push('planted-before-sown');
  if (clearDay !== null && clearDay <= (plantDay ?? startDay)) why.push('cleared-before-planted');
  if (!stands && !canBeHad(problem, { ...plan, startDay })) why.push('not-sold');
  if (move.place !== undefined) {
    const { id, number } = move.place;
    const ground = problem.ground.find((g) =>
      g.beds.some((bed) => bed.place === id && (number === null || bed.number === number)),
    );
    if (ground === undefined) why.push('no-such-place');
    else {
      if (!kind.growsIn.includes(ground.growsIn)) why.push('cannot-grow-there');
      if (ground.bannedFamilies.includes(kind.family)) why.push('family-banned');
      if (ground.stripLitres > 0 && plantsPerStrip(kind, ground) < 1) why.push('tub-too-small');
    }
  }
  const limit = problem.limits.find((l) => l.kind === kind.id);
  if (limit !== undefined && (move.plants ?? 0) > limit.mostPlants) why.push('over-wish');
  return why;
}

const middle = (days: readonly Day[]): Day => [...days].sort((a, b) => a - b)[Math.floor(days.length / 2)]!;

/** The new place's strips: what is free there, if it is enough; else its beds from the first on, over whoever is there. */
function placementsOf(
  problem: PlanningProblem,
  others: readonly ChosenSowing[],
  sowing: ChosenSowing,
  move: SowingMove,
  ground: number,
  strips: number,
  weeks: readonly [Week, Week],
): ChosenSowing['placements'] {
  if (move.place === undefined && strips === sowing.stripsCount) return sowing.placements;
  const wanted = move.place;
  const isWanted = ({ bed }: FreeRun): boolean =>
    wanted === undefined
      ? sowing.placements.some((p) => p.bed.place === bed.place)
      : bed.place === wanted.id && (wanted.number === null || bed.number === wanted.number);
  const free = freeRuns(problem, others, ground, ...weeks).filter(isWanted);
  const placed = placeInRuns(free, strips, sowing.id);
  if (placed.reduce((sum, p) => sum + p.stripsCount, 0) >= strips) return placed;
  const whole = problem.ground[ground]!.beds.map((bed) => ({
    bed,
    stripsFrom: 1,
    stripsCount: bed.stripCount,
  }));
  return placeInRuns(whole.filter(isWanted), strips, sowing.id);
}

/** Spans on the benches, stretched to the new days of sowing and planting. */
function benchOf(
  sowing: ChosenSowing,
  startWeek: Week,
  groundFromWeek: Week,
  share: number,
): ChosenSowing['bench'] {
  const shift = startWeek - weekOfDay(sowing.plan.startDay);
  const last = sowing.bench.length - 1;
  return sowing.bench.flatMap((use, i) => {
    const fromWeek = i === 0 ? startWeek : Math.min(use.fromWeek + shift, groundFromWeek);
    const toWeek = i === last ? groundFromWeek : Math.min(use.toWeek + shift, groundFromWeek);
    return toWeek > fromWeek ? [{ bench: use.bench, fromWeek, toWeek, m2: use.m2 * share }] : [];
  });
}

/** The moved sowing with its runs in the problem's members. */
export function movedSowing(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
  move: SowingMove,
): ChosenSowing {
  const { place } = move;
  const ground =
    place === undefined
      ? sowing.ground
      : problem.ground.findIndex((g) =>
          g.beds.some((b) => b.place === place.id && (place.number === null || b.number === place.number)),
        );
  const own = problem.ground[ground]!;
  const plantsCount = move.plants ?? sowing.plan.plantsCount;
  const perStrip = Math.max(1e-9, plantsPerStrip(sowing.plan.kind, own));
  const sameSize = move.plants === undefined && ground === sowing.ground;
  const stripsCount = sameSize
    ? sowing.stripsCount
    : Math.max(1, Math.ceil(plantsCount / perStrip - tightShare));
  const plan = {
    ...sowing.plan,
    plantsCount,
    startDay: move.startDay ?? sowing.plan.startDay,
    plantDay: move.plantDay ?? sowing.plan.plantDay,
    clearDay: move.clearDay ?? sowing.plan.clearDay,
    exposure: ground === sowing.ground ? sowing.plan.exposure : own.exposure,
  };
  const runs: SowingRun[] = runsOf(problem, plan, problem.context.members.length);
  const raised = plan.stages.length > 0;
  const groundDays = runs.map((run) => run.groundDay).filter((day) => day < NEVER);
  const fit = groundDays.length === 0 ? (plan.plantDay ?? plan.startDay) : middle(groundDays);
  const stood = sowing.state === 'done';
  const sameDays = plan.startDay === sowing.plan.startDay && plan.plantDay === sowing.plan.plantDay;
  const groundFromWeek =
    stood || sameDays
      ? sowing.groundFromWeek
      : weekOfDay(raised ? Math.max(plan.plantDay ?? fit, fit) : plan.startDay);
  const clearDay = plan.clearDay ?? middle(runs.map((run) => run.clearDay));
  const groundToWeek = Math.max(groundFromWeek + 1, weekOfDay(clearDay) + 1);
  const others = sowings.filter((other) => other !== sowing);
  return {
    ...sowing,
    plan,
    runs,
    ground,
    stripsCount,
    groundFromWeek,
    groundToWeek,
    bench: stood
      ? sowing.bench
      : own.bench === null
        ? benchOf(sowing, weekOfDay(plan.startDay), groundFromWeek, plantsCount / sowing.plan.plantsCount)
        : [
            {
              bench: own.bench,
              fromWeek: groundFromWeek,
              toWeek: groundToWeek,
              m2: own.stripM2 * stripsCount,
            },
          ],
    placements: placementsOf(problem, others, sowing, move, ground, stripsCount, [
      groundFromWeek,
      groundToWeek,
    ]),
  };
}
