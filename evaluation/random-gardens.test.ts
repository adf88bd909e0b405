import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createHighsSolver, type HighsSolver } from '../adapters/solver-highs/src/index.ts';
import {
  type ChosenPlan,
  independentCheck,
  type PlanningProblem,
  simulate,
} from '../packages/planning/src/index.ts';
import { simulatedCost } from '../packages/planning/src/verdict/simulated-cost.ts';
import { choosePlan } from '../packages/workflows/src/index.ts';
import { chooseAndLay } from '../packages/workflows/src/plan/choose-and-lay.ts';
import type { ChosenSowing } from '../packages/workflows/src/plan/chosen-sowings.ts';
import { buildProblem, contextOf } from '../packages/workflows/src/problem/build-problem.ts';
import { anyGarden, type DrawnGarden, gardenOf, type RandomGarden } from './random-garden.ts';

interface Planned {
  readonly own: RandomGarden;
  readonly problem: PlanningProblem;
  readonly chosen: ChosenPlan;
  readonly sowings: readonly ChosenSowing[];
  readonly unplaced: readonly { readonly id: string }[];
}

const memberCount = 4;
let solver: HighsSolver;
beforeAll(async () => {
  solver = await createHighsSolver();
});
afterAll(() => solver.dispose());

async function planned(drawn: DrawnGarden, withSolver: boolean, moreBeds = 0): Promise<Planned> {
  const own = gardenOf(drawn, moreBeds);
  const size = { fromDay: own.fromDay, weeks: 60, memberCount, seed: 1 };
  const problem = buildProblem(own.garden, contextOf(own.garden, null, 'plan', size)!, size);
  const options = { ...size, checkMemberCount: 1, effort: 1, timeLimitSeconds: null };
  const ports = {
    solver: withSolver ? solver : null,
    progress: () => {},
    stopRequested: () => false,
    elapsedSeconds: () => 0,
  };
  const laid = await chooseAndLay(
    problem,
    (asked) => choosePlan(asked, options, ports),
    () => {},
  );
  return { own, problem, ...laid };
}

/** Counted here once more, from the sowings alone: neither ledger, nor program, nor the independent check. */
function stripsOver({ problem, sowings }: Planned): string[] {
  const found: string[] = [];
  problem.ground.forEach((ground, g) => {
    for (let week = problem.fromWeek; week < problem.fromWeek + problem.weekCount; week++) {
      let [strips, tubLitres] = [0, 0];
      for (const s of sowings) {
        if (s.ground !== g || s.groundFromWeek > week || s.groundToWeek <= week) continue;
        strips += s.stripsCount;
        if (s.standing === null) tubLitres += s.plan.plantsCount * s.plan.kind.tubLitresPerPlant;
      }
      if (strips > ground.stripCount) found.push(`${ground.id} week ${week}: ${strips}`);
      if (ground.stripLitres > 0 && tubLitres > ground.stripLitres * ground.stripCount)
        found.push(`${ground.id} week ${week}: ${tubLitres} l`);
    }
  });
  return found;
}

function areasOver({ problem, sowings }: Planned): string[] {
  return sowings.flatMap(({ plan, ground, stripsCount, standing }) => {
    const own = problem.ground[ground]!;
    if (standing !== null || own.stripLitres > 0) return [];
    const needM2 = (plan.plantsCount * plan.kind.inRowCm * plan.kind.betweenRowCm) / 10000;
    return needM2 > stripsCount * own.stripM2 + 1e-6 ? [`${plan.id}: ${needM2} m²`] : [];
  });
}

function bedsOver({ problem, sowings }: Planned): string[] {
  const found: string[] = [];
  const held = new Map<string, number>();
  for (const { plan, placements, groundFromWeek, groundToWeek } of sowings)
    for (const { bed, stripsFrom, stripsCount } of placements) {
      if (stripsFrom < 1 || stripsFrom + stripsCount - 1 > bed.stripCount)
        found.push(`${plan.id} over the end`);
      const to = Math.min(groundToWeek, problem.fromWeek + problem.weekCount);
      for (let week = groundFromWeek; week < to; week++)
        for (let strip = stripsFrom; strip < stripsFrom + stripsCount; strip++) {
          const key = `${bed.place} ${bed.number} strip ${strip} week ${week}`;
          held.set(key, (held.get(key) ?? 0) + 1);
        }
    }
  for (const [key, times] of held) if (times > 1) found.push(`${key}: ${times} times`);
  return found;
}

