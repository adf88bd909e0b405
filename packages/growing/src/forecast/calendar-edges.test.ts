/** Leap years, the turn of the year, both hemispheres, high latitudes: the calendar must not show in the forecast. */
import { dayFromCivil, dayFromIso, isoFromDay } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import type { MonthlyNormals, Site } from '../climate/climate.ts';
import { dayLengthHours, standstillPeriod, stationById } from '../climate/index.ts';
import { kindById } from '../crops/index.ts';
import { firstDayOfLength } from '../growth/bolting.ts';
import { NEVER } from '../growth/place-clock.ts';
import type { CoverMaterial, Exposure } from '../places/place.ts';
import { type ForecastContext, forecastContext } from './member.ts';
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
const exposures = new Map([
  ['open', exposure('open')],
  ['tunnel', exposure('polytunnel')],
]);
const dublin = stationById('dublin')!;

function contextFor(startIso: string, site: Site = dublin.site, normals: MonthlyNormals = dublin.normals) {
  return forecastContext({
    site,
    source: { kind: 'normals', normals },
    exposures,
    seed: 1,
    purpose: 'plan',
    memberCount: 20,
    startDay: dayFromIso(startIso)!,
    dayCount: 900,
  });
}

function medianFirst(context: ForecastContext, kindId: string, sow: number, exposureKey = 'open'): number {
  const kind = kindById(kindId)!;
  const plan = {
    id: 'x',
    kind,
    route: kind.startsAs === 'seed' ? ('direct' as const) : ('planted' as const),
    startDay: sow,
    startSpreadDays: 0,
    stages: [],
    exposure: exposureKey,
    plantDay: null,
    clearDay: null,
    plantsCount: plantsPerM2(kind),
    protection: ['mesh', 'net', 'fleece'] as const,
  };
  const days = context.members.map((member) =>
    Math.min(...runSowing(context, member, plan, new Set()).harvests.map((harvest) => harvest.firstDay)),
  );
  return days.sort((a, b) => a - b)[10]!;
}

test('a sowing of the same date takes as long in a leap year as in a common one', () => {
  const leap = contextFor('2027-09-01');
  const common = contextFor('2026-09-01');
  for (const [kind, month, dayOfMonth] of [
    ['carrot-early', 2, 15],
    ['beetroot', 4, 20],
    ['lettuce-leaf', 2, 28],
  ] as const) {
    const inLeap =
      medianFirst(leap, kind, dayFromCivil(2028, month, dayOfMonth)) - dayFromCivil(2028, month, dayOfMonth);
    const inCommon =
      medianFirst(common, kind, dayFromCivil(2027, month, dayOfMonth)) -
      dayFromCivil(2027, month, dayOfMonth);
    // The weather of both is drawn anew: their medians differ by the draw, not by the calendar.
    expect(Math.abs(inLeap - inCommon)).toBeLessThanOrEqual(6);
  }
});

test('29 February is a day like its neighbours', () => {
  const context = contextFor('2027-09-01');
  const firsts = ['2028-02-28', '2028-02-29', '2028-03-01'].map((iso) =>
    medianFirst(context, 'carrot-early', dayFromIso(iso)!, 'tunnel'),
  );
  expect(firsts[1]).toBeGreaterThanOrEqual(firsts[0]!);
  expect(firsts[2]).toBeGreaterThanOrEqual(firsts[1]!);
  expect(firsts[2]! - firsts[0]!).toBeLessThanOrEqual(3);
});

test('the turn of the year leaves no step: a later sowing is never ready much earlier', () => {
  const context = contextFor('2026-09-01');
  let before = 0;
  for (let day = dayFromIso('2026-12-20')!; day <= dayFromIso('2027-01-12')!; day++) {
    const first = medianFirst(context, 'carrot-early', day, 'tunnel');
    expect(first, isoFromDay(day)).toBeGreaterThanOrEqual(before);
    if (before > 0) expect(first - before).toBeLessThanOrEqual(4);
    before = first;
  }
});

test('a mirrored site in the south is half a year behind, crop by crop', () => {
  const half = <T>(months: readonly T[]): T[] => [...months.slice(6), ...months.slice(0, 6)];
  const { normals } = dublin;
  const mirrored = Object.fromEntries(
    Object.entries(normals).map(([key, value]) => [
      key,
      Array.isArray(value) ? half(value as unknown[]) : value,
    ]),
  ) as unknown as MonthlyNormals;
  const southSite = { ...dublin.site, latitudeDeg: -dublin.site.latitudeDeg };
  const north = contextFor('2026-03-01');
  const south = contextFor('2026-09-01', southSite, mirrored);
  for (const [kind, place] of [
    ['beetroot', 'open'],
    ['onion-spring-set', 'open'],
    ['carrot-early', 'tunnel'],
    ['onion-autumn-yellow', 'tunnel'],
  ] as const) {
    const sowings =
      kind === 'onion-autumn-yellow' ? ['2026-10-15', '2027-04-15'] : ['2027-04-01', '2027-10-01'];
    const [northSow, southSow] = sowings.map((iso) => dayFromIso(iso)!) as [number, number];
    const northDays = medianFirst(north, kind, northSow, place) - northSow;
    const southDays = medianFirst(south, kind, southSow, place) - southSow;
    // Not to the day: the half years differ by up to three days and the sun is nearer in January than in July.
    expect(Math.abs(northDays - southDays), `${kind} ${northDays} ${southDays}`).toBeLessThanOrEqual(12);
  }
});

test('beyond the polar circle the winter has no day and the summer no night, and nothing breaks', () => {
  expect(dayLengthHours(70, 355)).toBe(0);
  expect(dayLengthHours(70, 172)).toBe(24);
  const site = { ...dublin.site, latitudeDeg: 69.6 };
  expect(standstillPeriod(site).shortDays!.days).toBeGreaterThan(120);
  expect(standstillPeriod({ ...site, latitudeDeg: 10 }).shortDays).toBeNull();
  const context = contextFor('2026-09-01', site);
  const inWinter = medianFirst(context, 'lettuce-leaf', dayFromIso('2026-11-01')!, 'tunnel');
  expect(inWinter).toBeGreaterThan(dayFromIso('2027-02-15')!);
  const inSpring = medianFirst(context, 'lettuce-leaf', dayFromIso('2027-05-01')!, 'tunnel');
  expect(inSpring).toBeLessThan(dayFromIso('2027-08-15')!);
});

test('a day length that a latitude never has is never reached', () => {
  const at = (latitude: number) => (day: number) =>
    dayLengthHours(latitude, ((day % 365) + 365) % 365 || 365);
  const from = dayFromIso('2027-01-01')!;
  expect(firstDayOfLength(at(0), from, 14)).toBe(NEVER);
  expect(firstDayOfLength(at(53), from, 14)).toBeLessThan(from + 200);
});
