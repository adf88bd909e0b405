/**
 * Hours, benches and visits counted once more, without the program's spans, rows and ledger: claimed minutes added up by
 * week against what people have; the work of each sowing reckoned again from the table of work times; benches held from
 * sowing to planting with room for every plant; nothing begun in weeks away; no salad for tonight where few come by.
 */
import { isoFromDay, isoOfWeek, weekOfDay } from '@twelvemonth/basis';
import {
  benchWaterMinutes,
  clearMinutesPerM2,
  groundReadyMinutesPerM2,
  isAwayWeek,
  plantOutMinutes,
  potOnMinutes,
  prickOutMinutes,
  seedlingOfModuleShare,
  seldomVisitsPerWeek,
  setMinutes,
  sowDirectMinutesPerM2,
  sowTrayMinutes,
  waterMinutes,
  weedMinutesPerM2,
  workTrayM2,
} from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';
import type { CheckedSowing } from './checked-sowing.ts';

const toleranceMinutes = 0.01;
const toleranceShare = 1e-6;
const tidyNumber = (value: number): string => String(Math.round(value * 1000) / 1000);

function claimedIn({ minutesByAct }: CheckedSowing, w: number): number {
  if (minutesByAct === undefined) return 0;
  return Object.values(minutesByAct).reduce((sum, minutes) => sum + minutes[w]!, 0);
}

/** What stands may ask for more than there is; nothing may be added in such a week. */
function hoursOver(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const { capMinutesByWeek, standing } = problem;
  if (capMinutesByWeek === null) return [];
  const standingIds = new Set(standing.map(({ plan }) => plan.id));
  return Array.from(capMinutesByWeek).flatMap((cap, w) => {
    let [all, stands] = [0, 0];
    for (const sowing of sowings) {
      const minutes = claimedIn(sowing, w);
      all += minutes;
      if (standingIds.has(sowing.plan.id)) stands += minutes;
    }
    const most = Math.max(cap, stands);
    return all > most + toleranceMinutes
      ? [`hours-over:${isoOfWeek(problem.fromWeek + w)}:${tidyNumber(all / 60)}/${tidyNumber(most / 60)}`]
      : [];
  });
}

/** Minutes of a new sowing within the horizon but for picking and putting by. */
function workAgain(problem: PlanningProblem, sowing: CheckedSowing): number {
  const { plan, stripsCount, groundFromWeek, groundToWeek, bench } = sowing;
  const { kind } = plan;
  const own = problem.ground[sowing.ground]!;
  const m2 = own.stripM2 * stripsCount;
  const southern = problem.context.site.latitudeDeg < 0;
  const watered = problem.context.exposures.get(own.exposure)?.watered ?? true;
  const ground = { growsIn: own.growsIn, watered, southern };
  const lastWeek = problem.fromWeek + problem.weekCount - 1;
  const within = (week: number): boolean => week >= problem.fromWeek && week <= lastWeek;
  const startWeek = weekOfDay(plan.startDay);
  const isRaised = plan.stages.length > 0;
  const isShelf = own.bench !== null;
  const readying = (groundReadyMinutesPerM2 + kind.supportMinutesPerM2) * m2;
  let minutes = 0;
  const once = (week: number, amount: number): void => {
    if (within(week)) minutes += amount;
  };
  const modulesM2 = kind.moduleM2PerPlant * plan.plantsCount;
  if (isShelf) {
    once(startWeek, sowTrayMinutes * ((isRaised ? modulesM2 : m2) / workTrayM2));
    if (isRaised) once(groundFromWeek, plantOutMinutes * plan.plantsCount);
  }
  if (!isShelf && !isRaised && plan.route === 'planted')
    once(startWeek, readying + setMinutes(kind.startsAs) * plan.plantsCount);
  if (!isShelf && !isRaised && plan.route !== 'planted')
    once(startWeek, readying + sowDirectMinutesPerM2 * m2);
  if (!isShelf && isRaised) {
    once(startWeek, sowTrayMinutes * (modulesM2 / workTrayM2));
    once(groundFromWeek, readying + plantOutMinutes * plan.plantsCount);
    bench.forEach((use, i) => {
      if (i === 0) return;
      if (i === 1 && plan.route === 'warm') once(use.fromWeek, prickOutMinutes * plan.plantsCount);
      if (use.bench === bench[i - 1]!.bench) once(use.fromWeek, potOnMinutes * plan.plantsCount);
    });
  }
  for (let week = problem.fromWeek; week <= lastWeek; week++) {
    if (isAwayWeek(problem.context.away, week)) continue;
    if (week >= groundFromWeek && week < groundToWeek)
      minutes += weedMinutesPerM2(kind, ground, week) * m2 + waterMinutes(ground, week, m2, stripsCount);
    if (!isShelf)
      for (const use of bench)
        if (week >= use.fromWeek && week < use.toWeek) minutes += benchWaterMinutes(week, use.m2, southern);
    if (week === groundToWeek - 1 && !isShelf && !kind.perennial) minutes += clearMinutesPerM2 * m2;
  }
  return minutes;
}

