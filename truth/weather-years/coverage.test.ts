/** The Seattle record of the npm package vega-datasets has four years: enough to try the code, not the claim. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readDailyCsv } from '../../packages/growing/src/index.ts';
import { exposuresUnderTest } from '../garden-under-test.ts';
import { coverageOf, type Held, heldOutcomes, passes, studentT975 } from './coverage-of.ts';
import { coveragePage } from './coverage-page.ts';
import { type OutcomeCase, outcomeCases } from './outcomes.ts';
import { type WeatherYear, weatherYear, yearsOf } from './weather-years.ts';

const seattle = { latitudeDeg: 47.6, longitudeDeg: -122.3, elevationM: 40, coastal: true };

function seattleYears(): WeatherYear[] {
  const folder = dirname(createRequire(import.meta.url).resolve('vega-datasets'));
  const text = readFileSync(join(folder, '../data/seattle-weather.csv'), 'utf8').replace(
    'date,precipitation,temp_max,temp_min,wind,weather',
    'date,rain_mm,tmax_c,tmin_c,wind,weather',
  );
  const { record } = readDailyCsv(text, seattle);
  return yearsOf(record!).map((year) => weatherYear(seattle, record!, year, exposuresUnderTest));
}

test('every outcome can be looked up in the years of a real record', () => {
  const years = seattleYears();
  expect(years.map(({ year }) => year)).toEqual([2012, 2013, 2014]);
  const missing = outcomeCases.filter((each) => years.every((year) => each.valueIn(year) === null));
  expect(missing.map((each) => each.name)).toEqual([]);
  const carrots = outcomeCases.find(
    (each) => each.group === 'first harvest' && each.name.startsWith('carrot-maincrop'),
  )!;
  for (const year of years) expect(carrots.valueIn(year)).toBeGreaterThan(60);
});

const yearsNamed = (count: number): WeatherYear[] =>
  Array.from({ length: count }, (_, i) => ({ year: 1990 + i }) as WeatherYear);
const caseOf = (valueIn: (year: number) => number | null): OutcomeCase => ({
  group: 'emergence',
  name: 'made up for this test',
  unit: 'd',
  valueIn: ({ year }) => valueIn(year),
});

test('a hidden year is never among those that forecast it, nor are its neighbours', () => {
  const odd = caseOf((year) => (Math.abs(year - 2005) <= 1 ? 99 : 10 + ((year * 7) % 5)));
  const held = heldOutcomes(yearsNamed(30), [odd]);
  for (const year of [2004, 2005, 2006]) expect(held.find((each) => each.year === year)!.held).toBe(false);
});

test('what never comes lies beyond every band in which it mostly does', () => {
  const held = heldOutcomes(yearsNamed(30), [caseOf((year) => (year === 2000 ? null : 10 + (year % 3)))]);
  expect(held.find((each) => each.year === 2000)!.held).toBe(false);
});

test('drawn members stand in for the other years', () => {
  const drawn = Array.from({ length: 20 }, () => ({ year: 1 }) as WeatherYear);
  const far = heldOutcomes(yearsNamed(3), [caseOf((year) => (year === 1 ? 10 : 50))], drawn);
  expect(far.map((each) => each.held)).toEqual([false, false, false]);
});

test('a few years give no band at all rather than a poor one', () => {
  expect(heldOutcomes(yearsNamed(5), [caseOf((year) => year)])).toEqual([]);
});

test('outcomes that hang together widen the interval', () => {
  const outcome = (year: number, held: boolean): Held => ({ year, group: 'emergence', name: 'x', held });
  const apart = yearsNamed(30).flatMap(({ year }) =>
    [0, 1, 2, 3, 4].map((k) => outcome(year, (year + k) % 5 !== 0)),
  );
  const together = yearsNamed(30).flatMap(({ year }) =>
    [0, 1, 2, 3, 4].map(() => outcome(year, year % 5 !== 0)),
  );
  const width = (held: readonly Held[]): number => coverageOf(held).high - coverageOf(held).low;
  expect(coverageOf(apart).share).toBeCloseTo(0.8, 9);
  expect(coverageOf(together).share).toBeCloseTo(0.8, 9);
  expect(width(together)).toBeGreaterThan(width(apart) + 0.1);
  expect(passes(coverageOf(together))).toBe(true);
  expect(passes(coverageOf(apart.map((each) => ({ ...each, held: false }))))).toBe(false);
});

test("Student's t is that of the tables", () => {
  // Fisher & Yates, Statistical Tables: two-sided 5 %.
  for (const [freedom, t] of [
    [10, 2.228],
    [30, 2.042],
    [60, 2.0],
  ] as const)
    expect(studentT975(freedom)).toBeCloseTo(t, 2);
});

test('the page says what passed and names every case', () => {
  fc.assert(
    fc.property(fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }), (flags) => {
      const held = flags.map(
        (flag, i) =>
          ({ year: 1990 + (i % 20), group: 'emergence', name: `case ${i % 2}`, held: flag }) as Held,
      );
      const here = [{ name: 'here', held }];
      const page = coveragePage({ records: here, drawn: here, date: '2026-11-25', hash: 'abc' });
      expect(page).toContain(passes(coverageOf(held)) ? '**passes**' : '**does not pass**');
      expect(page).toContain('emergence: case 1');
    }),
    { numRuns: 20 },
  );
});
