/**
 * Daily mean soil temperature at a shallow depth from air and light. Fitted at 10 cm to daily records of Dublin
 * Airport and Valentia (Met Éireann, CC BY 4.0): RMSE 1.0 and 0.9 °C, bare sunlit ground.
 *
 *   soil(z) = EMA(air mean, τa z) + w · EMA(light, τr z) − c
 *
 * z depth, cm · τa, τr days per cm · w °C per MJ/m²/day · c °C, what bare ground loses at night
 * The light term carries the season: soil runs 0.6 °C under the air in January and 2.9 °C over it in June.
 * The lag is taken in proportion to depth: valid for 2–15 cm. Deep soil: `dampedWave` (Carslaw & Jaeger form).
 */
import { generatorTable } from '../generated/generator.ts';

const table = generatorTable.soil;
export const sowingDepthCm: number = table['sowing-depth-cm'];

export function soilTemperatureC(
  tmaxC: ArrayLike<number>,
  tminC: ArrayLike<number>,
  radiationMJPerM2Day: ArrayLike<number>,
  depthCm: number = sowingDepthCm,
): Float64Array {
  const soil = new Float64Array(tmaxC.length);
  if (soil.length === 0) return soil;
  const airGain = 1 - Math.exp(-1 / (table['air-time-constant-days-per-cm'] * depthCm));
  const lightGain = 1 - Math.exp(-1 / (table['radiation-time-constant-days-per-cm'] * depthCm));
  let air = (tmaxC[0]! + tminC[0]!) / 2;
  let light = radiationMJPerM2Day[0]!;
  for (let i = 0; i < soil.length; i++) {
    air += airGain * ((tmaxC[i]! + tminC[i]!) / 2 - air);
    light += lightGain * (radiationMJPerM2Day[i]! - light);
    soil[i] = air + table['radiation-warming-c-per-mj'] * light - table['night-cooling-c'];
  }
  return soil;
}

/** Depth at which a wave of this period has shrunk to 1/e: √(α P / π). */
export const dampingDepthCm = (diffusivityM2PerS: number, periodDays: number): number =>
  100 * Math.sqrt((diffusivityM2PerS * periodDays * 86400) / Math.PI);

/** How much of a surface wave is left at a depth, and how late it comes. */
export function dampedWave(
  depthCm: number,
  dampingCm: number,
  periodDays: number,
): { readonly amplitudeShare: number; readonly lagDays: number } {
  return {
    amplitudeShare: Math.exp(-depthCm / dampingCm),
    lagDays: ((depthCm / dampingCm) * periodDays) / (2 * Math.PI),
  };
}
