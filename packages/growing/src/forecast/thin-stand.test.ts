import { dayFromIso } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import { stationById } from '../climate/index.ts';
import { kindById } from '../crops/index.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
import type { SowingPlan, SowingRun } from './sowing-plan.ts';
import { runSowing } from './sowing-run.ts';

const exposure = (material: CoverMaterial): Exposure => ({
  cover: { id: material, material, ageYears: 2, ventAboveC: null, faces: null },
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
});
const { site, normals } = stationById('valentia')!;
const startDay = dayFromIso('2026-01-01')!;
/** The same place with every month warmer by so much. */
const warmerBy = (moreC: number) =>
  forecastContext({
    site,
    source: {
      kind: 'normals',
      normals: {
        ...normals,
        tmaxC: normals.tmaxC.map((c) => c + moreC),
        tminC: normals.tminC.map((c) => c + moreC),
      },
    },
    exposures: new Map([
      ['open', exposure('open')],
      ['tunnel', exposure('polytunnel')],
      ['sill', exposure('windowsill')],
    ]),
    seed: 1,
    purpose: 'plan',
    memberCount: 12,
    startDay,
    dayCount: 700,
  });
const [usual, hot] = [warmerBy(0), warmerBy(9)];

function runs(context: typeof usual, kind: string, sow: string, change: Partial<SowingPlan>): SowingRun[] {
  const plan: SowingPlan = {
    id: 'x',
    kind: kindById(kind)!,
    route: 'direct',
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: [],
    exposure: 'open',
    plantDay: null,
    clearDay: null,
    plantsCount: 100,
    protection: [],
    ...change,
  };
  return context.members.map((member) => runSowing(context, member, plan, new Set()));
}
const mean = (all: readonly SowingRun[], of: (run: SowingRun) => number): number =>
  all.reduce((sum, run) => sum + of(run), 0) / all.length;
const up = (all: readonly SowingRun[]): number => mean(all, (run) => run.germinatingShare);

test('lettuce sown into an August tunnel: all of it in a mild summer, a thin stand or none in a hot one', () => {
  const where = { exposure: 'tunnel' };
  expect(up(runs(usual, 'lettuce-leaf', '2026-08-05', where))).toBeGreaterThan(0.9);
  expect(up(runs(hot, 'lettuce-leaf', '2026-08-05', where))).toBeLessThan(0.5);
  expect(up(runs(hot, 'lettuce-leaf', '2026-10-05', where))).toBeGreaterThan(0.8);
});

test('the same lettuce is up where it is raised in the cool, whatever the bed', () => {
  const raised = { exposure: 'tunnel', route: 'module' as const };
  const cool = runs(hot, 'lettuce-leaf', '2026-08-05', {
    ...raised,
    stages: [{ stage: 'bench', exposure: 'open' }],
  });
  expect(up(cool)).toBeGreaterThan(up(runs(hot, 'lettuce-leaf', '2026-08-05', { exposure: 'tunnel' })));
});

test('spinach falls by degrees, where beet in the same bed does not', () => {
  const spinach = up(runs(hot, 'spinach-spring', '2026-07-10', {}));
  expect(spinach).toBeLessThan(0.6);
  expect(spinach).toBeGreaterThan(0.1);
  expect(up(runs(hot, 'beetroot', '2026-07-10', {}))).toBeGreaterThan(0.95);
});

test('plants that were counted have no seed to lose', () => {
  const counted = runs(hot, 'spinach-spring', '2026-07-10', { counted: true });
  expect(counted.every((run) => run.germinatingShare === 1)).toBe(true);
});

test('less than half of the seed up is a thin stand: servings fall with it', () => {
  const sown = runs(hot, 'spinach-spring', '2026-07-10', {});
  const counted = runs(hot, 'spinach-spring', '2026-07-10', { counted: true });
  const given = (run: SowingRun): number => run.lots.reduce((sum, lot) => sum + lot.servings, 0);
  const thin = sown.flatMap((run, m) => {
    const whole = given(counted[m]!);
    return run.germinatingShare > 0 && run.germinatingShare < 0.5 && whole > 0 ? [{ run, whole }] : [];
  });
  expect(thin.length).toBeGreaterThan(2);
  for (const { run, whole } of thin) expect(given(run) / whole).toBeCloseTo(2 * run.germinatingShare, 6);
});
