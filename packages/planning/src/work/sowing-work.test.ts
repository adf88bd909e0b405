import { dayFromIso, mondayOf, weekOfDay } from '@twelvemonth/basis';
import { kindById, type Lot } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { smallProblem } from '../verdict/fixture/small-problem.ts';
import { candidateWork, minutesByAct } from './minutes-by-week.ts';
import { workActs } from './sowing-work.ts';

const problem = smallProblem(52);
const week = (iso: string): number => weekOfDay(dayFromIso(iso)!);
const sum = (values: Iterable<number>): number => [...values].reduce((a, b) => a + b, 0);

/** Ten strips of 0.6 m² in the open: 6 m². */
const garlic = {
  plan: {
    id: 'garlic',
    kind: kindById('garlic-bulb')!,
    route: 'planted' as const,
    startDay: dayFromIso('2026-10-14')!,
    startSpreadDays: 0,
    stages: [],
    exposure: 'open',
    plantDay: null,
    clearDay: dayFromIso('2027-07-14')!,
    plantsCount: 120,
    protection: [],
  },
  ground: 0,
  stripsCount: 10,
  groundFromWeek: week('2026-10-14'),
  groundToWeek: week('2027-07-14') + 1,
  bench: [],
};
const lot = (part: Partial<Lot>): Lot => ({
  source: 'garlic',
  kind: 'garlic-bulb',
  role: 'garlic',
  fromWeek: week('2027-07-14'),
  toWeek: week('2028-03-14'),
  servings: 1000,
  lossPerWeekShare: 0,
  form: 'store',
  store: 'dry',
  storeFromWeek: week('2027-07-14'),
  keptGPerServing: 4,
  putBy: null,
  bolted: false,
  ...part,
});

test('garlic by hand: planted in its week, weeded by the month, lifted, plaited and cleared in one', () => {
  const rows = minutesByAct(problem, garlic, [{ prob: 1, lots: [lot({})] }]);
  const planting = week('2026-10-14') - problem.fromWeek;
  const lifting = week('2027-07-14') - problem.fromWeek;
  // 5 min/m² to rake 6 m², 0.2 min a clove
  expect(rows.plant[planting]).toBeCloseTo(6 * 5 + 120 * 0.2, 9);
  expect(sum(rows.plant)).toBeCloseTo(rows.plant[planting]!, 9);
  expect(sum(rows.sow)).toBe(0);
  // May: 1.2 min/m² to weed and 0.3 to water; January: 0.05 and none
  const may = week('2027-05-19') - problem.fromWeek;
  const january = week('2027-01-13') - problem.fromWeek;
  expect([rows.weed[may], rows.water[may]]).toEqual([expect.closeTo(7.2, 9), expect.closeTo(1.8, 9)]);
  expect([rows.weed[january], rows.water[january]]).toEqual([expect.closeTo(0.3, 9), 0]);
  // 1000 servings of 3 g at the kind's edible share, 8 min/kg to lift and 4 to plait
  const kg = (1000 * 3) / garlic.plan.kind.harvests.find((h) => h.role === 'garlic')!.edibleShare / 1000;
  expect(rows.pick[lifting]).toBeCloseTo(kg * garlic.plan.kind.pickMinutesPerKg, 6);
  expect(rows.putBy[lifting]).toBeCloseTo(kg * 4, 6);
  expect(rows.clear[lifting]).toBeCloseTo(6 * 4, 9);
});

test('what stands is fetched week by week, and the rest lifted when its ground is cleared', () => {
  const from = week('2026-11-04');
  const standing = lot({ form: 'standing', fromWeek: from, toWeek: from + 9, storeFromWeek: from + 6 });
  const rows = minutesByAct(problem, garlic, [{ prob: 1, lots: [standing] }]);
  const at = from - problem.fromWeek;
  const all = sum(rows.pick);
  for (let w = at; w < at + 6; w++) expect(rows.pick[w]).toBeCloseTo(all / 10, 9);
  expect(rows.pick[at + 6]).toBeCloseTo((4 * all) / 10, 9);
  expect(sum(rows.putBy)).toBeCloseTo(rows.putBy[at + 6]!, 9);
});

test('while nobody is there only sowing and planting count', () => {
  const away = [
    {
      fromDay: mondayOf(week('2026-10-14')),
      toDay: mondayOf(week('2026-10-14')) + 6,
      neighbourPicks: false,
      neighbourWaters: false,
    },
  ];
  const empty = { ...problem, context: { ...problem.context, away } };
  const rows = minutesByAct(empty, garlic, []);
  const w = week('2026-10-14') - problem.fromWeek;
  expect(rows.plant[w]).toBeGreaterThan(0);
  expect(rows.weed[w]).toBe(0);
});

test('spans never say less than the work, and hardly more', () => {
  const outcomes = [{ prob: 1, lots: [lot({})] }];
  const { work, minutes } = candidateWork(problem, garlic, outcomes);
  const rows = minutesByAct(problem, garlic, outcomes);
  const byWeek = new Float64Array(problem.weekCount);
  for (const span of work)
    for (let w = span.fromWeek; w < span.toWeek; w++) byWeek[w - problem.fromWeek]! += span.minutes;
  for (let w = 0; w < problem.weekCount; w++) {
    const exact = workActs.reduce((all, act) => all + rows[act][w]!, 0);
    expect(byWeek[w]!).toBeGreaterThanOrEqual(exact - 1e-9);
    expect(byWeek[w]!).toBeLessThan(Math.max(exact / 0.8, exact + 0.2) + 1 / 64 + 1e-9);
  }
  const needed = workActs.filter((act) => act !== 'pick' && act !== 'putBy');
  expect(minutes).toBeCloseTo(sum(needed.map((act) => sum(rows[act]))), 6);
});
