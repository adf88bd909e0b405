import { dayFromIso } from '@twelvemonth/basis';
import { NEVER } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { dayBandOf } from './day-band.ts';

const day = dayFromIso('2027-06-01')!;
const days = [4, 1, 9, 2, 7, 3, 8, 5, 6].map((n) => day + n);
const none = days.map(() => null);

test('nine members: each tenth falls on one of them', () => {
  expect(dayBandOf(days, none)).toEqual({
    p10: '2027-06-02',
    p50: '2027-06-06',
    p90: '2027-06-10',
    reason: null,
  });
});

test('days that never come are later than any day, and the commonest reason among them is given', () => {
  const some = days.map((each) => (each > day + 5 ? NEVER : each));
  const reasons = some.map((each, i) =>
    each < NEVER ? 'plant-gone' : i < 3 ? 'ran-to-seed' : 'killed-by-frost',
  );
  expect(dayBandOf(some, reasons)).toEqual({
    p10: '2027-06-02',
    p50: '2027-06-06',
    p90: null,
    reason: 'killed-by-frost',
  });
});

test('a last day that never comes is earlier than any day', () => {
  const some = days.map((each) => (each <= day + 3 ? NEVER : each));
  const reasons = some.map(() => 'no-frost');
  const { p10, p50, p90, reason } = dayBandOf(some, reasons, 'earlier');
  expect([p10, p50, p90, reason]).toEqual([null, '2027-06-06', '2027-06-10', 'no-frost']);
});

test('half-way between a day and never is never', () => {
  const { p10, p50, p90 } = dayBandOf([day, NEVER], [null, 'never-emerges']);
  expect([p10, p50, p90]).toEqual(['2027-06-01', null, null]);
});
