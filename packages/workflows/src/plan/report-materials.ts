/** Compost that the sowings take, by month, and the most trays and pots in use at once: to be had in time. */
import { isoFromDay, mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import {
  moduleCompostLitresPerM2,
  potCompostLitresPerM2,
  seedTrayCompostLitresPerM2,
  tubRenewedShare,
} from '@twelvemonth/growing';
import type { PlanningProblem } from '@twelvemonth/planning';
import { trayM2 } from '../problem/ground.ts';
import type { ReportMaterials } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

/** A week counts to the month of its Thursday. */
const monthOf = (week: Week): string => isoFromDay(mondayOf(week) + 3).slice(0, 7);

interface Taken {
  readonly week: Week;
  readonly litres: number;
}

/** In pots: the stage on the same bench as the one before, or all of a kind that is raised in pots. */
const isPots = (sowing: ChosenSowing, i: number): boolean =>
  i > 0 && sowing.bench[i]!.bench === sowing.bench[i - 1]!.bench;

function compostOf(problem: PlanningProblem, sowing: ChosenSowing): Taken[] {
  const { plan, bench } = sowing;
  const own = problem.ground[sowing.ground]!;
  const taken: Taken[] = [];
  const isNew = sowing.state !== 'done';
  const startWeek = weekOfDay(plan.startDay);
  const modulesM2 = plan.plantsCount * plan.kind.moduleM2PerPlant;
  if (own.bench !== null) {
    if (isNew)
      taken.push({ week: startWeek, litres: sowing.stripsCount * own.stripM2 * seedTrayCompostLitresPerM2 });
    return taken;
  }
  if (isNew && plan.stages.length > 0)
    taken.push({ week: startWeek, litres: modulesM2 * moduleCompostLitresPerM2 });
  bench.forEach((use, i) => {
    if (isPots(sowing, i)) taken.push({ week: use.fromWeek, litres: use.m2 * potCompostLitresPerM2 });
  });
  if (own.growsIn === 'tub' && sowing.groundFromWeek >= problem.fromWeek && isNew)
    taken.push({
      week: sowing.groundFromWeek,
      litres: sowing.stripsCount * own.stripLitres * tubRenewedShare,
    });
  return taken;
}

export function reportMaterials(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
): ReportMaterials[] {
  const months = new Map<string, { litres: number; traysM2: number; pots: number }>();
  const at = (month: string) => {
    const found = months.get(month) ?? { litres: 0, traysM2: 0, pots: 0 };
    months.set(month, found);
    return found;
  };
  const lastWeek = problem.fromWeek + problem.shownWeeks - 1;
  for (const sowing of sowings)
    for (const { week, litres } of compostOf(problem, sowing))
      if (week >= problem.fromWeek && week <= lastWeek) at(monthOf(week)).litres += litres;
  for (let week = problem.fromWeek; week <= lastWeek; week++) {
    let [traysM2, pots] = [0, 0];
    for (const sowing of sowings)
      sowing.bench.forEach((use, i) => {
        if (week < use.fromWeek || week >= use.toWeek) return;
        if (isPots(sowing, i)) pots += sowing.plan.plantsCount;
        else traysM2 += use.m2;
      });
    if (traysM2 <= 0 && pots <= 0) continue;
    const month = at(monthOf(week));
    month.traysM2 = Math.max(month.traysM2, traysM2);
    month.pots = Math.max(month.pots, pots);
  }
  return [...months]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([month, { litres, traysM2, pots }]) => ({
      month,
      compostLitres: Math.round(litres * 10) / 10,
      trays: Math.ceil(traysM2 / trayM2 - 1e-9),
      pots: Math.ceil(pots - 1e-9),
    }));
}
