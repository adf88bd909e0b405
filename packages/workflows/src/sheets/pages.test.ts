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
