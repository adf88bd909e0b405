/** Letting sowings in as they pay gives the same relaxation as the program with all of them, and an honest bound. */
import { expect, test } from 'vitest';
import { createHighsSolver } from '../adapters/solver-highs/src/index.ts';
import { demoProblem } from '../bench/demo-problem.ts';
import { makeCandidates } from '../packages/planning/src/candidates/make-candidates.ts';
import { probePlans } from '../packages/planning/src/candidates/probe-plans.ts';
import { standingOptions } from '../packages/planning/src/candidates/standing-options.ts';
import { plantingProgram, programParts } from '../packages/planning/src/program/build-program.ts';
import { chooseScenarios } from '../packages/planning/src/scenarios/choose-scenarios.ts';
import { dearestChains } from '../packages/planning/src/solve/price-sowings.ts';
import { relaxByColumns } from '../packages/planning/src/solve/relax-by-columns.ts';

const never = (): boolean => false;

function smallParts() {
  const { problem } = demoProblem('sill-and-balcony', 6);
  const scenarios = chooseScenarios(problem, probePlans(problem), 2);
  const made = makeCandidates(problem, scenarios, () => {});
  const candidates = [...standingOptions(problem, scenarios), ...made.filter((_, i) => i % 3 === 0)];
  return programParts(problem, scenarios, candidates);
}

test('the relaxation let in sowing by sowing is that of the whole program, and its bound is never above it', async () => {
  const parts = smallParts();
  const solver = await createHighsSolver();
  try {
    const whole = plantingProgram(parts, parts.candidates.keys());
    const { objective } = await solver.relax(whole.builder.build(), never);
    const best = (objective ?? Number.NaN) + whole.offset;
    const standing = [...parts.candidates.keys()].filter((c) => parts.candidates[c]!.group !== null);
    const bounds: number[] = [];
    const note = (cost: number, bound: number): boolean => {
      bounds.push(bound);
      expect(cost).toBeGreaterThanOrEqual(best - 1e-4);
      return false;
    };
    const relaxed = await relaxByColumns(parts, standing, solver, note, never, async () => {});
    expect(relaxed?.cost).toBeCloseTo(best, 3);
    expect(relaxed?.bound).toBeCloseTo(best, 3);
    expect(relaxed!.rounds).toBeGreaterThan(2);
    expect(bounds.every((bound) => bound <= best + 1e-4)).toBe(true);
  } finally {
    await solver.dispose();
  }
}, 60_000);

test('the dearest chain is the best sequence of spans that do not overlap', () => {
  const parts = smallParts();
  const from = parts.problem.fromWeek;
  const spans = [
    [0, 10, 5],
    [2, 6, 4],
    [6, 12, 3],
    [12, 20, 2],
  ] as const;
  const template = parts.candidates.find(({ group }) => group === null)!;
  const candidates = spans.map(([a, b]) => ({
    ...template,
    ground: 0,
    stripsPerBatch: 1,
    groundFromWeek: from + a,
    groundToWeek: from + b,
  }));
  const costs = Float64Array.from(spans, ([, , worth]) => -worth);
  const chain = dearestChains({ ...parts, candidates }, costs, () => true)[0]!;
  expect(chain.worth).toBe(9);
  expect(chain.sowings).toEqual([1, 2, 3]);
});
