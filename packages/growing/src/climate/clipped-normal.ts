/**
 * The mean of a normal variable held between two bounds, and the location that gives a wanted mean:
 *   E = lo Φ(a) + hi (1 − Φ(b)) + μ (Φ(b) − Φ(a)) − σ (φ(b) − φ(a)),   a = (lo − μ)/σ, b = (hi − μ)/σ
 * Φ after Abramowitz & Stegun 26.2.17 (error under 7.5·10⁻⁸).
 */
const density = (x: number): number => Math.exp(-0.5 * x * x) * 0.3989422804014327;

export function normalShareBelow(x: number): number {
  if (x < 0) return 1 - normalShareBelow(-x);
  if (x > 9) return 1;
  const t = 1 / (1 + 0.2316419 * x);
  const tail =
    density(x) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - tail;
}

export function clippedNormalMean(location: number, sd: number, low: number, high: number): number {
  const a = (low - location) / sd;
  const belowLow = normalShareBelow(a);
  if (high === Number.POSITIVE_INFINITY) {
    return low * belowLow + location * (1 - belowLow) + sd * density(a);
  }
  const b = (high - location) / sd;
  const belowHigh = normalShareBelow(b);
  return (
    low * belowLow +
    high * (1 - belowHigh) +
    location * (belowHigh - belowLow) -
    sd * (density(b) - density(a))
  );
}

/** Location whose clipped mean is the wanted one; a wanted mean at or beyond a bound gives the nearest possible. */
export function locationForClippedMean(wanted: number, sd: number, low: number, high: number): number {
  let least = Math.min(wanted, low) - 6 * sd;
  let most = (high === Number.POSITIVE_INFINITY ? wanted : Math.max(wanted, high)) + 6 * sd;
  for (let round = 0; round < 40; round++) {
    const middle = (least + most) / 2;
    if (clippedNormalMean(middle, sd, low, high) < wanted) least = middle;
    else most = middle;
  }
  return (least + most) / 2;
}
