/**
 * The work of a sowing by the weeks in which it falls, minutes: sowing and pricking out, planting, weeding and watering
 * while it stands or waits in trays, picking in proportion to what comes ready, putting by at lifting, clearing. In
 * weeks away only sowing and planting are counted, which nobody else does (docs/models/work-times.md).
 */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import {
  benchWaterMinutes,
  clearMinutesPerM2,
  groundReadyMinutesPerM2,
  isAwayWeek,
  type Lot,
  plantOutMinutes,
  potOnMinutes,
  prickOutMinutes,
  putByMinutesPerKg,
  type SowingPlan,
  servingGOf,
  setMinutes,
  sowDirectMinutesPerM2,
  sowTrayMinutes,
  type WorkedGround,
  waterMinutes,
  weedMinutesPerM2,
  workTrayM2,
} from '@twelvemonth/growing';
import type { BenchUse, PlanningProblem } from '../problem.ts';

export const workActs = ['sow', 'plant', 'weed', 'water', 'pick', 'putBy', 'clear'] as const;
export type WorkAct = (typeof workActs)[number];

export interface WorkedSowing {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
}

/** What a sowing may give, with its probability. */
export interface Outcome {
  readonly prob: number;
  readonly lots: readonly Lot[];
}

/** Receives minutes of an act in a week; weeks may lie outside the horizon. */
export type PutMinutes = (act: WorkAct, week: Week, minutes: number) => void;

export function addSowingWork(
  problem: PlanningProblem,
  sowing: WorkedSowing,
  outcomes: readonly Outcome[],
  put: PutMinutes,
): void {
  const { away } = problem.context;
  const atHome: PutMinutes = (act, week, minutes) => {
    if (minutes > 0 && !isAwayWeek(away, week)) put(act, week, minutes);
  };
  begin(problem, sowing, put);
  keep(problem, sowing, put);
  for (const { prob, lots } of outcomes) for (const lot of lots) harvest(sowing.plan, lot, prob, atHome);
  const { kind } = sowing.plan;
  const own = problem.ground[sowing.ground]!;
  if (!kind.perennial && own.bench === null)
    atHome('clear', sowing.groundToWeek - 1, clearMinutesPerM2 * sowing.stripsCount * own.stripM2);
}

/** Sowing, pricking out, potting on, planting; what was begun before the plan is done. */
function begin(problem: PlanningProblem, sowing: WorkedSowing, put: PutMinutes): void {
  const { plan, bench, groundFromWeek, stripsCount } = sowing;
  const { kind } = plan;
  const own = problem.ground[sowing.ground]!;
  const m2 = stripsCount * own.stripM2;
  const startWeek = weekOfDay(plan.startDay);
  const isNew = plan.startDay >= problem.fromDay - 6;
  const isRaised = plan.stages.length > 0;
  if (own.bench !== null) {
    if (!isNew) return;
    const traysM2 = isRaised ? plan.plantsCount * kind.moduleM2PerPlant : m2;
    put('sow', startWeek, (sowTrayMinutes * traysM2) / workTrayM2);
    if (isRaised) put('plant', groundFromWeek, plan.plantsCount * plantOutMinutes);
    return;
  }
  const ready = m2 * (groundReadyMinutesPerM2 + kind.supportMinutesPerM2);
  if (!isRaised) {
    if (!isNew) return;
    if (plan.route === 'planted')
      put('plant', startWeek, ready + plan.plantsCount * setMinutes(kind.startsAs));
    else put('sow', startWeek, ready + m2 * sowDirectMinutesPerM2);
    return;
  }
  if (isNew) {
    put('sow', startWeek, (sowTrayMinutes * plan.plantsCount * kind.moduleM2PerPlant) / workTrayM2);
    if (plan.route === 'warm' && bench.length > 1)
      put('plant', bench[1]!.fromWeek, plan.plantsCount * prickOutMinutes);
    for (let i = 1; i < bench.length; i++)
      if (bench[i]!.bench === bench[i - 1]!.bench)
        put('plant', bench[i]!.fromWeek, plan.plantsCount * potOnMinutes);
  }
  if (plan.plantDay === null ? isNew : plan.plantDay >= problem.fromDay)
    put('plant', groundFromWeek, ready + plan.plantsCount * plantOutMinutes);
}

function keep(problem: PlanningProblem, sowing: WorkedSowing, put: PutMinutes): void {
  const { plan, stripsCount, groundFromWeek, groundToWeek, bench } = sowing;
  const own = problem.ground[sowing.ground]!;
  const { away, exposures, site } = problem.context;
  const southern = site.latitudeDeg < 0;
  const watered = exposures.get(own.exposure)?.watered ?? true;
  const ground: WorkedGround = { growsIn: own.growsIn, watered, southern };
  const m2 = stripsCount * own.stripM2;
  const uses = own.bench === null ? bench : [];
  const begins = uses.reduce((first, use) => Math.min(first, use.fromWeek), groundFromWeek);
  const ends = Math.min(problem.fromWeek + problem.weekCount, groundToWeek);
  for (let week = Math.max(problem.fromWeek, begins); week < ends; week++) {
    if (isAwayWeek(away, week)) continue;
    if (week >= groundFromWeek) {
      put('weed', week, weedMinutesPerM2(plan.kind, ground, week) * m2);
      put('water', week, waterMinutes(ground, week, m2, stripsCount));
    }
    for (const use of uses)
      if (week >= use.fromWeek && week < use.toWeek)
        put('water', week, benchWaterMinutes(week, use.m2, southern));
  }
}

/**
 * What stands is fetched evenly up to its last week; what is left of it when the ground is cleared is lifted at once.
 * What goes into a store is lifted at once and put by.
 */
function harvest(plan: SowingPlan, lot: Lot, prob: number, put: PutMinutes): void {
  const { kind } = plan;
  const part = kind.harvests.find((h) => h.role === lot.role);
  if (part === undefined) return;
  const kg = (prob * lot.servings * servingGOf(lot.role)) / part.edibleShare / 1000;
  const pick = kg * kind.pickMinutesPerKg;
  let liftedShare = 1;
  if (lot.form === 'standing') {
    const weeks = lot.toWeek - lot.fromWeek + 1;
    const until = Math.min(lot.toWeek + 1, lot.storeFromWeek ?? lot.toWeek + 1);
    liftedShare = Math.max(0, (lot.toWeek + 1 - until) / weeks);
    for (let week = lot.fromWeek; week < until; week++) put('pick', week, pick / weeks);
  }
  const liftWeek = lot.storeFromWeek ?? lot.fromWeek;
  put('pick', liftWeek, pick * liftedShare);
  if (lot.store !== null && lot.storeFromWeek !== null)
    put('putBy', lot.storeFromWeek, kg * liftedShare * putByMinutesPerKg(lot.store));
}
