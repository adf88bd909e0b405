import { mondayOf } from '@twelvemonth/basis';
import { type KitchenRole, kindById, type Lot } from '@twelvemonth/growing';
import { describe, expect, it } from 'vitest';
import type { Candidate } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { smallProblem } from '../verdict/fixture/small-problem.ts';
import { fallbacksFor, type RiskySowing } from './fallback.ts';

const problem = smallProblem(53);
const week = (index: number): number => problem.fromWeek + index;
const scenarios = problem.context.members.map((member): Scenario => ({ member, prob: 0.5 }));
const freeBench = problem.benches.map((bench) => new Float64Array(problem.weekCount).fill(bench.capacityM2));

const lot = (role: KitchenRole, from: number, servings: number): Lot => ({
  source: 's',
  kind: 'k',
  role,
  fromWeek: week(from),
  toWeek: week(from + 2),
  servings,
  lossPerWeekShare: 0,
  form: 'fresh',
  store: null,
  storeFromWeek: null,
  keptGPerServing: 80,
  putBy: null,
  bolted: false,
});

const possible = (kind: string, begins: number, ends: number, servings: number): Candidate => ({
  plan: {
    id: `${kind}/${begins}`,
    kind: kindById(kind)!,
    route: 'direct',
    startDay: mondayOf(week(begins)) + 2,
    startSpreadDays: 0,
    stages: [],
    exposure: 'open',
    plantDay: null,
    clearDay: mondayOf(week(ends)),
    plantsCount: 10,
    protection: [],
  },
  ground: 0,
  stripsPerBatch: 1,
  groundFromWeek: week(begins),
  groundToWeek: week(ends) + 1,
  bench: [],
  startWeek: week(begins),
  minutes: 10,
  work: [],
  mostBatches: 72,
  group: null,
  lots: scenarios.map(() => [lot('cooked-greens', 30, servings)]),
});

const risky: RiskySowing = {
  ground: 0,
  stripsCount: 2,
  groundToWeek: week(36),
  feeds: [{ role: 'cooked-greens', fromWeek: week(28), toWeek: week(34), servings: 20 }],
  fromDay: mondayOf(week(10)),
  toDay: mondayOf(week(26)),
};
const found = (candidates: readonly Candidate[]) =>
  fallbacksFor(problem, scenarios, candidates, freeBench, risky).map(({ candidate, batches, servings }) => [
    candidate.plan.id,
    batches,
    servings,
  ]);

describe('what stands ready for the ground of a risky sowing', () => {
  it('of each kind the latest start that still gives nearly as much, best kind first', () => {
    const chard = [12, 15, 18, 21].map((begins, i) => possible('chard', begins, 35, [6, 6, 5, 3][i]!));
    const kale = [11, 14].map((begins) => possible('kale', begins, 35, 8));
    expect(found([...chard, ...kale])).toEqual([
      ['kale/14', 2, 16],
      ['chard/18', 2, 10],
    ]);
  });

  it('gives no more than was to be had there', () => {
    expect(found([possible('chard', 12, 35, 50)])).toEqual([['chard/12', 2, 20]]);
  });

  it('begins between the days, is off the ground in time, and feeds the same weeks and role', () => {
    const early = possible('chard', 8, 30, 6);
    const late = possible('chard', 27, 35, 6);
    const long = possible('chard', 12, 40, 6);
    const elsewhere = { ...possible('chard', 12, 35, 6), ground: 1 };
    const other = { ...possible('leek', 12, 35, 6), lots: scenarios.map(() => [lot('leeks', 30, 6)]) };
    const weeks = {
      ...possible('kale', 12, 35, 6),
      lots: scenarios.map(() => [lot('cooked-greens', 20, 6)]),
    };
    expect(found([early, late, long, elsewhere, other, weeks])).toEqual([]);
  });

  it('needs room on the bench for the plants of all its strips', () => {
    const raised = possible('chard', 16, 35, 6);
    const use = { bench: 0, fromWeek: week(16), toWeek: week(20), m2: 0.9 };
    expect(found([{ ...raised, bench: [use] }])).toHaveLength(1);
    expect(found([{ ...raised, bench: [{ ...use, m2: 1.1 }] }])).toEqual([]);
  });
});