/** Canes are left out: those that are short are bought, and the plan says so. */
function kitOver({ problem, sowings }: Planned): string[] {
  const found: string[] = [];
  for (const [kit, owned] of Object.entries({ ...problem.ownedKit, canes: Number.POSITIVE_INFINITY }))
    for (let week = problem.fromWeek; week < problem.fromWeek + problem.weekCount; week++) {
      const out = sowings
        .flatMap((sowing) => sowing.kit ?? [])
        .filter((use) => use.kit === kit && use.fromWeek <= week && week < use.toWeek)
        .reduce((sum, use) => sum + use.amount, 0);
      if (out > owned + 1e-6) found.push(`${kit} week ${week}: ${out} of ${owned}`);
    }
  return found;
}

function bansBroken({ own, sowings }: Planned): string[] {
  return sowings.flatMap(({ plan, standing, placements }) => {
    if (standing !== null) return [];
    const found: string[] = [];
    if (!own.offered.includes(plan.kind.id)) found.push(`${plan.kind.id} is not offered`);
    const places = placements.map((placement) => placement.bed.place);
    if (own.bannedPlace !== null && places.includes(own.bannedPlace) && plan.kind.family === 'Brassicaceae')
      found.push(`${plan.kind.id} on sick ground`);
    if (!own.hasKit && plan.protection.length > 0) found.push(`${plan.id} under a cover that nobody has`);
    return found;
  });
}

function tooMany({ own, problem, sowings }: Planned): boolean {
  if (own.atMost === null) return false;
  const { kind } = own.atMost;
  const most = problem.limits.find((limit) => limit.kind === kind)!.mostPlants;
  const fresh = sowings.filter(({ plan, standing }) => standing === null && plan.kind.id === kind);
  return fresh.reduce((sum, { plan }) => sum + plan.plantsCount, 0) > most;
}

function lived({ problem, sowings }: Planned) {
  const { context, stock, appetite, roles, stores } = problem;
  return simulate({ context, plans: sowings.map(({ plan }) => plan), stock, appetite, roles, stores });
}

function negativeServings(plan: Planned): string[] {
  const found: string[] = [];
  for (const { runs, eaten } of lived(plan)) {
    for (const run of runs) for (const lot of run.lots) if (!(lot.servings >= 0)) found.push(lot.kind);
    for (const rows of [eaten.eaten, eaten.wasted, eaten.offered, eaten.stockLeft])
      for (const weeks of rows) if (weeks.some((value) => !(value >= -1e-9))) found.push('a week below 0');
  }
  return found;
}

function holds(plan: Planned): void {
  const { problem, sowings, chosen } = plan;
  expect(chosen.choices.every(({ batches }) => Number.isInteger(batches) && batches > 0)).toBe(true);
  expect(independentCheck(problem, sowings)).toEqual([]);
  expect(stripsOver(plan)).toEqual([]);
  expect(areasOver(plan)).toEqual([]);
  expect(bedsOver(plan)).toEqual([]);
  expect(kitOver(plan)).toEqual([]);
  expect(bansBroken(plan)).toEqual([]);
  expect(tooMany(plan)).toBe(false);
  expect(negativeServings(plan)).toEqual([]);
}

const costOf = (plan: Planned): number =>
  simulatedCost(
    plan.problem,
    lived(plan).map(({ eaten }) => eaten),
  );
/** Of what nothing sown would cost: two searches that end early need not end alike. */
const searchShare = 0.03;

async function moreGroundIsNoWorse(drawn: DrawnGarden, withSolver: boolean): Promise<void> {
  const less = await planned(drawn, withSolver);
  const more = await planned(drawn, withSolver, 2);
  const nothing = costOf({ ...less, sowings: [] });
  expect(costOf(more)).toBeLessThanOrEqual(costOf(less) + searchShare * nothing);
}

/** Plenty: on a busy machine a plan takes many times as long. */
const patienceMs = 400_000;

describe('random gardens', { timeout: patienceMs }, () => {
  it('greedy: areas, strips, kit and bans are honoured, all adds up, nothing is negative', async () => {
    await fc.assert(
      fc.asyncProperty(anyGarden, async (drawn) => holds(await planned(drawn, false))),
      { numRuns: 20, seed: 20261125 },
    );
  });

  it('with the solver: the same', async () => {
    await fc.assert(
      fc.asyncProperty(anyGarden, async (drawn) => holds(await planned(drawn, true))),
      { numRuns: 4, seed: 20261126 },
    );
  });

  it('greedy: more ground is not worse by the price of what is missed', async () => {
    await fc.assert(
      fc.asyncProperty(anyGarden, (drawn) => moreGroundIsNoWorse(drawn, false)),
      { numRuns: 8, seed: 20261127 },
    );
  });

  it('with the solver: more ground is not worse by the price of what is missed', async () => {
    await fc.assert(
      fc.asyncProperty(anyGarden, (drawn) => moreGroundIsNoWorse(drawn, true)),
      { numRuns: 2, seed: 20261128 },
    );
  });
});
