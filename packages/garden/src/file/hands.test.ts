import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import { parseGarden } from './parse.ts';

const read = (hoursPerWeek: string, weeksAway = '[]') =>
  parseGarden(
    `{ "schemaVersion": 1, "hoursPerWeek": ${hoursPerWeek},
  "household": { "people": [{ "name": "one" }], "weeksAway": ${weeksAway} },
  "site": { "latitude": 52, "climate": "dublin" },
  "places": [{ "id": "bed", "lengthM": 4, "widthM": 1 }] }`,
    { today: dayFromIso('2026-08-25')! },
  );

test('hours are one number for all months, or months with the usual for the rest', () => {
  expect(read('6').garden?.hoursPerWeekByMonth).toEqual(new Array(12).fill(6));
  expect(read('null').garden?.hoursPerWeekByMonth).toEqual(new Array(12).fill(null));
  const byMonth = read('{ "usual": 6, "april": 3 }').garden?.hoursPerWeekByMonth;
  expect(byMonth).toEqual([6, 6, 6, 3, 6, 6, 6, 6, 6, 6, 6, 6]);
  expect(read('{ "july": 0 }').garden?.hoursPerWeekByMonth?.filter((h) => h !== null)).toEqual([0]);
});

test('a month that is misspelt, or hours below nothing, are told', () => {
  const misspelt = read('{ "usual": 6, "apirl": 3 }');
  expect(misspelt.issues.map(({ code, detail }) => [code, detail.nearest])).toEqual([
    ['key-unknown', 'april'],
  ]);
  const negative = read('{ "april": -3 }');
  expect(negative.garden).toBeNull();
  expect(negative.issues.map(({ where, code }) => `${where} ${code}`)).toEqual([
    'line 1: hoursPerWeek.april count-negative',
  ]);
  expect(read('"some"').issues.map(({ code }) => code)).toEqual(['value-of-wrong-type']);
});

test('a neighbour picks and waters only when that is said', () => {
  const { garden } = read(
    '6',
    '[{ "from": "2027-07-12", "to": "2027-07-25" }, { "from": "2027-08-02", "to": "2027-08-08", "neighbourWaters": true }]',
  );
  expect(
    garden?.household.weeksAway.map((away) => [
      isoFromDay(away.fromDay),
      away.neighbourPicks,
      away.neighbourWaters,
    ]),
  ).toEqual([
    ['2027-07-12', false, false],
    ['2027-08-02', false, true],
  ]);
});
