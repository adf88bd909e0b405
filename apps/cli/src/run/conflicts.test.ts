import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { createHighsSolver } from '@twelvemonth/solver-highs';
import { type PlanReport, planGarden } from '@twelvemonth/workflows';
import { afterAll, expect, test } from 'vitest';
import { conflictText } from '../words/conflict-words.ts';

const solver = await createHighsSolver();
afterAll(() => solver.dispose());

/** Two small beds, few kinds, and what a test adds: invented. */
const text = (
  more: string,
  yearly = '{}',
) => `{ "schemaVersion": 1, "invented": true, "planFrom": "2026-03-02",
  "household": { "name": "two", "people": [{ "name": "one" }], "yearly": ${yearly},
    "appetite": { "cooked-greens": 3, "leeks": 2, "salad-leaves": 3 } },
  "site": { "name": "somewhere", "latitude": 51.5, "climate": "dublin" },
  "places": [
    { "id": "left", "name": "left bed", "lengthM": 2, "widthM": 1.2 },
    { "id": "right", "name": "right bed", "lengthM": 2, "widthM": 1.2, "winterSun": "half" }
  ] ${more} }`;

async function plan(file: string): Promise<PlanReport> {
  const fromDay = dayFromIso('2026-03-02')!;
  const { garden, issues } = parseGarden(file, { today: fromDay });
  expect(issues).toEqual([]);
  const few: Garden = garden!;
  const options = {
    fromDay,
    weeks: 40,
    memberCount: 2,
    checkMemberCount: 2,
    seed: 1,
    effort: 0,
    timeLimitSeconds: null,
  };
  const ports = { solver, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
  const outcome = await planGarden(few, options, ports, null);
  if (outcome.kind !== 'done') throw new Error(outcome.reason);
  expect(outcome.value.proof.violations).toEqual([]);
  return outcome.value;
}
const setsOf = (report: PlanReport) => report.conflicts.map(({ set }) => set.map((d) => d.demand).sort());

test('what can be met together is no conflict', async () => {
  const report = await plan(
    text(`, "wishes": [{ "kind": "leek", "atLeast": 20 }, { "kind": "kale", "never": true },
      { "rest": true, "place": "right", "from": "2026-06-01" }, { "noPlanting": true, "from": "2026-04-08" }]`),
  );
  expect(report.conflicts).toEqual([]);
  expect(report.sowings.filter((s) => s.kind === 'leek').length).toBeGreaterThan(0);
});

test('more than the ground holds: the smaller number is said, and the plan is made without', async () => {
  const report = await plan(text(', "wishes": [{ "kind": "leek", "atLeast": 5000 }]'));
  expect(setsOf(report)).toEqual([['at-least']]);
  const [conflict] = report.conflicts;
  expect(conflict!.possiblePlants).toBeGreaterThan(50);
  expect(conflict!.possiblePlants).toBeLessThan(1000);
  expect(conflictText(conflict!)).toMatch(
    /^At least 5,000 plants of .*leek.* cannot be met .*Ask for \d+ at most/,
  );
  expect(report.sowings.length).toBeGreaterThan(0);
});

test('forbidden and wanted at once; other wishes are not blamed', async () => {
  const report = await plan(
    text(
      `, "hoursPerWeek": 20, "wishes": [{ "kind": "leek", "never": true }, { "kind": "kale", "never": true },
      { "rest": true, "place": "left", "from": "2026-06-01", "to": "2026-07-01" }]`,
      '{ "leek": 30 }',
    ),
  );
  expect(setsOf(report)).toEqual([['forbid', 'yearly']]);
  expect(report.conflicts[0]!.drop).toMatchObject({ demand: 'yearly', kind: 'leek', plants: 30 });
  expect(conflictText(report.conflicts[0]!)).toMatch(
    /cannot all be met; the plan leaves out .+Give up no .*leek/,
  );
});

test('a promise on resting ground and one on a day without planting', async () => {
  const report = await plan(
    text(`, "wishes": [
      { "rest": true, "place": "left", "from": "2026-03-02" },
      { "noPlanting": true, "from": "2026-05-13" },
      { "id": "on-rest-aaaaaa", "kind": "kale", "sow": "2026-04-20", "place": "left", "plants": 4 },
      { "id": "that-week-aaaaaa", "kind": "chard", "sow": "2026-05-13", "place": "right", "plants": 4 },
      { "id": "all-well-aaaaaa", "kind": "chard", "sow": "2026-04-29", "place": "right", "plants": 4 }]`),
  );
  expect(setsOf(report).sort()).toEqual([
    ['firm', 'no-planting'],
    ['firm', 'rest'],
  ]);
  expect(report.sowings.filter((s) => s.state === 'firm').map((s) => s.id)).toEqual(['all-well-aaaaaa']);
});

test('both beds at rest leave no ground for what is wanted: all three are named', async () => {
  const report = await plan(
    text(`, "wishes": [{ "kind": "leek", "atLeast": 20 },
      { "rest": true, "place": "left", "from": "2026-03-02" }, { "rest": true, "place": "right", "from": "2026-03-02" }]`),
  );
  expect(setsOf(report)).toEqual([['at-least', 'rest', 'rest']]);
});

test('gardens of which nothing can come give an empty plan and the reason', async () => {
  const nothing = async (file: string) => {
    const report = await plan(file);
    expect(report.sowings).toEqual([]);
    expect(report.weeks).toHaveLength(40);
    return report.nothing;
  };
  const whole = text('');
  const noPlaces = whole.replace(
    /"places": \[[\s\S]*?\]/,
    '"places": [{ "id": "path", "lengthM": 1, "widthM": 1, "takenBy": "a path" }]',
  );
  expect(await nothing(noPlaces)).toBe('no-ground');
  const never = whole.replace('"appetite": {', '"dislikes": [DISLIKED], "appetite": {');
  const { allKinds } = await import('@twelvemonth/growing');
  const disliked = never.replace(
    'DISLIKED',
    allKinds()
      .map(({ id }) => `"${id}"`)
      .join(', '),
  );
  expect(await nothing(disliked)).toBe('all-forbidden');
});

test('at least so many and at most fewer', async () => {
  const report = await plan(text(', "wishes": [{ "kind": "leek", "atMost": 4 }]', '{ "leek": 30 }'));
  expect(setsOf(report)).toEqual([['at-most', 'yearly']]);
  expect(report.conflicts[0]!.possiblePlants).toBe(4);
});

test('more than the hours allow: both are named, and as many as the hours allow are offered', async () => {
  const report = await plan(text(', "hoursPerWeek": 0.02, "wishes": [{ "kind": "leek", "atLeast": 60 }]'));
  expect(setsOf(report)).toEqual([['at-least', 'hours']]);
  expect(report.conflicts[0]!.possiblePlants).toBeLessThan(60);
});
