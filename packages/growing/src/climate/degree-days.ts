/**
 * Degree-days of one day from its minimum and maximum (Allen 1976; Zalom et al. 1983, UC leaflet 21373).
 * Excess(x) = what the day's curve holds above x. Horizontal cut-off: excess(lower) − excess(upper); intermediate:
 * − 2·excess(upper); vertical: nothing counts while it is warmer than the upper threshold.
 *
 *   sine      excess(x) = [(M − x)(π/2 − θ) + α cos θ]/π   θ = asin((x − M)/α)  M mean, α half the range
 *   triangle  excess(x) = (Tmax − x)² / (2 (Tmax − Tmin))   where x is crossed
 *
 * Double methods take each half-day with its own minimum: this day's, then the next day's. Any one unit of
 * temperature may be used. Plain max(0, mean − base) loses 1–15 % against the sine.
 */
export type DayCurve = 'sine' | 'triangle';
export type CutOff = 'horizontal' | 'vertical' | 'intermediate';

/** Excess above x over the day and the share of the day that is above x. */
function above(curve: DayCurve, tmin: number, tmax: number, x: number): { excess: number; share: number } {
  if (tmin >= x) return { excess: (tmax + tmin) / 2 - x, share: 1 };
  if (tmax <= x) return { excess: 0, share: 0 };
  if (curve === 'triangle') {
    return { excess: ((tmax - x) * (tmax - x)) / (2 * (tmax - tmin)), share: (tmax - x) / (tmax - tmin) };
  }
  const mean = (tmax + tmin) / 2;
  const half = (tmax - tmin) / 2;
  const sine = (x - mean) / half;
  const theta = Math.asin(sine);
  const share = (Math.PI / 2 - theta) / Math.PI;
  return { excess: (mean - x) * share + (half * Math.sqrt(1 - sine * sine)) / Math.PI, share };
}

export interface DegreeDayThresholds {
  readonly lower: number;
  /** Null where there is no upper threshold. */
  readonly upper: number | null;
}

export function singleDegreeDays(
  curve: DayCurve,
  tmin: number,
  tmax: number,
  thresholds: DegreeDayThresholds,
  cutOff: CutOff = 'horizontal',
): number {
  const { excess: total } = above(curve, tmin, tmax, thresholds.lower);
  if (thresholds.upper === null) return total;
  const over = above(curve, tmin, tmax, thresholds.upper);
  if (cutOff === 'vertical') return total - over.excess - (thresholds.upper - thresholds.lower) * over.share;
  return Math.max(0, total - (cutOff === 'intermediate' ? 2 : 1) * over.excess);
}

export function doubleDegreeDays(
  curve: DayCurve,
  tmin: number,
  tmax: number,
  nextTmin: number,
  thresholds: DegreeDayThresholds,
  cutOff: CutOff = 'horizontal',
): number {
  const first = singleDegreeDays(curve, tmin, tmax, thresholds, cutOff);
  const second = singleDegreeDays(curve, Math.min(nextTmin, tmax), tmax, thresholds, cutOff);
  return (first + second) / 2;
}
