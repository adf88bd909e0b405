import { describe, expect, it } from 'vitest';
import type { Appetite, Eaten } from '../packages/growing/src/index.ts';
import { comparedRoleWeeks, fareIn, missingInBound } from './compared-weeks.ts';
import type { CaseFigures, Measured, RivalMeasured } from './figures.ts';
import { changedSince, madeWithNow } from './hashes.ts';
import { readWishes, WishRefused } from './options.ts';
import { compareSmall, smallFiguresOf } from './small-set.ts';
import { bestHalfOf, middleOf, noMore, summaryOf } from './summary.ts';
import { pageLines } from './tables.ts';

const weekCount = 70;
const weeks = (value: number): Float64Array => new Float64Array(weekCount).fill(value);
const appetite: Appetite = {
  fromWeek: 0,
  weekCount,
  roles: ['onions', 'leeks'],
  garden: [weeks(4), weeks(2)],
  bought: [weeks(0), weeks(2)],
  kindCap: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
};
const eatenOf = (onions: number, leeks: number): Eaten => {
  const rows = [weeks(onions), weeks(leeks)];
  return { offered: rows, eaten: rows, fromStock: rows, stockLeft: rows, wasted: rows };
};

describe('compared role-weeks', () => {
  it('are weeks 13 to 64, all of them where nobody says what the relaxation eats', () => {
    const compared = comparedRoleWeeks(appetite, null);
    expect(compared[0]!.indexOf(true)).toBe(13);
    expect(compared[0]!.lastIndexOf(true)).toBe(64);
    expect(compared[1]!.filter(Boolean)).toHaveLength(52);
  });

  it('leave out where even the relaxation, with what is bought, eats under four fifths', () => {
    const onions = weeks(1);
    onions[20] = 0.79;
    onions[21] = 0.81;
    // Half of the leeks is bought: 2 + 0.55 · 2 of 4 is lean, 2 + 0.65 · 2 is not.
    const leeks = weeks(1);
    leeks[20] = 0.55;
    leeks[21] = 0.65;
    const compared = comparedRoleWeeks(appetite, [onions, leeks]);
    expect([compared[0]![20], compared[0]![21], compared[1]![20], compared[1]![21]]).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect(missingInBound(appetite, [onions, leeks], compared)).toBeCloseTo(0.19 * 4 + 0.35 * 2, 9);
  });

  it('are counted for lean weeks and servings missing, mean over members', () => {
    const compared = appetite.roles.map(() => Array.from({ length: weekCount }, (_, w) => w === 20));
    // First member: 3 of 4 onions (lean, 1 missing), all leeks. Second: all onions, no leeks (lean, 2 missing).
    const fare = fareIn(appetite, [eatenOf(3, 2), eatenOf(4, 0)], compared);
    expect(fare).toEqual({ leanWeeks: 1, servingsMissing: 1.5 });
  });
});

const measured = (lean: number, missing: number, wasted: number): Measured => ({
  leanWeeks: lean,
  servingsMissing: missing,
  servingsEaten: 100,
  wasted,
  groundIdleShare: 0.2,
  hours: 10,
  sowings: 20,
  leanWeeksAll: lean,
  servingsMissingAll: missing,
  kgPerM2Year: 2.5,
});
const rival = (lean: number, missing: number, strawMan = false): RivalMeasured => ({
  ...measured(lean, missing, 100),
  strawMan,
});
function caseOf(name: string, plan: Measured, calendar: RivalMeasured): CaseFigures {
  const ratio = (other: Measured) => ({
    leanWeeks: other.leanWeeks === 0 ? null : plan.leanWeeks / other.leanWeeks,
    servingsMissing: other.servingsMissing === 0 ? null : plan.servingsMissing / other.servingsMissing,
    wasted: plan.wasted / other.wasted,
  });
  const practised = rival(100, 200);
  return {
    name,
    groundM2: 100,
    shortOfGround: false,
    plan,
    calendar,
    practised,
    ratios: { calendar: ratio(calendar), practised: ratio(practised) },
    leftOutRoleWeeks: null,
    boundServingsMissing: null,
    gapShare: 0.05,
    stoppedBecause: 'gap',
    candidates: 10,
    seconds: 1,
    violations: [],
  };
}

