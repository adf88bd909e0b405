/** Young crowns are left alone. Common practice. */
import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { kindById, NEVER } from '../index.ts';
import { forecastContext } from './member.ts';
import { runSowing } from './sowing-run.ts';

const { site, normals } = stationById('wattisham')!;
const contextAt = (latitudeDeg: number, months: (of: readonly number[]) => readonly number[]) =>
  forecastContext({
    site: { ...site, latitudeDeg },
    source: {
      kind: 'normals',
      normals: Object.fromEntries(
        Object.entries(normals).map(([name, value]) => [name, Array.isArray(value) ? months(value) : value]),
      ) as unknown as typeof normals,
    },
    exposures: new Map([
      [
        'open',
        {
          cover: { id: 'open', material: 'open', ageYears: 0, ventAboveC: null, faces: null },
          winterSun: 'all',
          aspect: 'flat',
          frostPocket: false,
          wet: false,
          windy: false,
          watered: true,
        } as const,
      ],
    ]),
    seed: 1,
    purpose: 'plan',
    memberCount: 3,
    startDay: dayFromIso('2026-01-01')!,
    dayCount: 360,
  });
const north = contextAt(site.latitudeDeg, (of) => of);
const south = contextAt(-site.latitudeDeg, (of) => [...of.slice(6), ...of.slice(0, 6)]);

function runOf(id: string, planted: string | null, context = north) {
  return runSowing(
    context,
    context.members[0]!,
    {
      id,
      kind: kindById(id)!,
      route: 'planted',
      startDay: context.startDay,
      startSpreadDays: 0,
      stages: [],
      exposure: 'open',
      plantDay: null,
      clearDay: null,
      plantsCount: 10,
      counted: true,
      plantedDay: planted === null ? null : dayFromIso(planted)!,
      protection: [],
    },
    new Set(),
  ).harvests[0]!;
}

describe('what young perennials give in 2026', () => {
  const full = runOf('asparagus', null).servings;

  it('asparagus: nothing in the first two seasons, part in the third, all from the fourth', () => {
    for (const planted of ['2026-03-20', '2025-11-10', '2025-03-20']) {
      const run = runOf('asparagus', planted);
      expect(run).toMatchObject({ servings: 0, firstDay: NEVER, reason: 'still-establishing' });
    }
    const third = runOf('asparagus', '2024-04-01').servings / full;
    expect(third).toBeGreaterThan(0.25);
    expect(third).toBeLessThan(0.65);
    expect(runOf('asparagus', '2023-04-01').servings).toBeCloseTo(full, 9);
    expect(runOf('asparagus', '2006-04-01').servings).toBeCloseTo(full, 9);
  });

  it('rhubarb: nothing in the first season, some in the second, all from the third', () => {
    const all = runOf('rhubarb', null).servings;
    expect(runOf('rhubarb', '2026-02-20').servings).toBe(0);
    const second = runOf('rhubarb', '2024-11-20').servings;
    expect(second).toBe(runOf('rhubarb', '2025-03-01').servings);
    expect(second).toBeGreaterThan(0.2 * all);
    expect(second).toBeLessThan(0.7 * all);
    expect(runOf('rhubarb', '2024-03-01').servings).toBeCloseTo(all, 9);
  });

  it('in the south the season turns in June', () => {
    const all = runOf('rhubarb', null, south).servings;
    expect(all).toBeGreaterThan(0);
    expect(runOf('rhubarb', '2026-05-20', south).servings).toBe(0);
    expect(runOf('rhubarb', '2026-02-20', south).servings).toBe(0);
    expect(runOf('rhubarb', '2025-09-10', south).servings).toBeLessThan(0.7 * all);
    expect(runOf('rhubarb', '2024-09-10', south).servings).toBeCloseTo(all, 9);
  });
});
