import { dayFromIso } from '@twelvemonth/basis';
import type { DecisionLine } from '@twelvemonth/workflows';
import {
  darkMonthsOf,
  monthSheetOf,
  plainSpaces,
  printDarkMonths,
  printMonth,
  renderText,
} from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { planSchema } from '../schema/plan-schema.ts';
import { inventedPlan } from '../testing/recording-terminal.ts';
import { makeOrBreakWords, signWords } from './decision-words.ts';
import { sheetWords } from './sheet-words.ts';

const day = (iso: string): number => dayFromIso(iso)!;
const line: DecisionLine = {
  decisionDay: day('2027-02-12'),
  rule: { code: 'leaves', value: 2 },
  chanceFails: 0.3,
  fallback: { kindName: 'round-seeded early pea', act: 'sow', sow: day('2027-02-12'), plants: 90 },
};

test.each([
  ['up', 1, 'it is up'],
  ['leaves', 1, 'the plants have one true leaf or more'],
  ['leaves', 5, 'the plants have five true leaves or more'],
  ['size', 0.66, 'it is two thirds as big as it will be picked, or bigger'],
  ['standing', 0.7, 'seven in ten of the plants or more still stand'],
  ['not-bolted', 0.1, 'no more than a tenth has run to seed'],
] as const)('%s %d: %s', (code, value, words) => {
  expect(signWords({ code, value })).toBe(words);
});

test('every value that a rule can have has its word', () => {
  for (const value of [0.1, 0.2, 0.25, 0.33, 0.4, 0.5, 0.6, 0.66, 0.75, 0.8, 0.9, 1])
    expect(signWords({ code: 'size', value })).not.toMatch(/\d/);
  for (const value of [1, 2, 3, 4, 5, 6, 7, 8, 10])
    expect(signWords({ code: 'leaves', value })).not.toMatch(/\d/);
  for (const value of [0.3, 0.5, 0.7, 0.8, 0.9])
    expect(signWords({ code: 'standing', value })).not.toMatch(/\d/);
});

test('it is said with its day, its sign and what goes in otherwise', () => {
  expect(plainSpaces(makeOrBreakWords(line, day('2026-09-01')))).toBe(
    'make or break 12 Feb: keep it if the plants have two true leaves or more; else clear it and sow round-seeded early pea (90) in its place',
  );
  const waits = { ...line, fallback: { ...line.fallback, sow: day('2027-03-01') } };
  expect(plainSpaces(makeOrBreakWords(waits, day('2026-09-01')))).toContain('(90) on 1 Mar in its place');
});

test('it stands on the month sheet of its day and on the dark-months page', () => {
  const plan = inventedPlan();
  const risky = plan.sowings.find((s) => s.kind === 'spinach-overwintering')!;
  const decision = {
    decisionDay: '2027-02-12',
    rule: { code: 'standing' as const, value: 0.5 },
    chanceFails: 0.3,
    failsWhenSeen: 0.1,
    failsWhenNot: 0.8,
    rightShare: 0.8,
    fallback: {
      kind: 'pea-round',
      kindName: 'round-seeded early pea',
      startsAs: 'seed',
      routeId: 'direct',
      sow: '2027-02-12',
      plants: 90,
      clear: '2027-06-20',
      servings: 12,
    },
  };
  const report = { ...plan, sowings: plan.sowings.map((s) => (s === risky ? { ...s, decision } : s)) };
  expect(planSchema.parse(report)).toEqual(report);
  const sheet = (month: number): string => {
    const made = monthSheetOf(report, { month: { year: 2027, month }, today: day('2026-08-20'), seeds: [] });
    return renderText(printMonth(made, sheetWords, 'text'), 120).replace(/\s+/g, ' ');
  };
  const look = `Make or break: look at ${risky.kindName} (${risky.number})`;
  expect(sheet(2)).toContain(look);
  expect(sheet(2)).toContain('keep it if half of the plants or more still stand; else clear it and sow');
  expect(sheet(4)).not.toContain(look);
  const dark = renderText(printDarkMonths(darkMonthsOf(report, day('2026-08-20')), sheetWords), 120);
  expect(dark.replace(/\s+/g, ' ')).toContain('make or break 12 Feb');
});
