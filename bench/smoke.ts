/** Short bench of npm test: budgets as ratios, the same answers as the naive loop, a first plan that adds up. */
import { batchFigures } from './batch.bench.ts';
import {
  candidateBudget,
  firstPlanBudget,
  leastBatchFactor,
  leastNaiveFactor,
  leastOutdoorFactor,
  movedSowingBudget,
  previewBudget,
} from './budgets.ts';
import { demoProblem } from './demo-problem.ts';
import { forecastFigures } from './forecast.bench.ts';
import { outdoorFigures } from './outdoor.bench.ts';
import { planFigures } from './plan.bench.ts';
import { previewFigures } from './preview.bench.ts';
import { referenceMs } from './reference-loop.ts';

export interface Budget {
  readonly name: string;
  readonly value: number;
  readonly limit: number;
  readonly atLeast: boolean;
}

const kept = ({ value, limit, atLeast }: Budget): boolean => (atLeast ? value >= limit : value <= limit);

/** True when all budgets are kept. */
export async function smoke(say: (line: string) => void): Promise<boolean> {
  const before = referenceMs();
  const demo = demoProblem('marram-end', 4);
  const forecast = forecastFigures(demo, 300, 30);
  const outdoor = outdoorFigures(demo, 300, 30, 3);
  const preview = previewFigures(demo, 200, 30);
  const plan = await planFigures('sill-and-balcony', false, 0, 12);
  const batch = await batchFigures(8, 3, leastBatchFactor);
  // The slower of two: another load on the machine in between slows the work, not the budget.
  const reference = Math.max(before, referenceMs());
  const budgets: Budget[] = [
    {
      name: 'one moved sowing, 30 members',
      value: forecast.movedMs / reference,
      limit: movedSowingBudget,
      atLeast: false,
    },
    {
      name: 'one moved sowing previewed among 200, 30 members',
      value: preview.previewMs / reference,
      limit: previewBudget,
      atLeast: false,
    },
    {
      name: 'a candidate in a member',
      value: forecast.wholeMs / (forecast.candidates * forecast.members) / reference,
      limit: candidateBudget,
      atLeast: false,
    },
    {
      name: 'day loop on ready place weather against the engine, first days only',
      value: forecast.naiveMs / forecast.engineMs,
      limit: leastNaiveFactor,
      atLeast: true,
    },
    {
      name: 'day loop from outdoor weather against the engine, whole answers',
      value: outdoor.naiveMs / outdoor.engineAgainMs,
      limit: leastOutdoorFactor,
      atLeast: true,
    },
    {
      name: 'days on which these two differ, but for beds wet for over a year',
      value: outdoor.unexplained,
      limit: 0,
      atLeast: false,
    },
    {
      name: 'days on which the first two differ by more than rounding',
      value: forecast.differByMore,
      limit: 0,
      atLeast: false,
    },
    {
      name: 'first plan of the small household',
      value: (plan.seconds * 1000) / reference,
      limit: firstPlanBudget,
      atLeast: false,
    },
    {
      name: 'findings of the independent check',
      value: plan.violations.length,
      limit: 0,
      atLeast: false,
    },
    ...(batch === null
      ? []
      : [
          {
            name: 'gardens of a batch, two workers against one',
            value: batch.twoPerSecond / batch.onePerSecond,
            limit: leastBatchFactor,
            atLeast: true,
          },
        ]),
  ];
  for (const budget of budgets) {
    const { name, value, limit, atLeast } = budget;
    const sign = atLeast ? '≥' : '≤';
    say(`${kept(budget) ? 'ok  ' : 'OVER'}  ${name}: ${Number(value.toPrecision(3))} (${sign} ${limit})`);
  }
  for (const violation of plan.violations) say(`      ${violation}`);
  say(`bench: reference loop ${reference.toFixed(1)} ms, all else in multiples of it or in counts`);
  return budgets.every(kept);
}
