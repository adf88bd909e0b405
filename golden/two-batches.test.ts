import { readFileSync } from 'node:fs';
import { civilFromDay, dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { createHighsSolver, type HighsSolver } from '@twelvemonth/solver-highs';
import { planGarden } from '@twelvemonth/workflows';
import { afterAll, beforeAll, expect, it } from 'vitest';

// Early for the table, later to keep: nothing in the engine knows of batches, the appetite alone asks for them.
const text = readFileSync(new URL('./two-batches.jsonc', import.meta.url), 'utf8');
const garden = parseGarden(text, { today: dayFromIso('2026-09-01')! }).garden!;
let solver: HighsSolver;
beforeAll(async () => {
  solver = await createHighsSolver();
});
afterAll(() => solver.dispose());

const earlyMonths = [7];
const keepingMonths = [11, 12, 1, 2, 3];

function wantingIn(months: readonly number[]): Garden {
  const appetite = garden.household.appetite.map((role) => ({
    ...role,
    servingsPerWeekByMonth: role.servingsPerWeekByMonth.map((servings, i) =>
      months.includes(i + 1) ? servings : 0,
    ),
  }));
  return { ...garden, household: { ...garden.household, appetite } };
}

/** Onions of the plan: kind, month in which they are planted, month in which they are first eaten in the middle year. */
async function batchesOf(wanted: Garden) {
  const options = {
    fromDay: wanted.planFrom!,
    weeks: 60,
    memberCount: 12,
    checkMemberCount: 8,
    seed: 1,
    effort: 20,
    timeLimitSeconds: null,
  };
  const ports = { solver, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
  const outcome = await planGarden(wanted, options, ports, null);
  if (outcome.kind === 'cannot') throw new Error(outcome.reason);
  expect(outcome.value.proof.violations).toEqual([]);
  return outcome.value.sowings.map((sowing) => ({
    kind: sowing.kind,
    planted: civilFromDay(dayFromIso(sowing.sow)!).month,
    firstEaten: civilFromDay(dayFromIso(sowing.harvests[0]!.first.p50!)!).month,
  }));
}

const batchesIn = (sowings: Awaited<ReturnType<typeof batchesOf>>): string[] =>
  [...new Set(sowings.map(({ firstEaten }) => (firstEaten <= 7 ? 'early' : 'keeping')))].sort();

it('early bulbs and keeping bulbs, both wanted: two batches, of two kinds, begun in two seasons', async () => {
  const sowings = await batchesOf(wantingIn([...earlyMonths, ...keepingMonths]));
  expect(batchesIn(sowings)).toEqual(['early', 'keeping']);
  for (const { kind, planted, firstEaten } of sowings) {
    expect(kind).toBe(firstEaten <= 7 ? 'onion-autumn-yellow' : 'onion-spring-set');
    expect(firstEaten <= 7 ? [9, 10, 11] : [2, 3, 4]).toContain(planted);
  }
});

it('early bulbs alone: the early batch alone', async () => {
  const sowings = await batchesOf(wantingIn(earlyMonths));
  expect(batchesIn(sowings)).toEqual(['early']);
});

it('keeping bulbs alone: the keeping batch alone', async () => {
  const sowings = await batchesOf(wantingIn(keepingMonths));
  expect(batchesIn(sowings)).toEqual(['keeping']);
});
