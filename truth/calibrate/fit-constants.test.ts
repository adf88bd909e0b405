import { expect, test } from 'vitest';
import { constantId, judgedConstant, priorSd } from './constant.ts';
import { fitConstants } from './fit-constants.ts';
import { fitLines } from './fit-text.ts';
import type { CalibrationProblem } from './problem.ts';
import { proposedTables } from './proposal.ts';

const beet = judgedConstant('kind:beetroot', 'harvest.roots.start-days');
const full = judgedConstant('kind:beetroot', 'harvest.roots.full-days');

/** Answers that follow the constant itself, so that what a fit should find is known without the engine. */
function problem(truths: readonly number[], sd: number): CalibrationProblem {
  return {
    name: 'made up for this test',
    about: '',
    constants: [beet],
    observations: truths.map((expected, i) => ({
      id: `row ${i}`,
      expected,
      sd,
      source: 'invented for this test',
    })),
    predict: (kindOf) => truths.map((_, i) => kindOf('beetroot').harvests[0]!.startDays * (1 + i / 10)),
  };
}
const rowsAt = (value: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => value * (1 + i / 10));

test('sharp observations win over the prior', () => {
  const truth = beet.value + 0.5 * priorSd(beet);
  const found = fitConstants(problem(rowsAt(truth, 5), 0.01));
  expect(found.fitted[0]!.value).toBeCloseTo(truth, 1);
  expect(found.misfitAfter).toBeLessThan(found.misfitBefore / 20);
  expect(found.fitted[0]!.evidence).toHaveLength(5);
});

test('vague observations leave the constant near its prior', () => {
  const truth = beet.value + priorSd(beet);
  const found = fitConstants(problem(rowsAt(truth, 3), 20 * priorSd(beet)));
  expect(Math.abs(found.fitted[0]!.value - beet.value)).toBeLessThan(0.2 * priorSd(beet));
});

test('a prior weighs as much as one observation of its own spread', () => {
  const truth = beet.value + priorSd(beet);
  const alike: CalibrationProblem = {
    ...problem([truth, truth], Math.SQRT2 * priorSd(beet)),
    predict: (kindOf) => [0, 1].map(() => kindOf('beetroot').harvests[0]!.startDays),
  };
  expect(fitConstants(alike).fitted[0]!.value).toBeCloseTo(beet.value + priorSd(beet) / 2, 1);
});

test('it never leaves the range of the table', () => {
  const found = fitConstants(problem(rowsAt(beet.high * 2, 4), 0.01));
  expect(found.fitted[0]!.value).toBeLessThanOrEqual(beet.high);
  expect(found.fitted[0]!.value).toBeGreaterThan(beet.high - 0.01 * (beet.high - beet.low));
});

test('nothing is tuned to a single row, and a constant that nothing responds to stays', () => {
  const single = fitConstants({ ...problem(rowsAt(beet.value * 1.1, 1), 0.01), constants: [beet, full] });
  expect(single.fitted).toEqual([]);
  expect(single.leftAlone.map(({ evidence }) => evidence.length)).toEqual([1, 0]);
  expect(single.misfitAfter).toBe(single.misfitBefore);
});

test('only judged rows with a range are fitted, and the sentence says why not', () => {
  expect(() => judgedConstant('crop:parsnip', 'emergence-sum-c-days')).toThrow(/measured, not judged/);
  expect(() => judgedConstant('kind:woad', 'start-days')).toThrow(/no table has this row/);
});

test('a proposal changes the fitted row alone, keeps its range and says on what evidence', () => {
  const found = fitConstants(problem(rowsAt(beet.value + priorSd(beet), 5), 0.01));
  const tables = proposedTables([found]);
  expect([...tables.keys()]).toEqual(['packages/growing/tables/kinds-roots.csv']);
  const changed = [...tables.values()][0]!.split('\n').filter((line) => line.includes('calibrated (made up'));
  expect(changed).toHaveLength(1);
  expect(changed[0]).toMatch(
    new RegExp(`^${constantId(beet).replace(' ', ',')},[\\d.]+,${beet.low},${beet.high},days,`),
  );
  expect(changed[0]).toContain('on 5 rows');
  expect(fitLines(found).join('\n')).toContain(`${constantId(beet)}: `);
});
