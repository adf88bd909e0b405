/** What tells the roots, fruits and stalks apart, and how blight ends them. Common practice unless a table row says more. */
import { civilFromDay, dayFromIso, dayOfYear } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { allHazards, kindById, NEVER, type RouteId } from '../index.ts';
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
    ['tunnel', exposure('polytunnel')],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 21,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 800,
});

function runsOf(kindId: string, route: RouteId, place: 'open' | 'tunnel', sow: string) {
  const kind = kindById(kindId)!;
  const plan = {
    id: kindId,
    kind,
    route,
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: route === 'module' ? [{ stage: 'bench' as const, exposure: 'tunnel' }] : [],
    exposure: place,
    plantDay: null,
    clearDay: null,
    plantsCount: plantsPerM2(kind),
    protection: ['mesh', 'net'] as const,
  };
  return context.members.map((member) => runSowing(context, member, plan, new Set()));
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
const firstDay = (...sowing: Parameters<typeof runsOf>): number =>
  median(runsOf(...sowing).map((run) => run.harvests[0]!.firstDay));

const blight = allHazards().find((hazard) => hazard.id === 'late-blight')!;
const isBlightYear = (member: (typeof context.members)[number]): boolean =>
  member.hazardYears.isBad(blight.group, 2026, blight.badYearProb);

describe('blight', () => {
  const maincrop = runsOf('potato-maincrop', 'planted', 'open', '2026-04-20');
  const lastDays = (bad: boolean): number[] =>
    maincrop
      .filter((_, i) => isBlightYear(context.members[i]!) === bad)
      .map((run) => dayOfYear(run.harvests[0]!.lastDay));

  it('ends the haulm in July or early August of a blight year, after the middle of August in others', () => {
    const [bad, ordinary] = [lastDays(true), lastDays(false)];
    expect(bad.length).toBeGreaterThan(0);
    expect(ordinary.length).toBeGreaterThan(bad.length);
    expect(median(bad)).toBeLessThan(228);
    expect(Math.min(...ordinary)).toBeGreaterThanOrEqual(blight.ordinaryYearFromDayOfYear);
  });

  it('leaves maincrop tubers that are lifted small rather than lost', () => {
    const ofYears = (bad: boolean): number =>
      median(
        maincrop
          .filter((_, i) => isBlightYear(context.members[i]!) === bad)
          .map((run) => run.harvests[0]!.servings),
      );
    expect(ofYears(true)).toBeGreaterThan(0.25 * ofYears(false));
    expect(ofYears(true)).toBeLessThan(0.9 * ofYears(false));
  });
});

describe('potatoes', () => {
  it('come in the order of their names from the same planting', () => {
    const [first, second, main] = ['potato-first-early', 'potato-second-early', 'potato-maincrop'].map((id) =>
      firstDay(id, 'planted', 'open', '2026-04-10'),
    );
    expect(first!).toBeLessThan(second!);
    expect(second!).toBeLessThan(main!);
    expect(main!).toBeLessThan(NEVER);
  });

  it('planted in a tunnel at the beginning of August are lifted from October on', () => {
    const day = firstDay('potato-late', 'planted', 'tunnel', '2026-08-05');
    expect([10, 11]).toContain(civilFromDay(day).month);
  });
});

describe('running to seed', () => {
  const bolted = (...sowing: Parameters<typeof runsOf>): number =>
    median(runsOf(...sowing).map((run) => run.boltedShare));

  it('bulb fennel sown in early May bolts, sown in the last third of June it does not', () => {
    expect(bolted('fennel-bulb', 'direct', 'open', '2026-05-05')).toBe(1);
    expect(bolted('fennel-bulb', 'direct', 'open', '2026-06-24')).toBe(0);
  });

  it('early beetroot stands a February sowing', () => {
    expect(bolted('beetroot-early', 'module', 'open', '2026-02-10')).toBeLessThan(0.1);
  });
});

it('a cherry tomato under cover ripens before a bush tomato in the open', () => {
  const cherry = firstDay('tomato-cherry', 'direct', 'tunnel', '2026-05-10');
  expect(cherry).toBeLessThan(firstDay('tomato-outdoor', 'direct', 'open', '2026-05-10'));
});
