import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { allKinds } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { type ForecastRequest, forecastGarden } from './forecast-garden.ts';
import type { DayBand } from './report/plan-report.ts';

const day = (iso: string): number => dayFromIso(iso)!;

function exampleGarden(name: string): Garden {
  const text = readFileSync(new URL(`../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: day('2026-08-20') }).garden!;
}

const demo = exampleGarden('marram-end');
const usual: Omit<ForecastRequest, 'kind' | 'sowDay'> = {
  route: null,
  place: null,
  count: null,
  memberCount: 12,
  seed: 3,
};

const reportOf = (
  garden: Garden,
  request: Partial<ForecastRequest> & Pick<ForecastRequest, 'kind' | 'sowDay'>,
) => forecastGarden(garden, { ...usual, ...request }, null);

const codesOf = (request: Partial<ForecastRequest>): string[] =>
  reportOf(demo, { kind: 'leek', sowDay: day('2027-03-20'), ...request }).issues.map((issue) => issue.code);

const inOrder = ({ p10, p50, p90 }: DayBand): boolean =>
  (p50 === null || (p10 !== null && p10 <= p50)) && (p90 === null || (p50 !== null && p50 <= p90));

test('for every kind and season percentiles are in order, sums only rise, and what is reaped is what comes ready', () => {
  let reaped = 0;
  for (const kind of allKinds().filter((each) => !each.perennial)) {
    for (const sowDay of [day('2026-10-05'), day('2027-03-01'), day('2027-06-15')]) {
      const { report } = reportOf(demo, { kind: kind.id, sowDay, memberCount: 6 });
      expect(report, kind.id).not.toBeNull();
      const label = `${kind.id} ${sowDay}`;
      const { emergence, plantingOut, firstHarvest, lastHarvest, harvests, weeks } = report!;
      for (const band of [emergence, plantingOut, firstHarvest, lastHarvest].filter((b) => b !== null)) {
        expect(inOrder(band), label).toBe(true);
        expect(band.reason === null, label).toBe(band.p10 !== null && band.p50 !== null && band.p90 !== null);
      }
      for (const harvest of Object.values(harvests)) expect(inOrder(harvest.first), label).toBe(true);
      let before = { p10: 0, p50: 0, p90: 0 };
      let mean = 0;
      for (const week of weeks) {
        const { p10, p50, p90 } = week.cumulative;
        expect(p10 >= before.p10 && p50 >= before.p50 && p90 >= before.p90, label).toBe(true);
        expect(p10 <= p50 && p50 <= p90, label).toBe(true);
        expect(week.chanceAny, label).toBeLessThanOrEqual(1);
        before = week.cumulative;
        mean += week.meanServings;
      }
      const { p10, p50, p90 } = report!.servingsPerPlant;
      const perPlant = [p10, p50, p90].map((share) => share * report!.count.plant);
      const last = weeks.at(-1)?.cumulative ?? { p10: 0, p50: 0, p90: 0 };
      for (const [i, sum] of [last.p10, last.p50, last.p90].entries())
        expect(sum, label).toBeCloseTo(perPlant[i]!, 6);
      reaped += mean;
    }
  }
  expect(reaped).toBeGreaterThan(500);
});

test('red onion sets planted under cover in early October are earlier and run to seed more than in early November', () => {
  const at = (iso: string) =>
    reportOf(demo, { kind: 'onion-autumn-red', sowDay: day(iso), place: 'tunnel-bed', memberCount: 30 })
      .report!;
  const [october, november] = [at('2026-10-05'), at('2026-11-05')];
  expect(october.firstHarvest.p50! < november.firstHarvest.p50!).toBe(true);
  expect(october.boltedShare.p50).toBeGreaterThan(november.boltedShare.p50 + 0.02);
});

test('the same request gives the same forecast, another seed another one', () => {
  const request = { kind: 'calabrese-early', sowDay: day('2027-02-20') };
  expect(reportOf(demo, request)).toEqual(reportOf(demo, request));
  expect(reportOf(demo, request).report).not.toEqual(reportOf(demo, { ...request, seed: 4 }).report);
});

test('a raised sowing goes over its benches in order; one sown in place has no planting out', () => {
  const raised = reportOf(demo, {
    kind: 'leek',
    sowDay: day('2027-03-10'),
    route: 'sill,frame,bed',
    memberCount: 11,
  }).report!;
  expect(raised.route.map((stage) => stage.stage)).toEqual(['sill', 'frame', 'bed']);
  for (const [i, stage] of raised.route.entries()) {
    expect(stage.from <= stage.to).toBe(true);
    if (i > 0) expect(stage.from).toBe(raised.route[i - 1]!.to);
  }
  expect(raised.plantingOut?.p50).toBe(raised.route.at(-1)!.from);
  const direct = reportOf(demo, { kind: 'carrot-maincrop', sowDay: day('2027-05-10') }).report!;
  expect(direct.plantingOut).toBeNull();
  expect(direct.route.map((stage) => stage.stage)).toEqual(['bed']);
});

test('more is sown than planted and more planted than kept; sets go in one for one', () => {
  const { count, groundM2 } = reportOf(demo, { kind: 'leek', sowDay: day('2027-03-10'), count: 60 }).report!;
  expect(count.plant).toBe(60);
  expect(count.sow).toBeGreaterThan(60);
  expect(count.keep).toBeLessThan(60);
  expect(groundM2).toBeGreaterThan(1);
  const sets = reportOf(demo, { kind: 'onion-spring-set', sowDay: day('2027-03-20'), count: 50 }).report!;
  expect(sets.count.sow).toBe(50);
});

test('what cannot be asked for is refused by its code', () => {
  expect(codesOf({ kind: 'leak' })).toEqual(['kind-unknown']);
  expect(codesOf({ kind: 'rhubarb' })).toEqual(['stands-for-years']);
  expect(codesOf({ place: 'tunel-bed' })).toEqual(['place-unknown']);
  expect(codesOf({ place: 'plot-fruit' })).toEqual(['place-not-for-growing']);
  expect(codesOf({ place: 'tunnel-bed' })).toEqual(['place-cannot-carry']);
  expect(codesOf({ route: 'by-post' })).toEqual(['route-unknown']);
  expect(codesOf({ route: 'planted' })).toEqual(['route-not-for-kind']);
  expect(codesOf({ count: 0 })).toEqual(['count-too-small']);
  expect(codesOf({ count: Number.NaN })).toEqual(['count-too-small']);
  expect(codesOf({ sowDay: day('0999-01-01') })).toEqual(['sow-day-not-plausible']);
  expect(codesOf({ count: 100_000 })).toEqual(['plants-over-ground']);
  expect(codesOf({ kind: 'garlic-bulb', sowDay: day('2027-06-01') })).toEqual(['stock-out-of-season']);
});

test('a tub, a sill and the southern hemisphere have forecasts too', () => {
  const balcony = exampleGarden('sill-and-balcony');
  const shoots = reportOf(balcony, { kind: 'pea-shoots', sowDay: day('2027-01-10') }).report!;
  expect(shoots.route.map((stage) => stage.stage)).toEqual(['tray']);
  expect(shoots.firstHarvest.p50! < '2027-02-20').toBe(true);
  const tomato = reportOf(balcony, { kind: 'tomato-cordon', sowDay: day('2027-03-15') }).report!;
  expect(tomato.route.at(-1)!.stage).toBe('tub');
  const south = reportOf(exampleGarden('southern-plot'), { kind: 'beetroot', sowDay: day('2026-10-10') })
    .report!;
  expect(south.firstHarvest.p50!.slice(0, 4)).toBe('2026');
});
