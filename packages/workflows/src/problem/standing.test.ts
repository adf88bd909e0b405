import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { expect, it } from 'vitest';
import { buildProblem, contextOf } from './build-problem.ts';

const text = readFileSync(new URL('../../../../examples/marram-end.jsonc', import.meta.url), 'utf8');
const fromDay = dayFromIso('2026-08-20')!;
const garden = parseGarden(text, { today: fromDay }).garden!;
const size = { fromDay, weeks: 78, memberCount: 4, seed: 1 };

it('a crop whose end costs nothing may be cleared long before it ends by itself', () => {
  const problem = buildProblem(garden, contextOf(garden, null, 'plan', size)!, size);
  const daysOf = (kind: string): readonly number[] =>
    problem.standing.find((s) => s.plan.kind.id === kind)!.clearDays;
  const squash = daysOf('squash-winter');
  expect(squash.length).toBe(2);
  expect(squash[0]!).toBeLessThan(dayFromIso('2027-01-31')!);
  expect(squash[1]!).toBeGreaterThan(squash[0]! + 60);
  for (const { clearDays } of problem.standing)
    expect([...clearDays]).toEqual([...new Set(clearDays)].sort((a, b) => a - b));
  expect(daysOf('leek').every((day) => day > dayFromIso('2027-03-31')!)).toBe(true);
  expect(daysOf('rhubarb').length).toBe(1);
});
