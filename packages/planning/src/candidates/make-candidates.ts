/**
 * Possible sowings from simulated weather, no table of sowing months: each kind on each of its routes, into each class
 * of ground that can carry it, in every week (every second for slow kinds), with one to three ends. What gives little
 * for its ground, against the best week of the same kind in the same ground, is left out.
 */
import { type Day, mondayOf, quantileOfSorted, type Week, weekOfDay } from '@twelvemonth/basis';
import {
  type CropType,
  NEVER,
  type RouteId,
  runSowing,
  type SowingPlan,
  type SowingRun,
} from '@twelvemonth/growing';
import type { BenchUse, Candidate, GroundClass, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { canGrowIn, plantsPerStrip, type RouteChoice, routeChoice } from './routes.ts';

/** A week's sowing is kept when it gives at least this share of the best week's servings per strip. */
const worthShare = 0.3;
const slowAfterWeeks = 14;
/** How long the variant that waits for its ground is kept in pots. */
const heldInPotsWeeks = 4;
/** Sowing weeks go on this long: what is begun later feeds nobody within the horizon. */
const lastSowingBeforeEndWeeks = 8;

interface Probe {
  readonly plan: SowingPlan;
  readonly runs: readonly SowingRun[];
  readonly servings: number;
  readonly firstWeek: Week;
  readonly groundDay: Day;
  readonly clearDay: Day;
}

function quantile(values: readonly number[], prob: number): number {
  return quantileOfSorted(Float64Array.from(values).sort(), prob);
}

function servingsWithin(
  problem: PlanningProblem,
  runs: readonly SowingRun[],
  scenarios: readonly Scenario[],
): number {
  const end = problem.fromWeek + problem.weekCount;
  let sum = 0;
  runs.forEach((run, s) => {
    for (const lot of run.lots) if (lot.fromWeek < end) sum += lot.servings * scenarios[s]!.prob;
  });
  return sum;
}

function probeOf(problem: PlanningProblem, scenarios: readonly Scenario[], plan: SowingPlan): Probe | null {
  const runs = scenarios.map(({ member }) => runSowing(problem.context, member, plan, problem.stores));
  const servings = servingsWithin(problem, runs, scenarios);
  if (servings <= 0) return null;
  const ground = runs.map((run) => run.groundDay).filter((day) => day < NEVER);
  if (ground.length * 2 <= runs.length) return null;
  const firsts = runs.flatMap((run) => run.harvests.map((h) => h.firstDay).filter((day) => day < NEVER));
  if (firsts.length === 0) return null;
  return {
    plan,
    runs,
    servings,
    firstWeek: weekOfDay(Math.min(...firsts)),
    groundDay: Math.round(quantile(ground, 0.6)),
    clearDay: Math.round(
      quantile(
        runs.map((run) => run.clearDay),
        0.8,
      ),
    ),
  };
}

function benchUses(
  problem: PlanningProblem,
  choice: RouteChoice,
  kind: CropType,
  probe: Probe,
  heldWeeks: number,
): BenchUse[] {
  if (choice.benches.length === 0) return [];
  const plants = probe.plan.plantsCount;
  const startWeek = weekOfDay(probe.plan.startDay);
  const groundWeek = Math.max(startWeek + 1, weekOfDay(probe.groundDay));
  const emerged = probe.runs.map((run) => Math.min(run.emergenceDay, probe.groundDay));
  const emergedWeek = Math.max(startWeek + 1, weekOfDay(quantile(emerged, 0.6)) + 1);
  const last = choice.benches.length - 1;
  const trayM2 = plants * kind.moduleM2PerPlant;
  const uses: BenchUse[] = choice.benches.flatMap((bench, i) => {
    const stage = problem.benches[bench]!.stage;
    const from = i === 0 ? startWeek : stage === 'frame' ? Math.max(startWeek, groundWeek - 2) : emergedWeek;
    const to =
      i === last
        ? groundWeek
        : i === 0 && choice.benches.length > 1 && stage === 'mat'
          ? emergedWeek
          : groundWeek;
    return from < to ? [{ bench, fromWeek: from, toWeek: to, m2: trayM2 }] : [];
  });
  if (heldWeeks > 0) {
    const potM2 = plants * kind.potM2PerPlant;
    uses.push({
      bench: choice.benches[last]!,
      fromWeek: groundWeek,
      toWeek: groundWeek + heldWeeks,
      m2: potM2,
    });
  }
  return uses;
}

function clearOptions(probe: Probe): Day[] {
  const natural = probe.clearDay;
  const length = natural - probe.groundDay;
  const firstDay = mondayOf(probe.firstWeek);
  const options = [natural];
  for (const weeks of [5, 11]) {
    const earlier = natural - weeks * 7;
    if (length > 84 && earlier > firstDay + 21) options.push(earlier);
  }
  return options;
}

function candidateOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  ground: GroundClass,
  groundIndex: number,
  choice: RouteChoice,
  probe: Probe,
  clearDay: Day,
  heldWeeks: number,
): Candidate {
  const { kind } = probe.plan;
  const planted = choice.stages.length > 0;
  const plan: SowingPlan = {
    ...probe.plan,
    id: `${probe.plan.id}/${clearDay}/${heldWeeks}`,
    plantDay: planted ? mondayOf(weekOfDay(probe.groundDay) + heldWeeks) : null,
    clearDay,
  };
  const startWeek = weekOfDay(plan.startDay);
  const groundFromWeek = planted ? weekOfDay(probe.groundDay) + heldWeeks : startWeek;
  const groundToWeek = Math.max(groundFromWeek + 1, weekOfDay(clearDay) + 1);
  const weeks = groundToWeek - groundFromWeek;
  const runs = scenarios.map(({ member }) => runSowing(problem.context, member, plan, problem.stores));
  return {
    plan,
    ground: groundIndex,
    stripsPerBatch: 1,
    groundFromWeek,
    groundToWeek,
    bench:
      ground.bench === null
        ? benchUses(problem, choice, kind, probe, heldWeeks)
        : [{ bench: ground.bench, fromWeek: groundFromWeek, toWeek: groundToWeek, m2: ground.stripM2 }],
    startWeek,
    minutes: ground.stripM2 * (kind.workMinutesToStartPerM2 + kind.workMinutesPerM2Week * weeks),
    mostBatches: ground.stripCount,
    group: null,
    lots: runs.map((run) => run.lots),
  };
}

