/**
 * Seconds, gap and memory of a plan by size, printed as it goes: `npx tsx bench/plan-sizes.ts M|L [effort]`. M: 40 kinds
 * in the demo garden's places, five scenarios; L: 85 kinds. Figures stand in docs/models/pricing.md; nothing here is a
 * test, because seconds are those of the machine.
 */
import { createHighsSolver } from '../adapters/solver-highs/src/index.ts';
import { type PlanningProblem, planSowings } from '../packages/planning/src/index.ts';
import { demoProblem } from './demo-problem.ts';

const kindCounts: Readonly<Record<string, number>> = { M: 40, L: 85 };
const iterationsPerEffort = 2000;

/** Every n-th kind, so that all families and roles are among them. */
function ofSize(problem: PlanningProblem, count: number): PlanningProblem {
  const step = problem.kinds.length / count;
  const taken = new Set(Array.from({ length: count }, (_, i) => Math.floor(i * step)));
  return { ...problem, kinds: problem.kinds.filter((_, i) => taken.has(i)) };
}

const [size = 'M', effort = '10'] = process.argv.slice(2);
const begun = performance.now();
const elapsedSeconds = (): number => (performance.now() - begun) / 1000;
const say = (text: string): void => console.log(`${elapsedSeconds().toFixed(1)} s  ${text}`);
const problem = ofSize(demoProblem('marram-end').problem, kindCounts[size] ?? 40);
say(`${problem.kinds.length} kinds, ${problem.ground.length} classes of ground, ${problem.weekCount} weeks`);
const solver = await createHighsSolver();
let last = '';
const chosen = await planSowings(
  problem,
  solver,
  {
    scenarioCount: 5,
    gapShare: 0.01,
    lpIterations: Number(effort) * iterationsPerEffort,
    timeLimitSeconds: null,
  },
  {
    progress: (step, _doneShare, gapShare) => {
      const text = gapShare === null ? step : `${step}, gap ${(100 * gapShare).toFixed(2)} %`;
      if (text !== last) say(text);
      last = text;
    },
    stopRequested: () => false,
    elapsedSeconds,
  },
);
const percent = (share: number | null | undefined): string =>
  typeof share === 'number' ? `${(100 * share).toFixed(2)} %` : 'unknown';
say(
  `${chosen.candidates.length} possible sowings; gap ${percent(chosen.gapShare)}, of the cheapest found ${percent(chosen.searchGapShare)}; ${Math.round(process.memoryUsage().rss / 1e6)} MB`,
);
await solver.dispose();
