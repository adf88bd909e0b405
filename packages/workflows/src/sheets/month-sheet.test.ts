import { expect, test } from 'vitest';
import { inventedPlan, inventedSeeds } from './fixture/invented-plan.ts';
import { type MonthSheet, monthSheetOf } from './month-sheet.ts';
import { addToMonth, dayOf } from './sheet-days.ts';

const today = dayOf('2026-08-20');
const sheetOf = (year: number, month: number, day = today): MonthSheet =>
  monthSheetOf(inventedPlan, { month: { year, month }, today: day, seeds: inventedSeeds });
const linesOf = (sheet: MonthSheet) =>
  sheet.areas.flatMap((a) => [...a.late, ...a.weeks.flatMap((w) => w.lines)]);

test('a week stands on the sheet of the month that holds its Thursday, under its area', () => {
  const sheet = sheetOf(2026, 9);
  expect(sheet.areas.map((a) => a.area)).toEqual(['home']);
  const weeks = sheet.areas[0]!.weeks;
  expect(weeks.map((w) => w.monday)).toEqual([dayOf('2026-08-31'), dayOf('2026-09-07'), dayOf('2026-09-14')]);
  expect(weeks[0]!.lines.map((l) => [l.number, l.act, l.state])).toEqual([
    [41, 'sow', 'firm'],
    [42, 'sow', 'draft'],
  ]);
});

test('over all months every line that is still to be done stands exactly once', () => {
  const seen = new Map<string, number>();
  for (let i = 0; i < 19; i++) {
    const { year, month } = addToMonth({ year: 2026, month: 8 }, i);
    for (const line of linesOf(sheetOf(year, month))) {
      const key = `${line.sowing} ${line.act}`;
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
  }
  expect([...seen.keys()].sort()).toEqual([
    'garlic-ffffff plant',
    'kale-cccccc plant-out',
    'kale-cccccc sow',
    'lambs-lettuce-eeeeee sow',
    'pea-shoots-gggggg sow',
    'spinach-dddddd plant-out',
    'spinach-dddddd sow',
  ]);
  expect([...seen.values()].every((count) => count === 1)).toBe(true);
});

test('what was due and not done waits on top of the sheet that holds today, and on no other', () => {
  const late = sheetOf(2026, 8).areas.flatMap((a) => a.late);
  expect(late.map((l) => l.sowing)).toEqual(['kale-cccccc']);
  expect(sheetOf(2026, 9).areas.flatMap((a) => a.late)).toEqual([]);
  const later = sheetOf(2026, 9, dayOf('2026-09-22'));
  expect(later.areas.flatMap((a) => a.late).map((l) => l.number)).toEqual([40, 41, 42, 40, 44]);
  expect(later.areas[0]!.weeks).toEqual([]);
});

test('amounts come in metres, trays or pieces, and a planting line has no sowing number', () => {
  const amounts = Object.fromEntries(
    linesOf(sheetOf(2026, 9)).map((l) => [`${l.number} ${l.act}`, l.amount]),
  );
  expect(amounts['41 sow']).toEqual({ unit: 'pieces', sow: 90, plant: 72, keep: 66 });
  expect(amounts['42 sow']).toEqual({ unit: 'metres', sow: 11, plant: null, keep: 10 });
  expect(amounts['44 sow']).toEqual({ unit: 'trays', sow: 2, plant: null, keep: null });
  expect(amounts['40 plant-out']).toEqual({ unit: 'pieces', sow: null, plant: 72, keep: 66 });
  const garlic = linesOf(sheetOf(2026, 10)).find((l) => l.number === 43)!;
  expect(garlic).toMatchObject({
    act: 'plant',
    area: 'allotment',
    amount: { sow: 60, plant: null, keep: 55 },
  });
});

test('a line knows what must be cleared first, when it is eaten and what a late week costs', () => {
  const spinach = linesOf(sheetOf(2026, 9)).find((l) => l.number === 41)!;
  expect(spinach.clearFirst).toEqual([{ number: 38, kindName: 'Tunnel cucumber', by: dayOf('2026-10-05') }]);
  expect(spinach.eaten[0]).toMatchObject({ firstFrom: dayOf('2026-10-25'), firstTo: dayOf('2026-11-10') });
  expect(spinach.eaten[1]).toMatchObject({ firstFrom: null, reason: 'ran-to-seed' });
  expect(spinach.weekLateServings).toBe(-3.2);
});

test('orders, jobs and cautions belong to the month', () => {
  expect(sheetOf(2026, 9).orders.map((o) => o.kind)).toEqual(['garlic']);
  expect(sheetOf(2026, 10).orders).toEqual([]);
  expect(sheetOf(2026, 8).areas[0]!.jobs.map((j) => [j.code, j.number])).toEqual([['pot-on', 40]]);
  expect(sheetOf(2026, 9).cautions).toContain('nitrate-leaves');
  expect(sheetOf(2026, 9).cautions).not.toContain('green-potatoes');
  expect(sheetOf(2027, 3).cautions).toEqual(['spray-label']);
});
