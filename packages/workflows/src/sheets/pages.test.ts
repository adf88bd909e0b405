import { expect, test } from 'vitest';
import type { PlanReport } from '../report/plan-report.ts';
import { darkMonthsOf } from './dark-months.ts';
import { inventedPlan, inventedSeeds } from './fixture/invented-plan.ts';
import { fridgePageOf } from './fridge-page.ts';
import { seedSheetOf } from './seed-sheet.ts';
import { dayOf } from './sheet-days.ts';
import { yearPictureOf } from './year-picture.ts';

const today = dayOf('2026-08-20');

test('the dark months run from the month of the shortest day, in the south too', () => {
  const north = darkMonthsOf(inventedPlan, today);
  expect([north.from, north.to]).toEqual([dayOf('2026-12-01'), dayOf('2027-05-31')]);
  const southern: PlanReport = {
    ...inventedPlan,
    standstill: [{ from: '2027-05-12', to: '2027-08-01' }],
  };
  const south = darkMonthsOf(southern, today);
  expect([south.from, south.to]).toEqual([dayOf('2027-06-01'), dayOf('2027-11-30')]);
});

test('the count-back names what comes out, what goes in, and only the servings of the window', () => {
  const page = darkMonthsOf(inventedPlan, today);
  expect(page.places.map((p) => p.placeName)).toEqual([
    'open bed 3',
    'open bed 7',
    'open bed 9',
    'tunnel bed 2',
  ]);
  const spinach = page.places.at(-1)!.lines[0]!;
  expect(spinach).toMatchObject({
    keepCount: 66,
    comesOut: [{ number: 38, kindName: 'Tunnel cucumber', by: dayOf('2026-10-05') }],
    lastSafeDay: dayOf('2026-09-12'),
    plantOut: dayOf('2026-10-07'),
    fortnightLateServings: -9.6,
  });
  const [feeds] = spinach.feeds;
  expect(feeds!.from).toBe(page.from);
  expect(feeds!.servings).toBeGreaterThan(60);
  expect(feeds!.servings).toBeLessThan(90);
  expect(page.lean.map((l) => l.roleName)).toEqual(['salad leaves', 'broccoli and cauliflower']);
});

test('the fridge page eats first what ends first, and says what is left until when', () => {
  const page = fridgePageOf(inventedPlan, dayOf('2026-08-26'), today);
  expect(page.monday).toBe(dayOf('2026-08-24'));
  expect(page.eatFirst.map((i) => i.kindName)).toEqual(['Tunnel cucumber']);
  expect(page.ready.map((i) => i.kindName)).toEqual(['Leek for the winter']);
  expect(page.left.map((l) => l.where)).toEqual(['ground', 'dry', 'frost-free']);
  expect(page.water[0]).toMatchObject({ placeName: 'staging', thirsty: true });
});

test('what is left in store is not shown once it has run out, and glut is offered less what is eaten fresh', () => {
  const may = fridgePageOf(inventedPlan, dayOf('2027-05-05'), today);
  expect(may.left.filter((l) => l.where === 'dry')).toEqual([]);
  const summer = fridgePageOf(inventedPlan, dayOf('2027-06-16'), today);
  const week = inventedPlan.weeks.find((w) => w.weekOf === '2027-06-14')!.roles.leeks!;
  const glut = summer.putBy.find((p) => p.role === 'leeks')!;
  expect(glut.servings).toBeCloseTo(week.offered - week.eaten.p50, 10);
});

test('lanes add up: wanted is appetite less bought, eaten never more than the sum of its weeks', () => {
  const picture = yearPictureOf(inventedPlan, today);
  expect(picture.lanes).toHaveLength(9);
  const potatoes = picture.lanes.find((lane) => lane.role === 'potatoes')!;
  const appetite = potatoes.weeks.reduce((sum, w) => sum + w.appetite, 0);
  expect(potatoes.wanted).toBeCloseTo(appetite * 0.4, 8);
  expect(potatoes.eaten + potatoes.servingsMissing).toBeCloseTo(potatoes.wanted, 8);
  expect(potatoes.weeks.filter((w) => w.lean).length).toBe(
    potatoes.weeks.filter((w) => w.chanceLean >= 0.5).length,
  );
});

