/** A planning problem and unseen members from one of the example gardens. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseGarden } from '../packages/garden/src/index.ts';
import type { ForecastContext } from '../packages/growing/src/index.ts';
import type { PlanningProblem } from '../packages/planning/src/index.ts';
import { buildProblem, contextOf } from '../packages/workflows/src/problem/build-problem.ts';

export interface Demo {
  readonly problem: PlanningProblem;
  readonly seed: number;
  context(purpose: 'plan' | 'check', memberCount: number): ForecastContext;
}

export function demoProblem(example: string, memberCount = 30, seed = 1): Demo {
  const file = join(import.meta.dirname, '..', 'examples', `${example}.jsonc`);
  const { garden } = parseGarden(readFileSync(file, 'utf8'), { today: 0 });
  const fromDay = garden?.planFrom;
  if (garden === null || typeof fromDay !== 'number') throw new Error(`${file} cannot be planned`);
  const size = { fromDay, weeks: 78, memberCount, seed };
  const context: Demo['context'] = (purpose, count) => {
    const made = contextOf(garden, null, purpose, { ...size, memberCount: count });
    if (made === null) throw new Error(`${file} has no climate`);
    return made;
  };
  return { problem: buildProblem(garden, context('plan', memberCount), size), seed, context };
}
