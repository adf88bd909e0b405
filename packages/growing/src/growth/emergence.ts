/**
 * Emergence by thermal time: a day at soil temperature T adds (min(T, optimum) − base) / sum; above the optimum the
 * rate falls in a straight line to nothing at the ceiling; below the lowest temperature the seed waits. Half of the
 * seed is up when the rates add to 1 (Bierhuizen & Wagenvoort 1974; corners fitted to Harrington & Minges 1954).
 *
 * | symbol | meaning | unit |
 * | base, optimum, ceiling, lowest | soil temperature at seed depth | °C |
 * | sum | thermal time to half emergence | °C·d |
 * Known weakness: water is taken as sufficient; crusting and depth are in the field share.
 */
export interface EmergenceTraits {
  readonly emergenceBaseC: number;
  readonly emergenceSumCDays: number;
  readonly emergenceOptimumC: number;
  readonly emergenceCeilingC: number;
  readonly emergenceLowestC: number;
}

export function emergenceRate(traits: EmergenceTraits, soilC: number): number {
  const { emergenceBaseC, emergenceSumCDays, emergenceOptimumC, emergenceCeilingC, emergenceLowestC } =
    traits;
  if (soilC < emergenceLowestC || soilC <= emergenceBaseC || soilC >= emergenceCeilingC) return 0;
  const best = (emergenceOptimumC - emergenceBaseC) / emergenceSumCDays;
  if (soilC <= emergenceOptimumC) return (soilC - emergenceBaseC) / emergenceSumCDays;
  return (best * (emergenceCeilingC - soilC)) / (emergenceCeilingC - emergenceOptimumC);
}
