/**
 * Day-degrees of one day between a base and an optimum, single sine with horizontal cut-off (Allen 1976; Zalom et al.
 * 1983). The general methods for every cut-off are in climate/degree-days; this is the one that growth uses.
 *
 *   M mean, A half range: excess(x) = degree-days above x;  D = excess(base) − excess(optimum)
 */
function excessAboveC(meanC: number, amplitudeC: number, thresholdC: number): number {
  const gap = thresholdC - meanC;
  if (gap <= -amplitudeC) return -gap;
  if (gap >= amplitudeC) return 0;
  const sine = gap / amplitudeC;
  const angle = Math.asin(sine);
  return (-gap * (Math.PI / 2 - angle) + amplitudeC * Math.sqrt(1 - sine * sine)) / Math.PI;
}

export function sineDayDegreesC(tminC: number, tmaxC: number, baseC: number, optimumC: number): number {
  const mean = (tminC + tmaxC) / 2;
  const amplitude = Math.max((tmaxC - tminC) / 2, 1e-6);
  return excessAboveC(mean, amplitude, baseC) - excessAboveC(mean, amplitude, optimumC);
}
