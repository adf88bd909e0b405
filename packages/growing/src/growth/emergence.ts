/**
 * Emergence by thermal time over a dent-shaped response (Soltani et al. 2006): from the base the rate rises in a
 * straight line (Bierhuizen & Wagenvoort 1974), stays level from the lower to the upper optimum, and falls in a
 * straight line to nothing at the ceiling. Half of the seed that comes up at all is up when the daily rates add to 1;
 * how much comes up is another matter: germination-share.ts.
 *
 *   r(T) = (T − Tb)/S · [Tb…To]   (To − Tb)/S · [To…Tu]   (To − Tb)/S · (Tc − T)/(Tc − Tu) · [Tu…Tc]   0 elsewhere
 *
 * | symbol | meaning | unit |
 * | T | soil temperature at seed depth, daily mean | °C |
 * | Tb, To, Tc | base, lower optimum, ceiling | °C |
 * | Tu | upper optimum: To and the width of the plateau | °C |
 * | S | thermal time to half emergence | °C·d |
 * Below `emergenceLowestC` the seed waits. Range 5–35 °C, seed 1–3 cm deep in moist ground.
 * Known weakness: water is taken as sufficient; crusting and depth are in the field share.
 */
export interface EmergenceTraits {
  readonly emergenceBaseC: number;
  readonly emergenceSumCDays: number;
  readonly emergenceOptimumC: number;
  readonly emergencePlateauC: number;
  readonly emergenceCeilingC: number;
  readonly emergenceLowestC: number;
}

/** Progress towards half emergence, share a day. */
export function emergenceRate(traits: EmergenceTraits, soilC: number): number {
  const { emergenceBaseC: baseC, emergenceOptimumC: optimumC, emergenceCeilingC: ceilingC } = traits;
  if (soilC < traits.emergenceLowestC || soilC <= baseC || soilC >= ceilingC) return 0;
  const upperC = optimumC + traits.emergencePlateauC;
  const rate = (Math.min(soilC, optimumC) - baseC) / traits.emergenceSumCDays;
  return soilC <= upperC ? rate : (rate * (ceilingC - soilC)) / (ceilingC - upperC);
}