/** The same sowing kept in pots until its ground is free later; null where it cannot wait so long. */
function heldProbe(problem: PlanningProblem, scenarios: readonly Scenario[], probe: Probe): Probe | null {
  const { plan } = probe;
  if (plan.stages.length === 0 || plan.kind.holdDays < heldInPotsWeeks * 7) return null;
  const plantDay = mondayOf(weekOfDay(probe.groundDay) + heldInPotsWeeks);
  return probeOf(problem, scenarios, { ...plan, plantDay });
}

function sowingDays(problem: PlanningProblem, stepWeeks: number): Day[] {
  const days: Day[] = [];
  const last = problem.fromWeek + problem.weekCount - lastSowingBeforeEndWeeks;
  for (let week = problem.fromWeek; week < last; week += stepWeeks)
    days.push(Math.max(problem.fromDay, mondayOf(week) + 2));
  return days;
}

export function routesOf(kind: CropType): readonly RouteId[] {
  return kind.routes;
}

export function makeCandidates(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  onProgress: (doneShare: number) => void,
): Candidate[] {
  const candidates: Candidate[] = [];
  const kinds = problem.kinds.filter((kind) => !kind.perennial);
  kinds.forEach((kind, k) => {
    onProgress(k / kinds.length);
    problem.ground.forEach((ground, g) => {
      if (!canGrowIn(kind, ground)) return;
      const plants = plantsPerStrip(kind, ground);
      if (plants <= 0) return;
      for (const route of routesOf(kind)) {
        const choice = routeChoice(problem, route);
        if (choice === null) continue;
        const probes: Probe[] = [];
        let step = 1;
        for (const startDay of sowingDays(problem, 1)) {
          if (step > 1 && (weekOfDay(startDay) - problem.fromWeek) % step !== 0) continue;
          const probe = probeOf(problem, scenarios, {
            id: `${kind.id}/${route}/${ground.id}/${startDay}`,
            kind,
            route,
            startDay,
            startSpreadDays: 0,
            stages: choice.stages,
            exposure: ground.exposure,
            plantDay: null,
            clearDay: null,
            plantsCount: plants,
            protection: problem.protection,
          });
          if (probe === null) continue;
          step = probe.firstWeek - weekOfDay(startDay) > slowAfterWeeks ? 2 : 1;
          probes.push(probe);
        }
        const best = probes.reduce((most, probe) => Math.max(most, probe.servings), 0);
        for (const probe of probes) {
          if (probe.servings < worthShare * best) continue;
          for (const clearDay of clearOptions(probe))
            candidates.push(candidateOf(problem, scenarios, ground, g, choice, probe, clearDay, 0));
          const held = heldProbe(problem, scenarios, probe);
          if (held !== null && held.servings >= worthShare * best)
            candidates.push(
              candidateOf(problem, scenarios, ground, g, choice, probe, held.clearDay, heldInPotsWeeks),
            );
        }
      }
    });
  });
  onProgress(1);
  return candidates;
}
