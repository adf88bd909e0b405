/** One moved sowing previewed in a full garden: what stands, and so many sowings drawn at random beside it. */
import { weekOfDay } from '../packages/basis/src/index.ts';
import { runSowing } from '../packages/growing/src/index.ts';
import { preparePreview, previewMove } from '../packages/workflows/src/argue/preview-move.ts';
import type { ChosenSowing } from '../packages/workflows/src/plan/chosen-sowings.ts';
import type { Demo } from './demo-problem.ts';
import { randomSowings } from './random-sowings.ts';
import { medianOf, timesMs } from './reference-loop.ts';

export interface PreviewFigures {
  readonly members: number;
  readonly sowings: number;
  readonly prepareMs: number;
  readonly previewMs: number;
}

const previews = 200;

export function previewFigures(demo: Demo, drawn: number, memberCount: number): PreviewFigures {
  const context = demo.context('check', memberCount);
  const problem = { ...demo.problem, context };
  const sowings = randomSowings(problem, drawn).map((drawnPlan, i): ChosenSowing => {
    const runs = context.members.map((member) => runSowing(context, member, drawnPlan, problem.stores));
    const clearDay = Math.max(...runs.map((run) => run.clearDay));
    const ground = problem.ground.findIndex((g) => g.exposure === drawnPlan.exposure);
    return {
      id: drawnPlan.id,
      number: i + 1,
      state: 'draft',
      plan: { ...drawnPlan, clearDay },
      ground,
      stripsCount: 1,
      groundFromWeek: weekOfDay(drawnPlan.startDay),
      groundToWeek: weekOfDay(clearDay) + 1,
      bench: [],
      placements: [],
      runs,
      standing: null,
    };
  });
  const begun = performance.now();
  const state = preparePreview({ problem, sowings });
  const prepareMs = performance.now() - begun;
  let next = 0;
  const previewNext = (): void => {
    const { id, plan } = sowings[next % sowings.length]!;
    next++;
    previewMove(state, { sowing: id, startDay: plan.startDay + 7, clearDay: plan.clearDay! + 7 });
  };
  // Somebody who drags has dragged before: the first hundreds warm up.
  timesMs(previews, previewNext);
  const previewMs = medianOf(timesMs(previews, previewNext));
  return { members: context.members.length, sowings: sowings.length, prepareMs, previewMs };
}
