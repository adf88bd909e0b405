import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import { parseGarden } from './parse.ts';

const today = dayFromIso('2026-08-20')!;
const wished = (wishes: string) => {
  const text = `{ "schemaVersion": 1, "household": { "people": [{ "name": "one" }] },
    "site": { "latitude": 52, "climate": "dublin" },
    "places": [{ "id": "north", "count": 3, "lengthM": 4, "widthM": 1.2 }],
    "wishes": ${wishes} }`;
  const { garden, issues } = parseGarden(text, { today });
  expect(issues).toEqual([]);
  return garden!.wishes.map((wish) =>
    'fromDay' in wish
      ? {
          ...wish,
          fromDay: isoFromDay(wish.fromDay),
          toDay: wish.toDay === null ? null : isoFromDay(wish.toDay),
        }
      : wish,
  );
};

test('a bed rests from a day, to a day or for good; without a day from the start', () => {
  expect(
    wished(`[{ "rest": true, "place": "north", "number": 2, "from": "June 2027", "to": "August 2027" },
      { "rest": true, "place": "north", "from": "2027-06-01" }, { "rest": true, "place": "north" }]`),
  ).toEqual([
    { wish: 'rest', place: 'north', placeNumber: 2, fromDay: '2027-06-01', toDay: '2027-08-31' },
    { wish: 'rest', place: 'north', placeNumber: null, fromDay: '2027-06-01', toDay: null },
    { wish: 'rest', place: 'north', placeNumber: null, fromDay: '2026-08-20', toDay: null },
  ]);
});

test('one day means its week, a month the whole of it, two days what lies between', () => {
  expect(
    wished(`[{ "noPlanting": true, "from": "12 August 2027" }, { "noPlanting": true, "from": "September" },
      { "noPlanting": true, "from": "2027-04-01", "to": "2027-04-03" }]`),
  ).toEqual([
    { wish: 'no-planting', fromDay: '2027-08-09', toDay: '2027-08-15' },
    { wish: 'no-planting', fromDay: '2026-09-01', toDay: '2026-09-30' },
    { wish: 'no-planting', fromDay: '2027-04-01', toDay: '2027-04-03' },
  ]);
});

test('what was sown after the file was begun is no mistake when the plan is made again later', () => {
  const text = `{ "schemaVersion": 1, "planFrom": "2026-08-20", "household": { "people": [{ "name": "one" }] },
    "site": { "latitude": 52, "climate": "dublin" },
    "places": [{ "id": "north", "lengthM": 4, "widthM": 1.2 }],
    "standing": [{ "kind": "leek", "place": "north", "count": 4, "sown": "2026-09-10" }] }`;
  const from = dayFromIso('2026-10-01')!;
  expect(parseGarden(text, { today: from }).issues.map(({ code }) => code)).toEqual(['date-in-future']);
  expect(parseGarden(text, { today: from, from }).issues).toEqual([]);
});
