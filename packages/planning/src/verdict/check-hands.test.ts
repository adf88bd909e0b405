import { mondayOf, weekOfDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeCandidates } from '../candidates/make-candidates.ts';
import { standingOptions } from '../candidates/standing-options.ts';
import type { Choice, PlanningProblem } from '../problem.ts';
import { greedyPlan } from '../solve/greedy.ts';
import { minutesByAct } from '../work/minutes-by-week.ts';
import type { CheckedSowing } from './checked-sowing.ts';
import { smallProblem } from './fixture/small-problem.ts';
import { independentCheck } from './independent-check.ts';

const few = new Set(['kale', 'lettuce-leaf', 'onion-spring-set', 'carrot-early', 'leek', 'spinach-spring']);
const whole = smallProblem(52);
const problem: PlanningProblem = { ...whole, kinds: whole.kinds.filter(({ id }) => few.has(id)) };
const scenarios = problem.context.members.map((member) => ({ member, prob: 0.5 }));
const candidates = [...standingOptions(problem, scenarios), ...makeCandidates(problem, scenarios, () => {})];

const plan = (own: PlanningProblem): Choice[] =>
  greedyPlan(
    own,
    scenarios,
    candidates,
    (options) => options.at(-1)!,
    () => false,
  );

function checked(own: PlanningProblem, choices: readonly Choice[]): CheckedSowing[] {
  return choices.map(({ candidate, batches }) => {
    const sowing = {
      ...candidate,
      plan: {
        ...candidate.plan,
        id: candidate.group ?? candidate.plan.id,
        plantsCount: candidate.plan.plantsCount * (candidate.group === null ? batches : 1),
      },
      stripsCount: candidate.stripsPerBatch * batches,
      bench: candidate.bench.map((use) => ({ ...use, m2: use.m2 * batches })),
    };
    const outcomes = candidate.lots.map((lots, s) => ({ prob: scenarios[s]!.prob * batches, lots }));
    return { ...sowing, minutesByAct: minutesByAct(own, sowing, outcomes) };
  });
}

const codes = (found: readonly string[]): string[] => [...new Set(found.map((code) => code.split(':')[0]!))];

describe('hours counted once more', () => {
  const capped: PlanningProblem = {
    ...problem,
    capMinutesByWeek: new Float64Array(problem.weekCount).fill(90),
  };

  it('agree with what a plan claims, and its benches are held from sowing to planting', () => {
    const sowings = checked(capped, plan(capped));
    expect(sowings.some(({ bench }) => bench.length > 0)).toBe(true);
    expect(independentCheck(capped, sowings)).toEqual([]);
  });

  it('find a week that is over, work that was left out, a bench left too soon and too small', () => {
    const choices = plan(capped);
    const free = checked(problem, plan(problem));
    expect(codes(independentCheck(capped, free))).toEqual(['hours-over']);
    const sowings = checked(capped, choices);
    const at = sowings.findIndex(({ bench, plan: own }) => bench.length > 0 && own.stages.length > 0);
    const change = (part: Partial<CheckedSowing>): CheckedSowing[] =>
      sowings.map((sowing, i) => (i === at ? { ...sowing, ...part } : sowing));
    const row = new Float64Array(problem.weekCount);
    const idle = { ...sowings[at]!.minutesByAct!, weed: row, plant: row };
    expect(codes(independentCheck(capped, change({ minutesByAct: idle })))).toContain('hours');
    const { bench } = sowings[at]!;
    const early = bench.map((use) => ({ ...use, toWeek: use.toWeek - 1 }));
    expect(codes(independentCheck(capped, change({ bench: early })))).toContain('bench-gap');
    const small = bench.map((use) => ({ ...use, m2: use.m2 / 3 }));
    expect(codes(independentCheck(capped, change({ bench: small })))).toContain('bench-small');
  });

  it('find what is begun while nobody is there, and salad for tonight where few come by', () => {
    const sowings = checked(problem, plan(problem)).filter(({ plan: own }) => own.id !== 'standing-leek');
    const week = weekOfDay(sowings[0]!.plan.startDay);
    const away = [
      { fromDay: mondayOf(week), toDay: mondayOf(week) + 6, neighbourPicks: false, neighbourWaters: true },
    ];
    const gone = { ...problem, context: { ...problem.context, away } };
    expect(codes(independentCheck(gone, sowings))).toContain('nobody-there');
    const seldom = { ...problem, ground: problem.ground.map((g) => ({ ...g, visitsPerWeek: 2 })) };
    expect(codes(independentCheck(seldom, sowings))).toContain('visits-few');
  });
});

it('the first plan keeps any caps, month by month, and away from home nothing is begun', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 12, maxLength: 12 }),
      fc.integer({ min: 1, max: 60 }),
      (months, awayWeek) => {
        const from = mondayOf(problem.fromWeek + awayWeek);
        const away = [{ fromDay: from, toDay: from + 13, neighbourPicks: true, neighbourWaters: true }];
        const caps = Float64Array.from({ length: problem.weekCount }, (_, w) =>
          w === awayWeek || w === awayWeek + 1 ? 0 : months[Math.floor(w / 4.35) % 12]!,
        );
        const own = { ...problem, context: { ...problem.context, away }, capMinutesByWeek: caps };
        const sowings = checked(own, plan(own));
        const found = independentCheck(own, sowings).filter((code) => !code.startsWith('servings'));
        expect(found).toEqual([]);
      },
    ),
    { numRuns: 12 },
  );
});

it('no kind that gives only leaves for tonight is offered where somebody comes by twice a week', () => {
  const seldom = { ...problem, ground: problem.ground.map((g) => ({ ...g, visitsPerWeek: 2 })) };
  const offered = (own: PlanningProblem): Set<string> =>
    new Set(makeCandidates(own, scenarios, () => {}).map((c) => c.plan.kind.id));
  expect(offered(problem)).toContain('lettuce-leaf');
  expect(offered(seldom)).not.toContain('lettuce-leaf');
  expect(offered(seldom)).toContain('kale');
});
