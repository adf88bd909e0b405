import type { WhatIfReport } from '@twelvemonth/workflows';
import { plainSpaces } from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { whatIfSchema } from '../schema/what-if-schema.ts';
import { whatIfRefusal, whatIfSections } from './what-if-words.ts';

const score = (servingsMissing: number, leanWeeks: number) => ({
  servingsMissing,
  leanWeeks,
  servingsEaten: 900,
  wasted: 40,
});
const report: WhatIfReport = {
  schemaVersion: 1,
  garden: { household: 'Invented Row', site: 'Nowhere' },
  from: '2026-08-20',
  weeksShown: 78,
  seed: 1,
  members: 12,
  changes: [
    { change: 'lost', sowing: 'leek-aaaaaa', number: 12, kindName: 'leek', day: '2027-01-04' },
    {
      change: 'weather',
      weather: 'late-spring',
      from: '2027-03-01',
      to: '2027-05-31',
      members: 12,
      ofMembers: 60,
      value: 7.31,
      usual: 8.24,
    },
  ],
  countedFrom: '2027-01-04',
  before: score(80, 12),
  after: score(101.4, 15.5),
  withRemedies: score(95, 14),
  roles: [
    {
      role: 'leeks',
      roleName: 'leeks and spring onions',
      servingsLost: 19,
      leanWeeksMore: 3.2,
      from: '2027-01-04',
      to: '2027-03-22',
      weeks: [{ weekOf: '2027-01-04', servingsLost: 2, chanceLeanMore: 0.3 }],
    },
  ],
  knownDay: '2027-04-16',
  remedies: [
    {
      kind: 'spring-onion',
      kindName: 'spring onion',
      startsAs: 'seed',
      sow: '2027-04-21',
      by: '2027-05-05',
      plants: 90,
      m2: 1.2,
      placeNames: ['open beds', 'bed at the fence'],
      roles: ['leeks'],
      filled: 6.4,
    },
  ],
  leftOut: [],
};
const linesOf = (of: WhatIfReport) => whatIfSections(of).map((s) => plainSpaces(s.lines.join('\n')));

test('it is said as a neighbour would: what, when, how much, and what to do by when', () => {
  const [changes, worse, missed, remedies] = linesOf(report);
  expect(changes).toBe(
    'Leek (12) is lost on 4 Jan.\nA late spring (Mar – May): 7.3 °C in the mean, where 8.2 °C is usual; the 12 coldest of 60 weather runs.',
  );
  expect(worse).toBe(
    'From 4 Jan to the end of the plan 21 servings more are missing, and there are 3.5 lean weeks more than the 12 of the plan as it is.',
  );
  expect(missed).toBe('Leeks and spring onions, Jan – Mar: 19 servings fewer, 3.2 lean weeks more');
  expect(remedies).toBe(
    'Sow spring onion by 21 Apr, at the latest 5 May: 90 plants, 1.2 m² in open beds or bed at the fence; brings back 6.4 servings of leeks and spring onions\nTogether they bring back 6.4 of 21 servings.',
  );
});

test('where nothing helps it says so, and where nothing is missed as well', () => {
  const helpless = { ...report, remedies: [], withRemedies: report.after };
  expect(linesOf(helpless).at(-1)).toContain('buy or go without');
  const unharmed = { ...helpless, after: report.before, withRemedies: report.before, roles: [] };
  expect(linesOf(unharmed)).toContain('All in all the table would not notice.');
  expect(linesOf(unharmed).at(-1)).toBe('Nothing need be done about it.');
});

test('a stretch that runs over New Year is said with the year in which it ends', () => {
  const role = { ...report.roles[0]!, from: '2027-10-04', to: '2027-12-27' };
  expect(linesOf({ ...report, roles: [role] })[2]).toMatch(/early Jan 2028/);
});

test('refusals say how to go on, and JSON keeps its schema', () => {
  expect(whatIfRefusal('cover-unknown', { cover: 'tunel', nearest: 'tunnel', known: 'tunnel, frame' })).toBe(
    'The garden has no cover "tunel". Was "tunnel" meant? It has: tunnel, frame.',
  );
  expect(whatIfRefusal('something-new', {})).toContain('something new');
  expect(whatIfSchema.parse(report)).toEqual(report);
});
