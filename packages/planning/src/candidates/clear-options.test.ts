import { kindById, type Lot, type SowingRun } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { clearOptions } from './clear-options.ts';

const lot = (week: number): Partial<Lot> => ({
  kind: 'x',
  role: 'summer-fruits',
  fromWeek: week,
  toWeek: week + 1,
  servings: 1,
  lossPerWeekShare: 0,
  form: 'fresh',
});
/** One serving a week; week w begins on day 7·w − 3 or thereabouts. */
const picked = (weeks: number): SowingRun =>
  ({ lots: Array.from({ length: weeks }, (_, w) => lot(100 + w)) }) as unknown as SowingRun;
const tomato = {
  kind: kindById('tomato-cordon')!,
  runs: [picked(20)],
  groundDay: 620,
  begunDay: 700,
  clearDay: 860,
};

test('a picked crop under cover may go every third week, and no sooner than three weeks after its first pickings', () => {
  const days = clearOptions(tomato, 'cover');
  expect(days.length).toBeGreaterThan(3);
  for (let i = 1; i < days.length; i++) expect(days[i - 1]! - days[i]!).toBe(21);
  expect(Math.min(...days)).toBeGreaterThan(tomato.begunDay + 21);
  expect(days[0]).toBeLessThan(tomato.clearDay);
});

test('open ground has its two days, a short crop one', () => {
  const [natural, earlier, ...more] = clearOptions(tomato, 'open');
  expect(natural! - earlier!).toBe(56);
  expect(more).toEqual([]);
  expect(clearOptions({ ...tomato, groundDay: 760, begunDay: 770 }, 'cover')).toHaveLength(1);
});