function hoursMiscounted(problem: PlanningProblem, fresh: readonly CheckedSowing[]): string[] {
  return fresh.flatMap((sowing) => {
    if (sowing.minutesByAct === undefined) return [];
    const { sow, plant, weed, water, clear } = sowing.minutesByAct;
    let claimed = 0;
    for (const row of [sow, plant, weed, water, clear]) for (const minutes of row) claimed += minutes;
    const again = workAgain(problem, sowing);
    return Math.abs(claimed - again) > toleranceMinutes + toleranceShare * again
      ? [`hours:${sowing.plan.id}:${tidyNumber(claimed / 60)}/${tidyNumber(again / 60)}`]
      : [];
  });
}

/** A raised sowing is on some bench from sowing to planting, with room for all its plants. */
function benchesHeld(problem: PlanningProblem, fresh: readonly CheckedSowing[]): string[] {
  return fresh.flatMap(({ plan, ground, groundFromWeek, bench, guestOf }) => {
    if (plan.stages.length === 0 || problem.ground[ground]!.bench !== null) return [];
    const found: string[] = [];
    let week = weekOfDay(plan.startDay);
    bench.forEach((use, i) => {
      if (use.fromWeek !== week) found.push(`bench-gap:${plan.id}:${isoOfWeek(week)}`);
      week = use.toWeek;
      const isSeedTray = problem.benches[use.bench]!.stage === 'mat' && i === 0 && plan.route === 'warm';
      const need = plan.plantsCount * plan.kind.moduleM2PerPlant * (isSeedTray ? seedlingOfModuleShare : 1);
      if (use.m2 < need * (1 - toleranceShare))
        found.push(`bench-small:${plan.id}:${tidyNumber(use.m2)}/${tidyNumber(need)}`);
    });
    if (week < (guestOf?.fromWeek ?? groundFromWeek)) found.push(`bench-gap:${plan.id}:${isoOfWeek(week)}`);
    return found;
  });
}

function peopleThere(problem: PlanningProblem, fresh: readonly CheckedSowing[]): string[] {
  return fresh.flatMap(({ plan, ground }) => {
    const found: string[] = [];
    const { visitsPerWeek, id } = problem.ground[ground]!;
    for (const day of [plan.startDay, plan.plantDay])
      if (day !== null && isAwayWeek(problem.context.away, weekOfDay(day)))
        found.push(`nobody-there:${plan.id}:${isoFromDay(day)}`);
    const keeps = plan.kind.harvests.some(
      ({ role, habit }) => role !== 'salad-leaves' || habit === 'once' || habit === 'stands',
    );
    if (visitsPerWeek <= seldomVisitsPerWeek && !keeps) found.push(`visits-few:${plan.id}:${id}`);
    return found;
  });
}

/** `fresh`: what is newly sown, by the planner's choice. */
export function checkHands(
  problem: PlanningProblem,
  sowings: readonly CheckedSowing[],
  fresh: readonly CheckedSowing[],
): string[] {
  return [
    ...hoursOver(problem, sowings),
    ...hoursMiscounted(problem, fresh),
    ...benchesHeld(problem, fresh),
    ...peopleThere(problem, fresh),
  ];
}
