/**
 * Weather coverage: each year is hidden in turn, with every member that shares a day with it; the band from the other
 * years' tenth to ninetieth percentile (type 6) either holds the hidden year's outcome or not. A forecast that knows
 * the weather's spread holds four in five. Outcomes of one year hang together (a cold spring is late for everything),
 * so the interval of the share takes years as clusters: ratio estimator with the between-cluster variance and
 * Student's t for so many clusters (Cochran 1977, Sampling Techniques, ch. 9).
 */
import { quantileOfSorted } from '../../packages/basis/src/index.ts';
import type { OutcomeCase } from './outcomes.ts';
import { runYears, type WeatherYear } from './weather-years.ts';

/** One hidden outcome: whether the band of the other years held it. */
export interface Held {
  readonly year: number;
  readonly group: OutcomeCase['group'];
  readonly name: string;
  readonly held: boolean;
}

/** A band needs a few years on either side of its tenths. */
export const fewestMembers = 9;

/** `drawn`: forecast from these members in place of the record's other years. */
export function heldOutcomes(
  years: readonly WeatherYear[],
  cases: readonly OutcomeCase[],
  drawn: readonly WeatherYear[] | null = null,
): Held[] {
  return cases.flatMap((each) => {
    // What never comes lies after everything that does.
    const valueIn = (year: WeatherYear): number => each.valueIn(year) ?? Number.POSITIVE_INFINITY;
    const values = years.map((year) => ({ year: year.year, value: valueIn(year) }));
    const members = drawn?.map(valueIn).sort((a, b) => a - b);
    return values.flatMap(({ year, value: outcome }): Held[] => {
      const others =
        members ??
        values
          .filter((other) => Math.abs(other.year - year) >= runYears)
          .map((other) => other.value)
          .sort((a, b) => a - b);
      if (others.length < fewestMembers) return [];
      const held = outcome >= quantileOfSorted(others, 0.1) && outcome <= quantileOfSorted(others, 0.9);
      return [{ year, group: each.group, name: each.name, held }];
    });
  });
}

export interface Coverage {
  readonly outcomes: number;
  readonly years: number;
  readonly share: number;
  /** 95 % interval, clustered by year. */
  readonly low: number;
  readonly high: number;
}

export function coverageOf(held: readonly Held[]): Coverage {
  const byYear = new Map<number, { n: number; held: number }>();
  for (const { year, held: was } of held) {
    const cluster = byYear.get(year) ?? { n: 0, held: 0 };
    byYear.set(year, { n: cluster.n + 1, held: cluster.held + (was ? 1 : 0) });
  }
  const clusters = [...byYear.values()];
  const outcomes = held.length;
  const share = clusters.reduce((sum, c) => sum + c.held, 0) / outcomes;
  const squares = clusters.reduce((sum, c) => sum + (c.held - share * c.n) ** 2, 0);
  const error = Math.sqrt((squares * clusters.length) / (clusters.length - 1)) / outcomes;
  const half = studentT975(clusters.length - 1) * error;
  return {
    outcomes,
    years: clusters.length,
    share,
    low: Math.max(0, share - half),
    high: Math.min(1, share + half),
  };
}

/** 97.5 % point of Student's t, Cornish–Fisher expansion (Abramowitz & Stegun 26.7.5), good to 0.001 from 8 on. */
export function studentT975(freedom: number): number {
  const z = 1.959964;
  const g1 = (z ** 3 + z) / 4;
  const g2 = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const g3 = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  return z + g1 / freedom + g2 / freedom ** 2 + g3 / freedom ** 3;
}

/** Passes when the interval holds four in five and the share itself is at least seven in ten. */
export const passes = (coverage: Coverage): boolean =>
  coverage.low <= 0.8 && coverage.high >= 0.8 && coverage.share >= 0.7;
