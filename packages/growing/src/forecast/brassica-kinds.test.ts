/** What tells the brassicas apart: season, hardiness, second harvests. Common practice unless a table row says more. */
import { civilFromDay, dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { hazardsOf, kindById, NEVER, type RouteId } from '../index.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
import { plantsPerM2 } from './servings.ts';
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
const dublin = stationById('dublin')!;
const context = forecastContext({
  site: dublin.site,
  source: { kind: 'normals', normals: dublin.normals },
  exposures: new Map([
    ['open', exposure('open')],
    ['bench', exposure('polytunnel')],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 9,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 800,
});

function runsOf(kindId: string, route: RouteId, sow: string) {
  const kind = kindById(kindId)!;
  const plan = {
    id: kindId,
    kind,
    route,
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: route === 'module' ? [{ stage: 'bench' as const, exposure: 'bench' }] : [],
    exposure: 'open',
    plantDay: null,
    clearDay: null,
    plantsCount: plantsPerM2(kind),
    protection: ['mesh', 'net'] as const,
  };
  return context.members.map((member) => runSowing(context, member, plan, new Set()));
}

/** Median first day of a harvest. */
function firstDay(kindId: string, route: RouteId, sow: string, harvest: string): number {
  const days = runsOf(kindId, route, sow).map((run) => run.harvests.find((h) => h.id === harvest)!.firstDay);
  return days.sort((a, b) => a - b)[4]!;
}

const monthOf = (day: number): number => civilFromDay(day).month;

describe('brassicas of one crop', () => {
  it.each([
    ['broccoli-sprouting-early', 'broccoli-sprouting', '2026-05-01', 'shoots'],
    ['brussels-sprout-early', 'brussels-sprout', '2026-04-01', 'buttons'],
    ['cabbage-red', 'cabbage-winter', '2026-04-15', 'head'],
    ['cabbage-summer', 'cabbage-red', '2026-04-15', 'head'],
    ['calabrese-early', 'calabrese-autumn', '2026-05-15', 'head'],
    ['cauliflower-summer', 'cauliflower-autumn', '2026-04-10', 'curd'],
    ['kale', 'kale-late', '2026-06-01', 'leaves'],
  ])('%s comes before %s from the same sowing', (early, late, sow, harvest) => {
    const before = firstDay(early, 'module', sow, harvest);
    expect(before).toBeLessThan(NEVER);
    expect(before).toBeLessThan(firstDay(late, 'module', sow, harvest));
  });

  it('stand frost in the order of their seasons', () => {
    const hardened = ['kale-late', 'cabbage-savoy', 'cabbage-winter', 'cabbage-red', 'cabbage-summer'].map(
      (id) => kindById(id)!.frostHardenedC,
    );
    expect(hardened).toEqual([...hardened].sort((a, b) => a - b));
    expect(new Set(hardened).size).toBe(hardened.length);
  });
});

describe('second harvests', () => {
  it.each([
    ['calabrese-autumn', 'module', '2026-05-15', 'head', 'shoots'],
    ['brussels-sprout-early', 'module', '2026-03-20', 'buttons', 'top'],
    ['kale-late', 'module', '2026-06-01', 'leaves', 'shoots'],
    ['turnip-maincrop', 'direct', '2026-07-20', 'roots', 'tops'],
  ] as const)('of %s follow the first', (kindId, route, sow, first, second) => {
    expect(firstDay(kindId, route, sow, second)).toBeGreaterThan(firstDay(kindId, route, sow, first));
  });

  it('of late kale and turnips wait for the end of winter', () => {
    expect([2, 3, 4]).toContain(monthOf(firstDay('kale-late', 'module', '2026-06-01', 'shoots')));
    expect([2, 3, 4]).toContain(monthOf(firstDay('turnip-maincrop', 'direct', '2026-07-20', 'tops')));
  });
});

describe('roots of the family', () => {
  it('are mined by the fly of the cabbages in the same bad years', () => {
    const groups = (crop: string) =>
      hazardsOf(crop)
        .filter((hazard) => hazard.id.includes('root-fly'))
        .map((hazard) => [hazard.stage, hazard.group]);
    for (const crop of ['swede', 'turnip']) expect(groups(crop), crop).toEqual([['any', 'root-fly']]);
    expect(groups('radish')).toEqual([['young', 'root-fly']]);
    expect(groups('cabbage')).toEqual([['young', 'root-fly']]);
  });

  it('summer radish is done in weeks, swede stands into the new year', () => {
    const radish = firstDay('radish-summer', 'direct', '2026-06-01', 'roots') - dayFromIso('2026-06-01')!;
    expect(radish).toBeGreaterThan(20);
    expect(radish).toBeLessThan(36);
    for (const run of runsOf('swede', 'direct', '2026-06-01'))
      expect(run.harvests[0]!.lastDay).toBeGreaterThan(dayFromIso('2027-01-01')!);
  });
});
