/**
 * Losses to pests, diseases and accidents from table rows. A hazard takes its share of what stands in its window, in
 * proportion to the time spent in it; a bad year (drawn per member, year and group of hazards) takes more. Blight is
 * a date: the first spell of two days running with a minimum of 10 °C or more and rain on both (the warmth of the
 * Hutton rule, with rain standing for humid hours), inside the hazard's window.
 *
 * Known weakness: exposure is counted, not the size of the pest's generation; rain is a poor stand-in for humidity.
 */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { DailyWeather } from '../climate/climate.ts';
import { southernShiftDays } from '../climate/season-day.ts';
import type { Hazard } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';

export interface HazardYears {
  isBad(group: string, year: number, prob: number): boolean;
}

/** The hazard's window that starts in the given year, absolute days; southern sites half a year later. */
function windowOf(hazard: Hazard, year: number, southern: boolean): { from: Day; to: Day } {
  const shift = southern ? southernShiftDays : 0;
  const start = dayFromCivil(year, 1, 1) + hazard.fromDayOfYear - 1 + shift;
  const length =
    hazard.toDayOfYear - hazard.fromDayOfYear + (hazard.toDayOfYear < hazard.fromDayOfYear ? 365 : 0);
  return { from: start, to: start + length };
}

/** Share that survives one hazard between two days. `youngUntil`: end of the young stage. */
export function hazardSurvivalShare(
  hazard: Hazard,
  fromDay: Day,
  toDay: Day,
  youngUntil: Day,
  underCover: boolean,
  isPrevented: boolean,
  southern: boolean,
  years: HazardYears,
): number {
  const end = hazard.stage === 'young' ? Math.min(toDay, youngUntil) : toDay;
  if (end <= fromDay) return 1;
  let survival = 1;
  const lastYear = civilFromDay(end).year;
  for (let year = civilFromDay(fromDay).year - 1; year <= lastYear; year++) {
    const window = windowOf(hazard, year, southern);
    const overlap = Math.min(end, window.to) - Math.max(fromDay, window.from);
    if (overlap <= 0) continue;
    const whole = hazard.stage === 'young' ? hazard.youngDays : window.to - window.from;
    const loss = years.isBad(hazard.group, year, hazard.badYearProb)
      ? hazard.badYearLossShare
      : hazard.lossShare;
    const reach = (underCover ? hazard.underCoverShare : 1) * (isPrevented ? 1 - hazard.preventedShare : 1);
    survival *= 1 - Math.min(0.98, loss * reach * Math.min(1, overlap / Math.max(1, whole)));
  }
  return survival;
}

const { 'minimum-c': minimumC, 'rain-mm': rainMm } = coversTable.blight;

/** Days on which a blight spell is complete, rising. */
export function blightSpellDays(outdoor: DailyWeather): Int32Array {
  const days: number[] = [];
  for (let i = 1; i < outdoor.tminC.length; i++) {
    const warm = outdoor.tminC[i]! >= minimumC && outdoor.tminC[i - 1]! >= minimumC;
    const wet = outdoor.rainMm[i]! >= rainMm && outdoor.rainMm[i - 1]! >= rainMm;
    if (warm && wet) days.push(outdoor.startDay + i);
  }
  return Int32Array.from(days);
}
