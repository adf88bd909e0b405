import { expect, test } from 'vitest';
import type { PlanReport } from '../report/plan-report.ts';
import { darkMonthsOf } from './dark-months.ts';
import { inventedPlan } from './fixture/invented-plan.ts';
import { handoverLines } from './handover-lines.ts';
import { monthSheetOf } from './month-sheet.ts';
import { dayOf } from './sheet-days.ts';

const [first, second] = inventedPlan.sowings;
const report: PlanReport = {
  ...inventedPlan,
  handovers: [
    {
      from: first!.id,
      fromKindName: first!.kindName,
      toKind: second!.kind,
      toKindName: second!.kindName,
      placeName: 'tunnel beds 1',
      passes: [
        { week: '2026-09-07', strips: 2, m2: 1.2, to: second!.id },
        { week: '2026-10-05', strips: 3, m2: 1.8, to: second!.id },
      ],
    },
  ],
};

test('the month has its own passes alone, with the numbers of the labels', () => {
  const month = { year: 2026, month: 9 };
  const { handovers } = monthSheetOf(report, { month, today: dayOf('2026-08-20'), seeds: [] });
  expect(handovers).toEqual([
    {
      fromNumber: first!.number,
      fromKindName: first!.kindName,
      toKindName: second!.kindName,
      placeName: 'tunnel beds 1',
      passes: [{ monday: dayOf('2026-09-07'), m2: 1.2, toNumber: second!.number }],
    },
  ]);
});

test('a plan of before has none, and the dark months show those of their own lines', () => {
  expect(handoverLines(inventedPlan, () => true)).toEqual([]);
  const page = darkMonthsOf(report, dayOf('2026-08-20'));
  const isShown = page.places.some(({ lines }) => lines.some(({ sowing }) => sowing === second!.id));
  expect(page.handovers).toHaveLength(isShown ? 1 : 0);
});
