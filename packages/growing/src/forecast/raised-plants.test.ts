import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { kindById } from '../crops/index.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
import type { RaisingStage, SowingPlan } from './sowing-plan.ts';
import { runSowing } from './sowing-run.ts';

const exposure = (material: CoverMaterial, faces: 'south' | 'north' | null = null): Exposure => ({
  cover: { id: material, material, ageYears: 2, ventAboveC: null, faces },
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
});
const valentia = stationById('valentia')!;
const context = forecastContext({
  site: valentia.site,
  source: { kind: 'normals', normals: valentia.normals },
  exposures: new Map([
    ['open', exposure('open')],
    ['tunnel', exposure('polytunnel')],
    ['south', exposure('windowsill', 'south')],
    ['north', exposure('windowsill', 'north')],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 6,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 800,
});

const means = (kindId: string, stage: RaisingStage, sow: string, change: Partial<SowingPlan> = {}) => {
  const plan: SowingPlan = {
    id: 'x',
    kind: kindById(kindId)!,
    route: 'module',
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: [stage],
    exposure: 'open',
    plantDay: null,
    clearDay: null,
    plantsCount: 4,
    protection: ['mesh', 'net'],
    ...change,
  };
  const runs = context.members.map((member) => runSowing(context, member, plan, new Set()));
  const mean = (read: (run: (typeof runs)[number]) => number): number =>
    runs.reduce((sum, run) => sum + read(run), 0) / runs.length;
  return {
    kept: mean((run) => run.keptYieldShare),
    sturdy: mean((run) => run.sturdyYieldShare),
    firstDay: mean((run) => run.harvests[0]!.firstDay),
  };
};
const bench: RaisingStage = { stage: 'bench', exposure: 'tunnel' };
const sill = (faces: 'south' | 'north'): RaisingStage => ({ stage: 'sill', exposure: faces });

describe('plants raised before they are set out', () => {
  it('lose little by a winter in a pot, and much by early summer in one', () => {
    const winter = means('calabrese-early', bench, '2026-10-20', { plantDay: dayFromIso('2027-02-20')! });
    const summer = means('calabrese-early', bench, '2027-04-01', { plantDay: dayFromIso('2027-07-10')! });
    expect(winter.kept).toBeGreaterThan(0.75);
    expect(summer.kept).toBeLessThan(0.5);
  });

  it('lose nothing where nobody noted when they were sown', () => {
    const change = { plantDay: dayFromIso('2027-07-10')!, startDayGuessed: true };
    const guessed = means('calabrese-early', bench, '2027-04-01', change);
    expect(guessed.kept).toBe(1);
    expect(guessed.sturdy).toBe(1);
  });

  it('are drawn up on a north sill in February, hardly on a south one in April, never in a tunnel', () => {
    const north = means('lettuce-leaf', sill('north'), '2027-02-01');
    const south = means('lettuce-leaf', sill('south'), '2027-02-01');
    expect(north.sturdy).toBeLessThan(south.sturdy);
    expect(means('lettuce-leaf', sill('south'), '2027-04-10').sturdy).toBeGreaterThan(0.98);
    expect(means('lettuce-leaf', bench, '2027-02-01').sturdy).toBe(1);
  });
});
