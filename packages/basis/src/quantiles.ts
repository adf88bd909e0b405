import { invariant } from './invariant.ts';

/** A distribution over members in three numbers. Percentiles are type 6 (Weibull): position p·(n + 1). */
export interface Band {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Type 6 (Weibull) quantile of values that are already in rising order. */
export function quantileOfSorted(sorted: ArrayLike<number>, prob: number): number {
  const n = sorted.length;
  invariant(n > 0, 'a quantile needs at least one value');
  const position = prob * (n + 1) - 1;
  if (position <= 0) return sorted[0]!;
  if (position >= n - 1) return sorted[n - 1]!;
  const below = Math.floor(position);
  const low = sorted[below]!;
  return low + (position - below) * (sorted[below + 1]! - low);
}

export function bandOf(values: Iterable<number>): Band {
  const sorted = Float64Array.from(values).sort();
  return {
    p10: quantileOfSorted(sorted, 0.1),
    p50: quantileOfSorted(sorted, 0.5),
    p90: quantileOfSorted(sorted, 0.9),
  };
}

export function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return values.length === 0 ? 0 : sum / values.length;
}
