import { kindById } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import type { Candidate, MinuteSpan, PlanningProblem } from '../problem.ts';
import { smallProblem } from '../verdict/fixture/small-problem.ts';
import { programBuilder } from './program-builder.ts';
import { workRows } from './work-rows.ts';

const base = smallProblem(52);
const candidate = (work: readonly MinuteSpan[], group: string | null = null): Candidate => ({
  plan: { ...base.standing[0]!.plan, id: 'x', kind: kindById('kale')! },
  ground: 0,
  stripsPerBatch: 1,
  groundFromWeek: base.fromWeek,
  groundToWeek: base.fromWeek + 4,
  bench: [],
  startWeek: base.fromWeek,
  minutes: 0,
  work,
  mostBatches: 10,
  group,
  lots: [],
});
const span = (from: number, to: number, minutes: number): MinuteSpan => ({
  fromWeek: base.fromWeek + from,
  toWeek: base.fromWeek + to,
  minutes,
});

/** Minutes of each week, and what is over comfort and beyond the cap, that the rows ask for with so many batches. */
function reckoned(problem: PlanningProblem, candidates: readonly Candidate[], batches: readonly number[]) {
  const builder = programBuilder();
  const columns = candidates.map(() => builder.column(0, 0, 10, true));
  workRows(builder, problem, candidates, columns);
  const program = builder.build();
  const rows = Array.from({ length: program.rowLower.length }, () => new Map<number, number>());
  for (let c = 0; c < program.colCost.length; c++)
    for (let e = program.starts[c]!; e < program.starts[c + 1]!; e++)
      rows[program.indices[e]!]!.set(c, program.values[e]!);
  const value = new Map(columns.map((column, i) => [column, batches[i]!]));
  const taken: number[] = [];
  const slack: number[] = [];
  rows.forEach((row, r) => {
    const unknown = [...row].filter(([column]) => !value.has(column));
    const known = [...row].reduce((sum, [column, v]) => sum + v * (value.get(column) ?? 0), 0);
    if (program.rowLower[r] === 0 && program.rowUpper[r] === 0) {
      expect(unknown.length).toBe(1);
      value.set(unknown[0]![0], known / -unknown[0]![1]);
      taken.push(known / -unknown[0]![1]);
      slack.push(program.colUpper[unknown[0]![0]]! - taken.at(-1)!);
      return;
    }
    const room = unknown.reduce((sum, [column]) => sum + program.colUpper[column]!, 0);
    slack.push(program.rowUpper[r]! + room - known);
  });
  return { taken, slack };
}

const weeks = (...minutes: number[]): Float64Array =>
  Float64Array.from({ length: base.weekCount }, (_, w) => minutes[w] ?? Number.POSITIVE_INFINITY);

test('minutes add up week by week, over spans that begin, end and change', () => {
  const candidates = [candidate([span(0, 1, 30), span(1, 3, 5)]), candidate([span(2, 4, 8)])];
  const always = new Float64Array(base.weekCount).fill(100);
  const { taken } = reckoned({ ...base, capMinutesByWeek: always }, candidates, [2, 3]);
  expect(taken.slice(0, 6)).toEqual([60, 10, 34, 24, 0, 0]);
  expect(taken.slice(6).every((minutes) => minutes === 0)).toBe(true);
});

test('a stretch with a limit takes up the spans that run into it', () => {
  const caps = new Float64Array(base.weekCount).fill(Number.POSITIVE_INFINITY);
  caps.set([100, 100], 2);
  const { taken } = reckoned({ ...base, capMinutesByWeek: caps }, [candidate([span(0, 3, 20)])], [2]);
  expect(taken).toEqual([40, 0]);
});

test('room is left up to the cap and not beyond it', () => {
  const sown = candidate([span(0, 1, 50)]);
  const problem = { ...base, capMinutesByWeek: weeks(100) };
  expect(Math.min(...reckoned(problem, [sown], [2]).slack)).toBe(0);
  expect(Math.min(...reckoned(problem, [sown], [3]).slack)).toBe(-50);
});

test('what stands may ask for more than there is, and then nothing is added to it', () => {
  const sown = candidate([span(0, 1, 5)]);
  const problem = { ...base, capMinutesByWeek: weeks(100) };
  const laborious = [candidate([span(0, 1, 140)], 'leek'), candidate([span(0, 1, 120)], 'leek')];
  expect(Math.min(...reckoned(problem, [...laborious, sown], [1, 0, 0]).slack)).toBe(0);
  expect(Math.min(...reckoned(problem, [...laborious, sown], [1, 0, 1]).slack)).toBeLessThan(0);
  const light = [candidate([span(0, 1, 60)], 'leek'), candidate([], 'leek')];
  expect(Math.min(...reckoned(problem, [...light, sown], [1, 0, 8]).slack)).toBe(0);
  expect(Math.min(...reckoned(problem, [...light, sown], [1, 0, 9]).slack)).toBe(-5);
  expect(Math.min(...reckoned(problem, [...light, sown], [0, 1, 20]).slack)).toBe(0);
});

test('a household that set no limit has no rows', () => {
  const builder = programBuilder();
  workRows(builder, { ...base, capMinutesByWeek: null }, [candidate([span(0, 1, 50)])], [0]);
  expect(builder.columnCount).toBe(0);
});
