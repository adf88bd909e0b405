import { mondayOf } from '@twelvemonth/basis';
import { runSowing } from '@twelvemonth/growing';
import { describe, expect, it } from 'vitest';
import { smallProblem } from './fixture/small-problem.ts';
import { type CheckedSowing, independentCheck } from './independent-check.ts';
import { practisedGardener } from './rivals/practised-gardener.ts';

const problem = smallProblem(52);
const good: readonly CheckedSowing[] = practisedGardener(problem).placed.map((sowing) => ({
  ...sowing,
  runs: problem.context.members.map((member) =>
    runSowing(problem.context, member, sowing.plan, problem.stores),
  ),
}));
const begins = (codes: readonly string[]): string[] => codes.map((code) => code.split(':')[0]!);
const freshAt = good.findIndex((s) => s.plan.id !== 'standing-leek');
const change = (at: number, part: Partial<CheckedSowing>): CheckedSowing[] =>
  good.map((sowing, i) => (i === at ? { ...sowing, ...part } : sowing));

describe('the independent check', () => {
  it('finds nothing in a plan that adds up', () => {
    expect(good.length).toBeGreaterThan(20);
    expect(independentCheck(problem, good)).toEqual([]);
  });

  it('finds ground given twice, with week and numbers', () => {
    const sowing = good[freshAt]!;
    const extra = { ...sowing, plan: { ...sowing.plan, id: 'planted' }, stripsCount: 80 };
    const found = independentCheck(problem, [...good, extra]);
    expect(begins(found)).toContain('ground-over');
    expect(found.find((code) => code.startsWith('ground-over'))).toMatch(
      /^ground-over:open:\d{4}-\d\d-\d\d:\d+\/72$/,
    );
  });

  it('finds a bench over-full', () => {
    const fromWeek = problem.fromWeek + 2;
    const bench = [{ bench: 0, fromWeek, toWeek: fromWeek + 1, m2: 2.5 }];
    expect(begins(independentCheck(problem, change(freshAt, { bench })))).toContain('bench-over');
  });

  it('finds more plants than the spacing or the wish allows', () => {
    const { plan } = good[freshAt]!;
    const dense = independentCheck(
      problem,
      change(freshAt, { plan: { ...plan, plantsCount: plan.plantsCount * 2 }, runs: [] }),
    );
    expect(begins(dense)).toContain('plants-too-dense');
    const capped = { ...problem, limits: [{ kind: plan.kind.id, leastPlants: 0, mostPlants: 1 }] };
    expect(begins(independentCheck(capped, good))).toContain('plants-over');
  });

  it('finds what stands dropped, or cleared on a day that was not on offer', () => {
    const at = good.findIndex((s) => s.plan.id === 'standing-leek');
    const without = good.filter((_, i) => i !== at);
    expect(independentCheck(problem, without)).toEqual(['standing-count:standing-leek:0/1']);
    const clearDay = mondayOf(problem.fromWeek + 4);
    const early = change(at, { plan: { ...good[at]!.plan, clearDay }, runs: [] });
    expect(begins(independentCheck(problem, early))).toEqual(['standing-cleared']);
  });

  it('finds servings that the sowing does not give', () => {
    const at = good.findIndex(({ runs }) => (runs?.[0]?.lots.length ?? 0) > 0);
    const run = good[at]!.runs![0]!;
    const lots = run.lots.map((lot) => ({ ...lot, servings: lot.servings + 1 }));
    const found = independentCheck(problem, change(at, { runs: [{ ...run, lots }] }));
    expect(begins(found)).toEqual(['servings']);
  });

  it('finds a strip of a real bed given twice', () => {
    const [a, b] = [good[freshAt]!, good[freshAt]!];
    const bed = problem.ground[0]!.beds[0]!;
    const placements = [{ booking: 'x', bed, stripsFrom: 1, stripsCount: 1, follows: [] }];
    const two = [a, { ...b, plan: { ...b.plan, id: 'other' } }].map((s) => ({
      ...s,
      stripsCount: 1,
      placements,
    }));
    expect(begins(independentCheck(problem, [...good.filter((s) => s !== a), ...two]))).toContain(
      'strip-twice',
    );
  });
});
