/**
 * Daily global radiation from what was recorded, and its bounds.
 *
 *   Ångström–Prescott (FAO-56 eq. 35)   Rs = (a + b n/N) Ra
 *   under a low sun                     Rs = (a + b n/N) Ra (1 − c exp(−h/h0)): FAO-56's pair, meant for a sun that
 *     stands high, is 16 % over measured normals in an Irish December and 30 % in a Dutch one
 *   Hargreaves–Samani (FAO-56 eq. 50)   Rs = k √(Tmax − Tmin) Ra
 *   clear sky (FAO-56 eq. 37)           Rso = (0.75 + 2·10⁻⁵ z) Ra
 *
 * Rs, Ra, Rso MJ/m²/day · n sunshine, h · N daylight, h · k inland 0.14, coast 0.18 at 50–56° (FAO-56 has 0.16,
 * 0.19, which overshoot there by 10–15 %) · z m above sea · h height of the noon sun, degrees. Known weakness: k√range misses day by day by 3–4 MJ.
 */
import { generatorTable } from '../generated/generator.ts';
import type { Site } from './climate.ts';
import { daylightHours, extraterrestrialRadiationMJPerM2Day, noonSunAltitudeDeg } from './sun.ts';

const table = generatorTable.radiation;

export const angstromRadiationMJPerM2Day = (
  extraterrestrialMJPerM2Day: number,
  sunHours: number,
  daylight: number,
): number =>
  daylight <= 0
    ? 0
    : (table['angstrom-a'] + table['angstrom-b'] * Math.min(1, Math.max(0, sunHours / daylight))) *
      extraterrestrialMJPerM2Day;

/** What Ångström's line with FAO-56's coefficients must be multiplied by at this height of the noon sun. */
export const lowSunFactor = (noonAltitudeDeg: number): number =>
  1 - table['low-sun-loss'] * Math.exp(-Math.max(0, noonAltitudeDeg) / table['low-sun-scale-deg']);

export const sunshineRadiationMJPerM2Day = (
  extraterrestrialMJPerM2Day: number,
  sunHours: number,
  daylight: number,
  noonAltitudeDeg: number,
): number =>
  angstromRadiationMJPerM2Day(extraterrestrialMJPerM2Day, sunHours, daylight) * lowSunFactor(noonAltitudeDeg);

export const rangeCoefficient = (coastal: boolean): number =>
  coastal ? table['hargreaves-coastal'] : table['hargreaves-inland'];

export const rangeRadiationMJPerM2Day = (
  extraterrestrialMJPerM2Day: number,
  tmaxC: number,
  tminC: number,
  coefficient: number,
): number => coefficient * Math.sqrt(Math.max(0, tmaxC - tminC)) * extraterrestrialMJPerM2Day;

export const clearSkyRadiationMJPerM2Day = (extraterrestrialMJPerM2Day: number, elevationM: number): number =>
  (0.75 + 0.00002 * elevationM) * extraterrestrialMJPerM2Day;

export interface ClearnessBounds {
  /** Share of extraterrestrial radiation on the darkest and the clearest days. */
  readonly overcastShare: number;
  readonly clearShare: number;
}

const altitudes = [10, 18, 26, 36, 60] as const;

/** Overcast floor and near-clear envelope by the height of the noon sun (5th and 99th percentile of record). */
export function clearnessBounds(noonAltitudeDeg: number): ClearnessBounds {
  const at = (altitude: (typeof altitudes)[number]): ClearnessBounds => ({
    overcastShare: table[`overcast-share-at-${altitude}`],
    clearShare: table[`clear-share-at-${altitude}`],
  });
  for (let i = 1; i < altitudes.length; i++) {
    const [low, high] = [altitudes[i - 1]!, altitudes[i]!];
    if (noonAltitudeDeg > high && i < altitudes.length - 1) continue;
    const share = Math.min(1, Math.max(0, (noonAltitudeDeg - low) / (high - low)));
    const [a, b] = [at(low), at(high)];
    return {
      overcastShare: a.overcastShare + share * (b.overcastShare - a.overcastShare),
      clearShare: a.clearShare + share * (b.clearShare - a.clearShare),
    };
  }
  return at(60);
}

/** Radiation of one recorded day: measured, else from sunshine, else from the daily range; held inside its bounds. */
export function recordedRadiationMJPerM2Day(
  site: Site,
  dayOfYear: number,
  day: { radiationMJPerM2Day: number | null; sunHours: number | null; tmaxC: number; tminC: number },
): number {
  if (day.radiationMJPerM2Day !== null) return day.radiationMJPerM2Day;
  const outer = extraterrestrialRadiationMJPerM2Day(site.latitudeDeg, dayOfYear);
  const noonDeg = noonSunAltitudeDeg(site.latitudeDeg, dayOfYear);
  const estimate =
    day.sunHours !== null
      ? sunshineRadiationMJPerM2Day(outer, day.sunHours, daylightHours(site.latitudeDeg, dayOfYear), noonDeg)
      : rangeRadiationMJPerM2Day(outer, day.tmaxC, day.tminC, rangeCoefficient(site.coastal));
  const bounds = clearnessBounds(noonDeg);
  return Math.min(bounds.clearShare * outer, Math.max(bounds.overcastShare * outer, estimate));
}
