import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { allKinds, kindById } from '../crops/index.ts';
import { NEVER } from '../growth/place-clock.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
import { plantsPerM2 } from './servings.ts';
import type { SowingPlan } from './sowing-plan.ts';
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
const valentia = stationById('valentia')!;
const startDay = dayFromIso('2026-01-01')!;
const context = forecastContext({
  site: valentia.site,
  source: { kind: 'normals', normals: valentia.normals },
  exposures: new Map([
    ['open', exposure('open')],
    ['tunnel', exposure('polytunnel')],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 8,
  startDay,
  dayCount: 1000,
});
const stores = new Set(['dry', 'sand', 'cool-damp', 'frost-free'] as const);
const planOf = (kindId: string, sow: string, change: Partial<SowingPlan> = {}): SowingPlan => {
  const kind = kindById(kindId)!;
  return {
    id: 'x',
    kind,
    route: kind.startsAs === 'seed' ? 'direct' : 'planted',
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: [],
    exposure: 'open',
    plantDay: null,
    clearDay: null,
    plantsCount: plantsPerM2(kind),
    protection: ['mesh', 'net'],
    ...change,
  };
};
const runs = (plan: SowingPlan) => context.members.map((member) => runSowing(context, member, plan, stores));
const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

describe('one sowing in one member', () => {
  it('is the same each time it is asked for', () => {
    const plan = planOf('kale', '2026-05-10');
    expect(runs(plan)).toEqual(runs(plan));
  });

  it('goes in order: sown, up, in the ground, eaten, cleared; lots add up to the harvests', () => {
    const raising = { stages: [{ stage: 'bench' as const, exposure: 'tunnel' }], route: 'module' as const };
    fc.assert(
      fc.property(
        fc.constantFrom(...allKinds().filter((k) => !k.perennial)),
        fc.integer({ min: 0, max: 360 }),
        fc.boolean(),
        (kind, offset, covered) => {
          const raised = kind.routes.includes('module') ? raising : {};
          const where = { exposure: covered ? 'tunnel' : 'open' };
          const plan = planOf(kind.id, isoFromDay(startDay + offset), { ...raised, ...where });
          for (const run of runs(plan).slice(0, 2)) {
            const servings = run.harvests.reduce((s, h) => s + h.servings, 0);
            expect(run.lots.reduce((s, l) => s + l.servings, 0)).toBeCloseTo(servings, 6);
            for (const share of [run.boltedShare, run.frostedShare, run.lostShare]) {
              expect(share).toBeGreaterThanOrEqual(0);
              expect(share).toBeLessThanOrEqual(1);
            }
            if (run.groundDay >= NEVER) continue;
            expect(run.groundDay).toBeGreaterThanOrEqual(run.startDay);
            for (const h of run.harvests) {
              if (h.firstDay >= NEVER) expect(h.reason).not.toBeNull();
              else expect(h.lastDay).toBeGreaterThanOrEqual(h.firstDay);
              if (h.firstDay < NEVER) expect(h.firstDay).toBeGreaterThanOrEqual(run.groundDay);
            }
          }
        },
      ),
      { numRuns: 120 },
    );
  });

  it('lets sets planted a month earlier under cover bulb sooner and bolt more; what bolted is never stored', () => {
    const october = runs(planOf('onion-autumn-red', '2026-10-05', { exposure: 'tunnel' }));
    const november = runs(planOf('onion-autumn-red', '2026-11-05', { exposure: 'tunnel' }));
    const first = (rs: ReturnType<typeof runs>): number => median(rs.map((r) => r.harvests[0]!.firstDay));
    expect(first(october)).toBeLessThan(first(november));
    expect(median(october.map((r) => r.boltedShare))).toBeGreaterThan(
      median(november.map((r) => r.boltedShare)) + 0.1,
    );
    for (const run of october)
      for (const lot of run.lots.filter((l) => l.bolted))
        expect(lot.store === null && lot.toWeek - lot.fromWeek <= 4).toBe(true);
  });

  it('grows leaves back in December at a small share of October', () => {
    const perDay = (from: string, to: string): number =>
      median(
        context.members.map((member) => {
          const clock = member.clockOf('tunnel');
          const sum = clock.growth(kindById('spinach-overwintering')!);
          const [a, b] = [dayFromIso(from)! - clock.startDay, dayFromIso(to)! - clock.startDay];
          return (sum[b]! - sum[a]!) / (b - a);
        }),
      );
    expect(perDay('2026-12-10', '2027-01-10') / perDay('2026-10-01', '2026-10-31')).toBeLessThan(0.35);
  });

  it('clears on the planned day and stores what can be stored', () => {
    const plan = planOf('carrot-maincrop', '2026-05-20', { clearDay: dayFromIso('2026-11-15')! });
    for (const run of runs(plan)) {
      expect(run.clearDay).toBeLessThanOrEqual(plan.clearDay!);
      expect(run.lots.some((l) => l.store === 'sand' && l.toWeek * 7 - 3 > plan.clearDay! + 60)).toBe(true);
    }
  });

  it('keeps plants in pots until their ground is free, at a price', () => {
    const raised = { stages: [{ stage: 'bench' as const, exposure: 'tunnel' }], route: 'module' as const };
    const soon = runs(planOf('calabrese-early', '2026-03-20', raised));
    const late = runs(
      planOf('calabrese-early', '2026-03-20', { ...raised, plantDay: dayFromIso('2026-06-20')! }),
    );
    const servings = (rs: ReturnType<typeof runs>): number => median(rs.map((r) => r.harvests[0]!.servings));
    expect(median(late.map((r) => r.groundDay))).toBeGreaterThanOrEqual(dayFromIso('2026-06-20')!);
    expect(servings(late)).toBeLessThan(servings(soon));
  });
});
