/**
 * Daily rain from monthly normals: two-state Markov chain and gamma amounts (Geng, Penning de Vries & Supit 1986).
 *   P(W|D) = 0.75 f    P(W|W) = 0.25 + P(W|D)    β = −2.16 + 1.83 p̄ (p̄ where p̄ ≤ 2.60)    α = (p̄ − s)/β
 * f wet fraction of the month · p̄ rain of a wet day, mm · β gamma scale, mm · α gamma shape · s the 1 mm that makes a
 * wet day: an amount is s plus a gamma draw, so that counted wet days are the wet days of the normals.
 * Where wet days are unknown: wet days a month = exp(a) rain^b, fitted to 711 station months (rmse 2.1 days).
 * Weak: long wet spells of the extreme west (P(W|W) − P(W|D) is 0.48 at Valentia in January, 0.25 here).
 */
import { generatorTable } from '../generated/generator.ts';
import type { MonthlyNormals } from './climate.ts';
import { dailyFromMonthly, monthLengths } from './year-slots.ts';

const table = generatorTable.rain;

export interface RainModel {
  readonly wetShare: Float64Array;
  readonly wetAfterDryProb: Float64Array;
  readonly wetAfterWetProb: Float64Array;
  readonly leastWetMm: Float64Array;
  readonly gammaShape: Float64Array;
  readonly gammaScaleMm: Float64Array;
}

export function wetDaysFromRain(rainMm: number): number {
  if (rainMm <= 0) return 0;
  return Math.exp(table['wet-days-log-intercept'] + table['wet-days-log-slope'] * Math.log(rainMm));
}

export function rainModel(normals: MonthlyNormals): RainModel {
  const wetDays = normals.rainMm.map((rain, m) =>
    Math.min(0.95 * monthLengths[m]!, Math.max(0.1, normals.wetDaysCount[m] ?? wetDaysFromRain(rain))),
  );
  const wetShare = dailyFromMonthly(wetDays.map((days, m) => days / monthLengths[m]!)).map((f) =>
    Math.min(0.97, Math.max(0.003, f)),
  );
  const wetDayMm = dailyFromMonthly(wetDays.map((days, m) => Math.max(0.2, normals.rainMm[m]! / days)));
  const scale = (p: number): number =>
    p <= table['gamma-scale-plain-below-mm']
      ? p
      : table['gamma-scale-offset-mm'] + table['gamma-scale-slope'] * p;
  const leastWetMm = wetDayMm.map((p) => Math.min(table['wet-day-threshold-mm'], 0.5 * p));
  const gammaScaleMm = wetDayMm.map(scale);
  return {
    wetShare,
    wetAfterDryProb: wetShare.map((f) => table['wet-after-dry-slope'] * f),
    wetAfterWetProb: wetShare.map((f) => table['wet-after-wet-offset'] + table['wet-after-dry-slope'] * f),
    leastWetMm,
    gammaScaleMm,
    gammaShape: wetDayMm.map((p, slot) => (p - leastWetMm[slot]!) / gammaScaleMm[slot]!),
  };
}
