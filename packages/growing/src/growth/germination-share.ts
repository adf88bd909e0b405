/**
 * How much of the seed that can germinate makes a seedling at the temperature it meets. Each seed has a coldest and a
 * warmest temperature of its own; across a lot these limits are spread out (Ellis, Covell, Roberts & Summerfield 1986;
 * Brewster 2008, eqn 4.9: onion ceilings spread by 7.6 °C). They are spread evenly here where the papers have a normal
 * curve, so that the share is two straight slopes that a table can show and a hand can check:
 *
 *   g(T) = min(1, (T − c0)/(c1 − c0)) · min(1, (w0 − T)/(w0 − w1)),   0 at and below c0 and at and above w0
 *
 * | symbol | meaning | unit |
 * | c0, c1 | no seedlings at and below; all from | °C |
 * | w1, w0 | all up to; no seedlings at and above | °C |
 * | g | share of what comes up at the best temperature | 1 |
 * Range −5…45 °C. Known weakness: a warm spell is forgotten as soon as it is over (no lasting heat dormancy), and
 * seed that is stopped by cold is lost, where some of it only waits.
 * Over a day: seedbed-day.ts.
 */
export interface GerminationTraits {
  readonly germinationColdNoneC: number;
  readonly germinationColdFullC: number;
  readonly germinationWarmFullC: number;
  readonly germinationWarmNoneC: number;
}

/** Share at a steady temperature, 0–1, against the best temperature. */
export function germinatingShare(traits: GerminationTraits, soilC: number): number {
  const { germinationColdNoneC: coldNoneC, germinationColdFullC: coldFullC } = traits;
  const { germinationWarmFullC: warmFullC, germinationWarmNoneC: warmNoneC } = traits;
  if (soilC <= coldNoneC || soilC >= warmNoneC) return 0;
  const cold = soilC >= coldFullC ? 1 : (soilC - coldNoneC) / (coldFullC - coldNoneC);
  const warm = soilC <= warmFullC ? 1 : (warmNoneC - soilC) / (warmNoneC - warmFullC);
  return cold * warm;
}
