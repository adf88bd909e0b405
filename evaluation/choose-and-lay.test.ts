import { expect, it } from 'vitest';
import { mondayOf } from '../packages/basis/src/index.ts';
import { kindById } from '../packages/growing/src/index.ts';
import type { Candidate, ChosenPlan, PlanningProblem } from '../packages/planning/src/index.ts';
import { smallProblem } from '../packages/planning/src/verdict/fixture/small-problem.ts';
import { chooseAndLay } from '../packages/workflows/src/plan/choose-and-lay.ts';

const small = smallProblem(52);
/** The class is counted with 24 strips more than its beds have. */
const problem: PlanningProblem = {
  ...small,
  standing: [],
  ground: small.ground.map((ground, g) =>
    g === 0 ? { ...ground, stripCount: ground.stripCount + 24 } : ground,
  ),
};
const from = problem.fromWeek + 1;
const candidate = (kind: string, start: number): Candidate =>
  ({
    plan: {
      id: `${kind}/${start}`,
      kind: kindById(kind)!,
      route: 'direct',
      startDay: mondayOf(start),
      startSpreadDays: 0,
      stages: [],
      exposure: 'open',
      plantDay: null,
      clearDay: mondayOf(start + 20),
      plantsCount: 4,
      protection: [],
    },
    ground: 0,
    stripsPerBatch: 1,
    groundFromWeek: start,
    groundToWeek: start + 21,
    bench: [],
    startWeek: start,
    minutesByWeek: new Map(),
    mostBatches: 96,
    group: null,
    lots: [[]],
  }) as unknown as Candidate;

it('hands what beds refuse back as a cut, twice, and then sows on less ground and says so', async () => {
  const asked: (PlanningProblem['groundCuts'] | undefined)[] = [];
  const choose = (again: PlanningProblem): Promise<ChosenPlan> => {
    asked.push(again.groundCuts);
    const choices = [
      { candidate: candidate('spinach-overwintering', from), batches: 70 },
      { candidate: candidate('radish-summer', from + 2), batches: 12 },
    ];
    return Promise.resolve({
      choices,
      candidates: [],
      scenarios: [{ member: null, prob: 1 }],
    } as unknown as ChosenPlan);
  };
  const { sowings, unplaced } = await chooseAndLay(problem, choose, () => {});
  expect(asked.map((cuts) => cuts?.length)).toEqual([0, 1, 2]);
  expect(asked[1]).toEqual([{ ground: 0, fromWeek: from + 2, toWeek: from + 23, strips: 10 }]);
  expect(unplaced.map(({ wantedStrips, placedStrips }) => [wantedStrips, placedStrips])).toEqual([[12, 2]]);
  expect(sowings.map((s) => [s.plan.kind.id, s.stripsCount, s.plan.plantsCount])).toEqual([
    ['spinach-overwintering', 70, 280],
    ['radish-summer', 2, 8],
  ]);
  for (const s of sowings)
    expect(s.placements.reduce((sum, p) => sum + p.stripsCount, 0)).toBe(s.stripsCount);
});
