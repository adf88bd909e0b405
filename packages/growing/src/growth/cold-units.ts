/**
 * Cold units of one day: a triangle over the daily mean temperature (Atherton, Craigon & Basher 1990 for carrot; the
 * same form serves the other crops with their own corners). At the optimum a day counts `optimum − base` °C·d.
 *
 * | symbol | meaning | unit |
 * | base, maximum | no effect outside | °C |
 * | optimum | full effect | °C |
 */
export interface ColdTriangle {
  readonly baseC: number;
  readonly optimumC: number;
  readonly maximumC: number;
}

export function coldUnitsCDays(triangle: ColdTriangle, meanC: number): number {
  const { baseC, optimumC, maximumC } = triangle;
  if (meanC <= baseC || meanC >= maximumC) return 0;
  const full = optimumC - baseC;
  return meanC <= optimumC ? meanC - baseC : (full * (maximumC - meanC)) / (maximumC - optimumC);
}
