// Prints what the weight of poor years does in unseen members: `node --import tsx bench/poor-years.ts EXAMPLE [seeds]`.
// docs/models/risk.md holds its figures, and the settings of each run where they were others than these.
import { createHighsSolver } from '../adapters/solver-highs/src/index.ts';
import { scoreOf } from '../packages/growing/src/index.ts';
import { type PlacedSowing, planSowings, simulate } from '../packages/planning/src/index.ts';
import { chosenSowings } from '../packages/workflows/src/plan/chosen-sowings.ts';
import { demoProblem } from './demo-problem.ts';

const weights = [0, 0.3, 0.6];
const [firstWeek, endWeek] = [13, 65];
const unseenMembers = 100;
const example = process.argv[2] ?? 'sill-and-balcony';
const seeds = Array.from({ length: Number(process.argv[3] ?? 1) }, (_, i) => i + 1);

const meanOf = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

async function missingWith(weight: number, seed: number): Promise<number[]> {
  const demo = demoProblem(example, 12, seed);
  const problem = { ...demo.problem, poorYearsWeight: weight };
  const solver = await createHighsSolver();
  try {
    const limits = { scenarioCount: 4, gapShare: 0.005, lpIterations: 0, timeLimitSeconds: null };
    const steps = { progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
    const chosen = await planSowings(problem, solver, limits, steps);
    const placed: readonly Pick<PlacedSowing, 'plan'>[] = chosenSowings(
      problem,
      chosen.choices,
      chosen.scenarios,
    ).sowings;
    const { stock, appetite, roles, stores } = problem;
    const context = demo.context('check', unseenMembers);
    const plans = placed.map(({ plan }) => plan);
    return simulate({ context, plans, stock, appetite, roles, stores })
      .map(({ eaten }) => scoreOf(eaten, appetite, firstWeek, endWeek).missingServings)
      .sort((a, b) => b - a);
  } finally {
    await solver.dispose();
  }
}

console.log(`${example}, ${unseenMembers} unseen members, weeks ${firstWeek}–${endWeek}`);
console.log('| seed | weight of poor years | missing, mean | missing, worst fifth |');
console.log('|---|---|---|---|');
for (const seed of seeds)
  for (const weight of weights) {
    const missing = await missingWith(weight, seed);
    const worst = missing.slice(0, Math.round(missing.length / 5));
    console.log(`| ${seed} | ${weight} | ${meanOf(missing).toFixed(1)} | ${meanOf(worst).toFixed(1)} |`);
  }
