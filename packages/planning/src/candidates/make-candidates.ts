/**
 * Possible sowings from simulated weather, no table of sowing months: each kind on each of its routes, into each class
 * of ground that can carry it, in every week (every second for slow kinds), with one to three ends. What gives little
 * for its ground, against the best week of the same kind in the same ground, is left out.
 */

import { type Day, mondayOf, quantileOfSorted, type Week, weekOfDay } from '@twelvemonth/basis';
import {
  type CropType,
  inSeasonDays,
  NEVER,
  runSowing,
  type SowingPlan,
  type SowingRun,
  usualPotDays,
} from '@twelvemonth/growing';
import type { BenchUse, Candidate, GroundClass, PlanningProblem } from '../problem.ts';
import { benchGrain } from '../program/bench-grain.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { candidateWork } from '../work/minutes-by-week.ts';
import { benchUses } from './bench-uses.ts';
import { clearOptions } from './clear-options.ts';
import { withoutDominated } from './dominance.ts';
import { offeredServings } from './offered-servings.ts';
import { careOf } from './place-care.ts';
import { plantedWhenAllowed } from './planting-days.ts';
import { canGrowIn, plantsPerStrip, type RouteChoice, routeChoice } from './routes.ts';
import { warmEnough } from './warm-enough.ts';

/** A week's sowing is kept when it gives at least this share of the best week's servings per strip. */
const worthShare = 0.45;
const slowAfterWeeks = 14;
const nearWeeks = 9;
/** Little ground needs no fine choice of weeks. */
const fewStrips = 15;
/** Sowings of the second year, and strips that feed for longer than this, are looked at every so many weeks more. */
const farWeeks = 44;
const fedLongWeeks = 8;
/** How long the variant that waits for its ground is kept in pots. */
const heldInPotsWeeks = 4;
/** Sowing weeks go on this long: what is begun later feeds nobody within the horizon. */
const lastSowingBeforeEndWeeks = 8;

interface Probe {
  readonly plan: SowingPlan;
  readonly runs: readonly SowingRun[];
  readonly servings: number;
  readonly firstWeek: Week;
  /** By then it has begun in most scenarios. */
  readonly begunDay: Day;
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

export function probeOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  plan: SowingPlan,
): Probe | null {
  const runs = scenarios.map(({ member }) => runSowing(problem.context, member, plan, problem.stores));
  const servings = servingsWithin(problem, runs, scenarios);
  if (servings <= 0) return null;
  const ground = runs.map((run) => run.groundDay).filter((day) => day < NEVER);
  if (ground.length * 2 <= runs.length) return null;
  const firsts = runs.flatMap((run) => run.harvests.map((h) => h.firstDay).filter((day) => day < NEVER));
  if (firsts.length === 0) return null;
  const firstOfEach = runs.map((run) => Math.min(...run.harvests.map((h) => h.firstDay)));
  if (firstOfEach.filter((day) => day < NEVER).length * 4 < runs.length * 3) return null;
  const groundDay = Math.round(quantile(ground, 0.6));
  const begunDay = Math.round(quantile(firstOfEach, 0.75));
  if (!warmEnough(scenarios, plan.kind, plan.exposure, groundDay, begunDay)) return null;
  return {
    plan,
    runs,
    servings,
    firstWeek: weekOfDay(Math.min(...firsts)),
    begunDay,
    groundDay,
    clearDay: Math.round(
      quantile(
        runs.map((run) => run.clearDay),
        0.8,
      ),
    ),
  };
}

function raisingOf(
  problem: PlanningProblem,
  choice: RouteChoice,
  probe: Probe,
  heldWeeks: number,
): BenchUse[] {
  const startWeek = weekOfDay(probe.plan.startDay);
  const emerged = probe.runs.map((run) => Math.min(run.emergenceDay, probe.groundDay));
  return benchUses(problem.benches, choice, probe.plan.kind, probe.plan.plantsCount, {
    startWeek,
    emergedWeek: weekOfDay(quantile(emerged, 0.6)) + 1,
    readyWeek: weekOfDay(probe.groundDay),
    heldWeeks,
  });
}

export function candidateOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  ground: GroundClass,
  groundIndex: number,
  choice: RouteChoice,
  probe: Probe,
  clearDay: Day,
  heldWeeks: number,
): Candidate {
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
  const runs = scenarios.map(({ member }) => runSowing(problem.context, member, plan, problem.stores));
  const bench =
    ground.bench === null
      ? raisingOf(problem, choice, probe, heldWeeks)
      : [
          {
            bench: ground.bench,
            fromWeek: groundFromWeek,
            toWeek: groundToWeek,
            m2: benchGrain(ground.stripM2),
          },
        ];
  const sowing = { plan, ground: groundIndex, stripsCount: 1, groundFromWeek, groundToWeek, bench };
  const lots = runs.map((run) => run.lots);
  const outcomes = lots.map((own, s) => ({ prob: scenarios[s]!.prob, lots: own }));
  return {
    plan,
    ground: groundIndex,
    stripsPerBatch: 1,
    groundFromWeek,
    groundToWeek,
    bench,
    startWeek,
    ...candidateWork(problem, sowing, outcomes),
    mostBatches: ground.stripCount,
    group: null,
    lots,
    offeredServings: offeredServings(problem, scenarios, lots),
  };
}