test('a role that nobody wants and nothing gives has no lane', () => {
  const weeks = inventedPlan.weeks.map((w) => ({
    ...w,
    roles: Object.fromEntries(Object.entries(w.roles).filter(([role]) => role !== 'garlic')),
  }));
  expect(yearPictureOf({ ...inventedPlan, weeks }, today).lanes.map((l) => l.role)).not.toContain('garlic');
});

test('seeds to buy come first', () => {
  const lines = seedSheetOf(inventedPlan, [...inventedSeeds].reverse(), today).lines;
  expect(lines.map((l) => [l.kind, l.packets])).toEqual([
    ['garlic', 6],
    ['spinach-overwintering', 0],
  ]);
});

test('what lies in store at the start is no glut, and a harvest put into store is none either', () => {
  const first = inventedPlan.weeks[0]!;
  const role = { appetite: 20, bought: 0, offered: 1600, fromStock: 20, stockLeft: 1574, chanceLean: 0 };
  const eaten = { p10: 20, p50: 20, p90: 20 };
  const weeks = [{ ...first, roles: { garlic: { ...role, eaten } } }, ...inventedPlan.weeks.slice(1)];
  expect(fridgePageOf({ ...inventedPlan, weeks }, dayOf(first.weekOf), today).putBy).toEqual([]);
  const fresh = [
    { ...first, roles: { garlic: { ...role, eaten, fromStock: 0, stockLeft: 80, offered: 150 } } },
    ...inventedPlan.weeks.slice(1),
  ];
  expect(
    fridgePageOf({ ...inventedPlan, weeks: fresh }, dayOf(first.weekOf), today).putBy[0]!.servings,
  ).toBeCloseTo(50, 10);
});

test('what is picked only in season is not ready in a week that gives none of it', () => {
  const ready = (report: PlanReport): string[] => {
    const page = fridgePageOf(report, dayOf('2026-08-19'), today);
    return [...page.eatFirst, ...page.ready].map((i) => i.kindName);
  };
  expect(ready(inventedPlan)).toContain('Tunnel cucumber');
  const weeks = inventedPlan.weeks.map((w) => ({
    ...w,
    roles: {
      ...w.roles,
      'summer-fruits': { ...w.roles['summer-fruits']!, offered: 0, eaten: { p10: 0, p50: 0, p90: 0 } },
    },
  }));
  expect(ready({ ...inventedPlan, weeks })).not.toContain('Tunnel cucumber');
});

test('every tub and bed is watered, those with the same crops in one line', () => {
  const sowings = inventedPlan.sowings.map((s) =>
    s.kind === 'cucumber-tunnel'
      ? { ...s, beds: [1, 2, 3, 5].map((number) => ({ ...s.beds[0]!, number, placeName: 'tub' })) }
      : s,
  );
  const page = fridgePageOf({ ...inventedPlan, sowings }, dayOf('2026-08-26'), today);
  expect(page.water.map((l) => l.placeName)).toContain('tub 1–3, 5');
  expect([...page.eatFirst, ...page.ready].map((i) => i.placeName)).toContain('tub 1–3, 5');
});

test('the dark months leave out what gives next to nothing, but never ask more than three servings', () => {
  const page = darkMonthsOf(inventedPlan, today);
  expect(page.leastServings).toBeGreaterThan(0);
  expect(page.leastServings).toBeLessThanOrEqual(3);
  const small = inventedPlan.sowings.map((s) => ({
    ...s,
    reason: { ...s.reason, feeds: s.reason.feeds.map((f) => ({ ...f, servings: 0.55 })) },
  }));
  const wanted = (share: number): PlanReport => ({
    ...inventedPlan,
    sowings: small,
    weeks: inventedPlan.weeks.map((w) => ({
      ...w,
      roles: Object.fromEntries(
        Object.entries(w.roles).map(([r, x]) => [r, { ...x, appetite: x.appetite * share, bought: 0 }]),
      ),
    })),
  });
  const lines = (report: PlanReport): number => darkMonthsOf(report, today).places.length;
  expect(lines(wanted(10))).toBe(0);
  expect(lines(wanted(0.01))).toBeGreaterThan(0);
});
