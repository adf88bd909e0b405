/**
 * What one day of cold counts for running to seed, from the daily mean temperature T.
 *
 *   counted   T − base                                   base < T ≤ optimum     (Atherton, Craigon & Basher 1990:
 *             (optimum − base)(maximum − T)/(maximum − optimum)   T < maximum     a triangle, fitted to carrot)
 *   undone    k · (T − undoAbove)                         T > undoAbove         (devernalisation)
 *
 * | symbol | meaning | unit |
 * | base, maximum | no effect outside | °C |
 * | optimum | full effect: a day counts `optimum − base` | °C |
 * | undoAbove | daily mean above which warmth takes cold back; leek 22 (Brewster 2008) | °C |
 * | k | cold units that a degree above it takes back in a day | °C·d per °C·d |
 *
 * Warm days and cold nights need nothing more: in a radish trial 24 °C for 8 hours, or 30 °C for 6, at 6 °C otherwise
 * took 30–40 % of the effect of the cold; the triangle at the daily mean of 12 °C takes 32 % (truth/growth).
 */
import type { ColdResponse } from '../crops/crop-type.ts';

export type ColdTriangle = Pick<ColdResponse, 'baseC' | 'optimumC' | 'maximumC'>;

export function coldUnitsCDays(triangle: ColdTriangle, meanC: number): number {
  const { baseC, optimumC, maximumC } = triangle;
  if (meanC <= baseC || meanC >= maximumC) return 0;
  const full = optimumC - baseC;
  return meanC <= optimumC ? meanC - baseC : (full * (maximumC - meanC)) / (maximumC - optimumC);
}

/** Cold counted less cold undone, °C·d; below nothing on warm days. */
export function coldChangeCDays(cold: ColdResponse, meanC: number): number {
  if (meanC > cold.undoAboveC) return -cold.undoPerC * (meanC - cold.undoAboveC);
  return coldUnitsCDays(cold, meanC);
}