/** The same sowing kept in pots until its ground is free later; null where it cannot wait so long. */
function heldProbe(problem: PlanningProblem, scenarios: readonly Scenario[], probe: Probe): Probe | null {
  const { plan } = probe;
  if (plan.stages.length === 0 || usualPotDays(plan.kind) < heldInPotsWeeks * 7) return null;
  const plantDay = mondayOf(weekOfDay(probe.groundDay) + heldInPotsWeeks);
  return probeOf(problem, scenarios, { ...plan, plantDay });
}

/** Sets, cloves and tubers can be had in their season only (the south half a year later). */
function canBeHad(problem: PlanningProblem, kind: CropType, day: Day): boolean {
  if (kind.startsAs === 'seed') return true;
  const southern = problem.context.site.latitudeDeg < 0;
  return inSeasonDays(day, kind.stockFromDayOfYear, kind.stockToDayOfYear, southern);
}

/**
 * Near sowings week by week, far ones coarser: the plan is made again before they are due. Where one strip feeds the
 * household for many weeks (herbs), a week sooner or later makes no difference either.
 */
function stepWeeks(weeksAhead: number, slow: boolean, fedWeeks: number, ground: GroundClass): number {
  const near = weeksAhead < nearWeeks && ground.stripCount >= fewStrips && fedWeeks < fedLongWeeks;
  if (near) return slow ? 2 : 1;
  const step = slow || fedWeeks >= fedLongWeeks ? 4 : 3;
  return weeksAhead < farWeeks ? step : step + 2;
}

/** Weeks for which a strip's servings would be the whole of what the household eats of their roles. */
function fedWeeksOf(problem: PlanningProblem, kind: CropType, servings: number): number {
  const { roles, garden } = problem.appetite;
  const wanted = new Set(kind.harvests.map((harvest) => harvest.role));
  const most = roles.reduce((sum, role, r) => (wanted.has(role) ? sum + Math.max(...garden[r]!) : sum), 0);
  return most <= 0 ? 0 : servings / most;
}

function probesOf(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  kind: CropType,
  ground: GroundClass,
  choice: RouteChoice,
): Probe[] {
  const probes: Probe[] = [];
  const lastWeek = problem.weekCount - lastSowingBeforeEndWeeks;
  let slow = false;
  let fedWeeks = 0;
  for (let w = 0; w < lastWeek; w += stepWeeks(w, slow, fedWeeks, ground)) {
    const startDay = Math.max(problem.fromDay, mondayOf(problem.fromWeek + w) + 2);
    if (!canBeHad(problem, kind, startDay)) continue;
    const probe = probeOf(problem, scenarios, {
      id: `${kind.id}/${choice.route}/${ground.id}/${startDay}`,
      kind,
      route: choice.route,
      startDay,
      startSpreadDays: 0,
      stages: choice.stages,
      exposure: ground.exposure,
      plantDay: null,
      clearDay: null,
      plantsCount: plantsPerStrip(kind, ground),
      protection: problem.protection,
      keepsSeed: problem.savesSeedOf.has(kind.id),
      care: careOf(ground),
    });
    if (probe === null) continue;
    slow = probe.firstWeek - weekOfDay(startDay) > slowAfterWeeks;
    fedWeeks = fedWeeksOf(problem, kind, probe.servings);
    probes.push(probe);
  }
  const best = probes.reduce((most, probe) => Math.max(most, probe.servings), 0);
  return probes.filter((probe) => probe.servings >= worthShare * best);
}

/** Somebody eats one of its roles, or wishes for a number of its plants. */
function isWanted({ appetite, limits }: PlanningProblem, kind: CropType): boolean {
  const roles = new Set<string>(appetite.roles);
  return (
    kind.harvests.some(({ role }) => roles.has(role)) ||
    limits.some((limit) => limit.kind === kind.id && limit.leastPlants > 0)
  );
}

export function makeCandidates(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  onProgress: (doneShare: number) => void,
): Candidate[] {
  const candidates: Candidate[] = [];
  const kinds = problem.kinds.filter((kind) => !kind.perennial && isWanted(problem, kind));
  kinds.forEach((kind, k) => {
    onProgress(k / kinds.length);
    problem.ground.forEach((ground, g) => {
      if (!canGrowIn(kind, ground) || plantsPerStrip(kind, ground) <= 0) return;
      const own: Candidate[] = [];
      for (const route of kind.routes) {
        const choice = routeChoice(problem, route);
        if (choice === null) continue;
        for (const probe of probesOf(problem, scenarios, kind, ground, choice)) {
          for (const clearDay of clearOptions({ ...probe, kind }, ground.growsIn))
            own.push(candidateOf(problem, scenarios, ground, g, choice, probe, clearDay, 0));
          const held = heldProbe(problem, scenarios, probe);
          if (held !== null && held.servings >= worthShare * probe.servings)
            own.push(
              candidateOf(problem, scenarios, ground, g, choice, probe, held.clearDay, heldInPotsWeeks),
            );
        }
      }
      const allowed = own.filter(({ plan }) => plantedWhenAllowed(problem, plan));
      candidates.push(...withoutDominated(allowed, scenarios));
    });
  });
  onProgress(1);
  return candidates;
}
