import { type Day, dayFromIso, isoFromDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DayFrame, readVagueDay } from './vague-day.ts';
import { textOfVagueDay } from './write-vague.ts';

const day = (iso: string): Day => dayFromIso(iso)!;
const frame = (reference: string, direction: DayFrame['direction'] = 'past', southern = false): DayFrame => ({
  reference: day(reference),
  direction,
  southern,
});
function said(text: string, within: DayFrame): string {
  const read = readVagueDay(text, within);
  return read.kind === 'cannot'
    ? read.reason
    : `${isoFromDay(read.value.fromDay)} ${isoFromDay(read.value.toDay)}`;
}

describe('what was sown: the latest such time that has begun', () => {
  test.each([
    ['2026-04-12', '2026-04-12 2026-04-12'],
    ['April', '2026-04-01 2026-04-30'],
    ['mid April', '2026-04-11 2026-04-20'],
    ['some time in April', '2026-04-01 2026-04-30'],
    ['early May 2026', '2026-05-01 2026-05-10'],
    ['late February', '2026-02-21 2026-02-28'],
    ['12 April', '2026-04-12 2026-04-12'],
    ['April 12th', '2026-04-12 2026-04-12'],
    ['Sept.', '2025-09-01 2025-09-30'],
    ['spring', '2026-03-01 2026-05-31'],
    ['late spring', '2026-05-01 2026-05-31'],
    ['autumn 2025', '2025-09-01 2025-11-30'],
    ['last autumn', '2025-09-01 2025-11-30'],
    ['winter', '2025-12-01 2026-02-28'],
    ['2025', '2025-01-01 2025-12-31'],
    ['last year', '2025-01-01 2025-12-31'],
    ['2026-03', '2026-03-01 2026-03-31'],
    ['March to May', '2026-03-01 2026-05-31'],
    ['mid to late April', '2026-04-11 2026-04-30'],
    ['October to February', '2025-10-01 2026-02-28'],
    ['August', '2026-08-01 2026-08-20'],
    ['September', '2025-09-01 2025-09-30'],
    ['29 February', '2024-02-29 2024-02-29'],
    ['2026-02-30', 'date-impossible'],
    ['31 April', 'date-impossible'],
    ['2026-13-01', 'date-impossible'],
    ['1066-10-14', 'date-impossible'],
    ['when the cuckoo calls', 'date-not-understood'],
    ['', 'date-not-understood'],
    ['early', 'date-not-understood'],
  ])('%s', (text, wanted) => {
    expect(said(text, frame('2026-08-20'))).toBe(wanted);
  });
  test('a range that has begun is this year’s and ends today', () => {
    expect(said('March to May', frame('2026-04-10'))).toBe('2026-03-01 2026-04-10');
  });
});

test('what is to come: the first such time that is not over', () => {
  const next = frame('2026-08-20', 'next');
  expect(said('24 October', next)).toBe('2026-10-24 2026-10-24');
  expect(said('August', next)).toBe('2026-08-01 2026-08-31');
  expect(said('July', next)).toBe('2027-07-01 2027-07-31');
  expect(said('winter', next)).toBe('2026-12-01 2027-02-28');
});

test('seasons turn with the hemisphere', () => {
  const south = frame('2026-02-15', 'past', true);
  expect(said('spring', south)).toBe('2025-09-01 2025-11-30');
  expect(said('summer', south)).toBe('2025-12-01 2026-02-15');
  expect(said('autumn 2025', south)).toBe('2025-03-01 2025-05-31');
  expect(said('winter 2025', south)).toBe('2025-06-01 2025-08-31');
});

test('a written time reads back to itself, and any text gives an answer', () => {
  const days = fc.integer({ min: day('1950-01-01'), max: day('2026-08-20') });
  fc.assert(
    fc.property(days, fc.integer({ min: 0, max: 400 }), (fromDay, length) => {
      const time = { fromDay, toDay: Math.min(fromDay + length, day('2026-08-20')) };
      expect(readVagueDay(textOfVagueDay(time), frame('2026-08-20'))).toEqual({ kind: 'done', value: time });
    }),
    { numRuns: 200 },
  );
  const words = fc.constantFrom(
    'early',
    'mid',
    'April',
    'to',
    '31',
    '2026',
    'spring',
    '-',
    'of',
    '0',
    'last',
    'é',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(words).map((each) => each.join(' ')),
      ),
      (text) => {
        const read = readVagueDay(text, frame('2026-08-20'));
        if (read.kind === 'done') expect(read.value.fromDay).toBeLessThanOrEqual(read.value.toDay);
      },
    ),
    { numRuns: 500 },
  );
});
