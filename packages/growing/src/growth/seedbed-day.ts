/**
 * A day in the seedbed. At seed depth the soil swings about its daily mean with half the range of the air, damped with
 * depth (Carslaw & Jaeger); emergence and the share that comes up bend at their corners, so a day is the mean over that
 * sine wave, by four points of Gauss–Chebyshev quadrature:
 *
 *   day = ¼ Σ f(T + a cos((2k − 1)π/8)),  k = 1…4,   a = (tmax − tmin)/2 · exp(−z/D)
 *
 * | symbol | meaning | unit |
 * | T | daily mean of the soil at seed depth | °C |
 * | z, D | sowing depth, damping depth of the daily wave | cm |
 * So seed in a cold bench gets on in the warm hours, and hot afternoons stop lettuce whose mean day would not.
 * Known weakness: the surface is taken to swing as the air does; bare dry ground in sun swings more, wet ground less.
 */
import { dampingDepthCm, sowingDepthCm } from '../climate/soil-temperature.ts';
import { type EmergenceTraits, emergenceRate } from './emergence.ts';
import { type GerminationTraits, germinatingShare } from './germination-share.ts';

/** Thermal diffusivity of moist garden soil, m²/s: a daily wave shrinks to 1/e in 11.7 cm. */
const diffusivityM2PerS = 0.5e-6;
const swingLeftShare = Math.exp(-sowingDepthCm / dampingDepthCm(diffusivityM2PerS, 1));
const wideShare = swingLeftShare * Math.cos(Math.PI / 8);
const narrowShare = swingLeftShare * Math.cos((3 * Math.PI) / 8);

/** Progress towards half emergence, share of the way. */
export function emergenceOfDay(traits: EmergenceTraits, soilC: number, tminC: number, tmaxC: number): number {
  const wideC = ((tmaxC - tminC) / 2) * wideShare;
  const narrowC = ((tmaxC - tminC) / 2) * narrowShare;
  return (
    (emergenceRate(traits, soilC - wideC) +
      emergenceRate(traits, soilC - narrowC) +
      emergenceRate(traits, soilC + narrowC) +
      emergenceRate(traits, soilC + wideC)) /
    4
  );
}

const seedlingRate = (traits: EmergenceTraits & GerminationTraits, soilC: number): number =>
  emergenceRate(traits, soilC) * germinatingShare(traits, soilC);

/** The same progress, each hour's times the share of the seed that its temperature lets up. */
export function seedlingsOfDay(
  traits: EmergenceTraits & GerminationTraits,
  soilC: number,
  tminC: number,
  tmaxC: number,
): number {
  const wideC = ((tmaxC - tminC) / 2) * wideShare;
  const narrowC = ((tmaxC - tminC) / 2) * narrowShare;
  return (
    (seedlingRate(traits, soilC - wideC) +
      seedlingRate(traits, soilC - narrowC) +
      seedlingRate(traits, soilC + narrowC) +
      seedlingRate(traits, soilC + wideC)) /
    4
  );
}
