/**
 * Fits judged constants to observations: maximum a posteriori with normal errors and normal priors (the table's range
 * as 95 %), which is a least-squares problem with the priors as further observations (Tarantola 2005, Inverse Problem
 * Theory, ch. 3), solved by Levenberg–Marquardt (Marquardt 1963) within the table's range. Constants are scaled by
 * their prior's standard deviation. The members are the same in every run (common random numbers), so the same tables
 * give the same proposal.
 *
 * A constant that fewer than two observations respond to is left where it is: nothing is tuned to a single row.
 */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { kindsWith } from './changed-kinds.ts';
import { type Constant, priorSd } from './constant.ts';
import type { CalibrationProblem } from './problem.ts';

export interface FittedConstant {
  readonly constant: Constant;
  readonly value: number;
  /** Observations that move by a fiftieth of their standard deviation when the constant moves by its own. */
  readonly evidence: readonly string[];
}

export interface Fit {
  readonly problem: string;
  readonly fitted: readonly FittedConstant[];
  readonly leftAlone: readonly { readonly constant: Constant; readonly evidence: readonly string[] }[];
  /** Root mean square of (answer − expected)/sd over the observations. */
  readonly misfitBefore: number;
  readonly misfitAfter: number;
  readonly answers: readonly {
    readonly id: string;
    readonly expected: number;
    readonly before: number;
    readonly after: number;
  }[];
}

export const leastEvidence = 2;
const felt = 0.02;
const iterations = 12;

const misfit = (problem: CalibrationProblem, answers: readonly number[]): number => {
  const squares = problem.observations.map((o, i) => ((answers[i]! - o.expected) / o.sd) ** 2);
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
};

function evidenceFor(problem: CalibrationProblem, before: readonly number[], constant: Constant): string[] {
  const step = constant.value + priorSd(constant) <= constant.high ? priorSd(constant) : -priorSd(constant);
  const moved = problem.predict(kindsWith([constant], [constant.value + step]));
  return problem.observations.flatMap((o, i) =>
    Math.abs(moved[i]! - before[i]!) > felt * o.sd ? [o.id] : [],
  );
}

export function fitConstants(
  problem: CalibrationProblem,
  progress: (sentence: string) => void = () => {},
): Fit {
  const { observations } = problem;
  const before = problem.predict(kindsWith([], []));
  const weighed = problem.constants.map((constant) => ({
    constant,
    evidence: evidenceFor(problem, before, constant),
  }));
  const free = weighed.filter(({ evidence }) => evidence.length >= leastEvidence);
  const leftAlone = weighed.filter(({ evidence }) => evidence.length < leastEvidence);
  const constants = free.map(({ constant }) => constant);
  const valuesOf = (scaled: readonly number[]): number[] =>
    constants.map((c, i) => Math.min(c.high, Math.max(c.low, c.value + scaled[i]! * priorSd(c))));
  const known = new Map<string, readonly number[]>();
  const answersAt = (scaled: readonly number[]): readonly number[] => {
    const key = scaled.join();
    let answers = known.get(key);
    if (answers === undefined) {
      answers = problem.predict(kindsWith(constants, valuesOf(scaled)));
      known.set(key, answers);
      progress(`${problem.name}: ${known.size} runs, misfit ${misfit(problem, answers).toFixed(3)}`);
    }
    return answers;
  };
  const scaled = constants.length === 0 ? [] : solve(constants, observations, answersAt);
  const after = answersAt(scaled);
  return {
    problem: problem.name,
    fitted: free.map((each, i) => ({ ...each, value: valuesOf(scaled)[i]! })),
    leftAlone,
    misfitBefore: misfit(problem, before),
    misfitAfter: misfit(problem, after),
    answers: observations.map(({ id, expected }, i) => ({
      id,
      expected,
      before: before[i]!,
      after: after[i]!,
    })),
  };
}

function solve(
  constants: readonly Constant[],
  observations: CalibrationProblem['observations'],
  answersAt: (scaled: readonly number[]) => readonly number[],
): number[] {
  const count = observations.length;
  const all = count + constants.length;
  const data = {
    x: Array.from({ length: all }, (_, i) => i),
    y: [...observations.map((o) => o.expected / o.sd), ...constants.map(() => 0)],
  };
  const bound = (end: 'low' | 'high'): number[] => constants.map((c) => (c[end] - c.value) / priorSd(c));
  const { parameterValues } = levenbergMarquardt(
    data,
    (scaled) => {
      const answers = answersAt(scaled);
      return (i) => (i < count ? answers[i]! / observations[i]!.sd : scaled[i - count]!);
    },
    {
      initialValues: constants.map(() => 0),
      minValues: bound('low'),
      maxValues: bound('high'),
      gradientDifference: 0.2,
      centralDifference: true,
      damping: 0.1,
      maxIterations: iterations,
    },
  );
  return parameterValues;
}
