/** A head or root ages by growing: short in summer, long in the cold. Common practice unless a table row says more. */
import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { type CropType, kindById, NEVER, type RouteId } from '../index.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
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
const { site, normals } = stationById('wattisham')!;
const context = forecastContext({
  site,
  source: { kind: 'normals', normals },
  exposures: new Map([
    ['open', exposure('open')],
    ['tunnel', exposure('polytunnel')],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 15,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 700,
});

function runsOf(kind: CropType, route: RouteId, sow: string, exposureId = 'open') {
  const plan = {
    id: kind.id,
    kind,
    route,
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: route === 'module' ? [{ stage: 'bench' as const, exposure: 'tunnel' }] : [],
    exposure: exposureId,
    plantDay: null,
    clearDay: null,
    plantsCount: 20,
    protection: ['mesh', 'net'] as const,
  };
  return context.members.map((member) => runSowing(context, member, plan, new Set()));
}

/** Days from the first to the last day of the first harvest, middle of the members. */
function standsDays(id: string, route: RouteId, sow: string, exposureId = 'open'): number {
  const days = runsOf(kindById(id)!, route, sow, exposureId).flatMap(({ harvests: [first] }) =>
    first!.firstDay < NEVER ? [first!.lastDay - first!.firstDay] : [],
  );
  return days.sort((a, b) => a - b)[Math.floor(days.length / 2)]!;
}

describe('standing ends by growth', () => {
  it('lettuce hearts hold one to two weeks in summer and about three in autumn', () => {
    const summer = standsDays('lettuce-heart', 'module', '2026-05-01');
    expect(summer).toBeGreaterThanOrEqual(7);
    expect(summer).toBeLessThanOrEqual(14);
    const autumn = standsDays('lettuce-heart', 'module', '2026-08-10');
    expect(autumn).toBeGreaterThanOrEqual(17);
    expect(autumn).toBeLessThanOrEqual(29);
  });

  it('radishes are woolly in one to two weeks of summer, and wait longer in March and April', () => {
    const summer = standsDays('radish-summer', 'direct', '2026-06-01');
    expect(summer).toBeGreaterThanOrEqual(7);
    expect(summer).toBeLessThanOrEqual(14);
    expect(standsDays('radish-summer', 'direct', '2026-02-01', 'tunnel')).toBeGreaterThan(1.2 * summer);
  });

  it('summer beetroot is coarse in about ten weeks, autumn beetroot stands into the winter', () => {
    const summer = standsDays('beetroot', 'direct', '2026-04-15');
    expect(summer).toBeGreaterThanOrEqual(50);
    expect(summer).toBeLessThanOrEqual(85);
    expect(standsDays('beetroot', 'direct', '2026-07-20')).toBeGreaterThan(1.5 * summer);
  });

  it('winter cabbage holds eight weeks and more, summer cabbage two to four', () => {
    expect(standsDays('cabbage-winter', 'module', '2026-05-10')).toBeGreaterThanOrEqual(56);
    const summer = standsDays('cabbage-summer', 'module', '2026-03-20');
    expect(summer).toBeGreaterThanOrEqual(14);
    expect(summer).toBeLessThanOrEqual(30);
  });

  it('no crop stands beyond its calendar window, however long it would keep its quality', () => {
    const lettuce = kindById('lettuce-heart')!;
    const long = { ...lettuce, harvests: lettuce.harvests.map((h) => ({ ...h, standingDays: 190 })) };
    for (const { harvests } of runsOf(long, 'module', '2026-05-01'))
      expect(harvests[0]!.lastDay - harvests[0]!.firstDay).toBeLessThanOrEqual(
        lettuce.harvests[0]!.windowDays,
      );
  });

  it('a curd left standing in the cool is eaten on its last day still', () => {
    for (const run of runsOf(kindById('cauliflower-overwintering')!, 'module', '2026-06-01')) {
      const curd = run.harvests[0]!;
      if (curd.firstDay >= NEVER) continue;
      for (const lot of run.lots) expect(7 * lot.toWeek + 3).toBeGreaterThanOrEqual(curd.lastDay);
    }
  });
});