describe('the cases together', () => {
  it('have a median, and a median of the better half rounded up', () => {
    expect(middleOf([3, 1, 2])).toBe(2);
    expect(bestHalfOf([5, 1, 4, 2, 3])).toBe(2);
    expect(bestHalfOf([4, 1, 3, 2])).toBe(1.5);
    expect(middleOf([])).toBeNull();
  });

  it('meet or miss the targets, with straw men and without', () => {
    const cases = [
      caseOf('a', measured(20, 40, 90), rival(100, 200)),
      caseOf('b', measured(30, 60, 90), rival(100, 200)),
      caseOf('c', measured(60, 120, 90), rival(100, 200, true)),
    ];
    const [lean] = summaryOf(cases).ratios;
    expect(lean).toMatchObject({ median: 0.3, bestHalf: 0.25, medianOfOpponents: 0.25, met: true });
    expect(summaryOf(cases.slice(1)).ratios[0]!.met).toBe(false);
    expect(summaryOf(cases).strawMen).toHaveLength(1);
  });

  it('name every case that is worse than a rival or wastes more', () => {
    const cases = [
      caseOf('a', measured(120, 40, 150), rival(100, 0)),
      caseOf('b', measured(1, 1, 1), rival(9, 9)),
    ];
    const { worseThanARival, wastesMore, ratios } = summaryOf(cases);
    expect(worseThanARival).toEqual([
      'a: leanWeeks 120 > calendar 100',
      'a: servingsMissing 40 > calendar 0',
      'a: leanWeeks 120 > practised 100',
    ]);
    expect(wastesMore).toEqual(['a: wasted 150 > calendar 100', 'a: wasted 150 > practised 100']);
    expect(ratios[1]!.casesCount).toBe(1);
  });

  it('allow the error of a mean, no more', () => {
    expect(noMore(100.9, 100)).toBe(true);
    expect(noMore(101.1, 100)).toBe(false);
    expect(noMore(0.4, 0)).toBe(true);
    expect(noMore(0.6, 0)).toBe(false);
  });

  it('stand in the page with their hashes and what could not be planned', () => {
    const cases = [caseOf('a', measured(20, 40, 90), rival(100, 200))];
    const failed = [{ name: 'broken', reason: 'no climate' }];
    const settings = { effort: 1, memberCount: 2, checkMemberCount: 3, solver: true };
    const run = { date: '2026-11-25', settings, madeWith: madeWithNow(), cases, failed };
    const page = pageLines(run, summaryOf(cases)).join('\n');
    expect(page).toContain('- broken: no climate');
    expect(page).toContain(run.madeWith.tables);
    expect(page).toContain('| a | 100 | 0.20 | 0.20 | 0.90 |');
  });
});

describe('the small set', () => {
  const found = caseOf('a', measured(20, 40, 90), rival(100, 200));
  const agreed = { a: smallFiguresOf(found) };

  it('holds when nothing moved, and when a plan got better, which is said', () => {
    expect(compareSmall([found], agreed)).toEqual({ failures: [], notes: [] });
    const better = compareSmall([caseOf('a', measured(10, 20, 90), rival(100, 200))], agreed);
    expect(better.failures).toEqual([]);
    expect(better.notes).toHaveLength(2);
  });

  it('fails when the plan got worse, when the rivals came nearer, when the check finds something', () => {
    const worse = compareSmall([caseOf('a', measured(24, 40, 90), rival(100, 200))], agreed);
    expect(worse.failures.join()).toContain('leanWeeks 24, agreed 20');
    const nearer = compareSmall([caseOf('a', measured(20, 40, 90), rival(60, 200))], agreed);
    expect(nearer.failures).toEqual(['a: leanWeeks against calendar 0.333, agreed 0.2']);
    expect(compareSmall([{ ...found, violations: ['x'] }], agreed).failures).toEqual(['a: x']);
    expect(compareSmall([{ ...found, gapShare: null }], agreed).failures).toHaveLength(1);
  });

  it('fails when a case was not run or nobody agreed to it', () => {
    expect(compareSmall([], agreed).failures).toEqual(['a: agreed to, and not run']);
    expect(compareSmall([found], {}).failures).toHaveLength(1);
  });
});

describe('wishes', () => {
  it('take a case by name, and suggest the nearest', () => {
    expect(readWishes(['--case', 'hot-plain', '--effort', '3'])).toMatchObject({
      names: ['hot-plain'],
      settings: { effort: 3 },
    });
    expect(() => readWishes(['--case', 'hotplain'])).toThrow(/did you mean hot-plain/);
  });

  it.each([[['--effort', '-1']], [['--members', '0']], [['--date', '2026-02-30']], [['--nonsense']]])(
    'refuse %j with a sentence',
    (args) => {
      expect(() => readWishes(args)).toThrow(WishRefused);
    },
  );

  it('do not let a part of the table be written', () => {
    expect(() => readWishes(['--update', '--case', 'hot-plain'])).toThrow(WishRefused);
    expect(() => readWishes(['--update', '--small', '--members', '5'])).toThrow(WishRefused);
  });
});

it('hashes name the part that changed', () => {
  const now = madeWithNow();
  expect(changedSince(now, now)).toEqual([]);
  expect(changedSince({ ...now, tables: 'other' }, now)).toEqual(['tables']);
});
