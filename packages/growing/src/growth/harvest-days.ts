/**
 * When each harvest of a kind begins: the later of its growth and its gate (cold, day length, midwinter), then the
 * reference days behind the gate. Sequences count from the first day of the harvest they follow.
 */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { CropType, Harvest } from '../crops/crop-type.ts';
import { dayOfSum, NEVER } from './place-clock.ts';
import type { Raised } from './raising.ts';

export interface Growing {
  readonly kind: CropType;
  readonly raised: Raised;
  /** Sum for so many reference days at this member's pace, °C·d. */
  sumOf(referenceDays: number): number;
  lengthOfDay(day: Day): number;
  readonly southern: boolean;
}

/** First day on which the length is reached while days lengthen (or are far beyond it anyway). */
function bulbingTriggerDay(growing: Growing, fromDay: Day, hours: number): Day {
  if (fromDay >= NEVER) return NEVER;
  for (let day = fromDay; day < fromDay + 420; day++) {
    const length = growing.lengthOfDay(day);
    if (length >= hours && (length > growing.lengthOfDay(day - 1) || length >= hours + 1.5)) return day;
  }
  return NEVER;
}

/** Midwinter day at or before the given day. */
export function midwinterBefore(day: Day, southern: boolean): Day {
  const { year } = civilFromDay(day);
  const here = southern ? dayFromCivil(year, 6, 21) : dayFromCivil(year, 12, 21);
  return here <= day ? here : southern ? dayFromCivil(year - 1, 6, 21) : dayFromCivil(year - 1, 12, 21);
}

/** The day on which the gate's own condition holds, before the days behind it; 0 when there is no gate. */
export function gateDay(growing: Growing, harvest: Harvest): Day {
  const { raised, kind } = growing;
  const gate = harvest.startGate;
  if (gate.gate === 'cold') {
    const juvenile = Math.max(raised.groundDay, raised.dayOfGrowth(growing.sumOf(gate.juvenileDays)));
    const bolting = kind.bolting;
    const triangle = {
      baseC: bolting?.coldBaseC ?? 0,
      optimumC: bolting?.coldOptimumC ?? 7,
      maximumC: bolting?.coldMaximumC ?? 16,
    };
    return dayOfSum(raised.bed, raised.bed.cold(triangle), juvenile, gate.coldCDays);
  }
  if (gate.gate === 'day-length')
    return bulbingTriggerDay(growing, Math.max(raised.groundDay, raised.emergenceDay), gate.dayLengthHours);
  return 0;
}

/** Bigger plants bulb sooner (Brewster 2008: leaf area and shade hasten bulbing), within a quarter either way. */
function bulbingSizeFactor(growing: Growing, harvest: Harvest, gateAt: Day): number {
  const size = Math.max(1, growing.raised.growthAt(gateAt));
  const factor = Math.exp(
    growing.kind.bulbingSizePower * Math.log(Math.max(1, growing.sumOf(harvest.fullDays)) / size),
  );
  return Math.min(1.25, Math.max(0.75, factor));
}

export function firstHarvestDay(growing: Growing, harvest: Harvest, firstDayOf: (id: string) => Day): Day {
  const { raised } = growing;
  const sum = growing.sumOf(harvest.startDays);
  const grown =
    harvest.after === null
      ? raised.dayOfGrowth(sum)
      : dayOfSum(raised.bed, raised.growth, firstDayOf(harvest.after), sum);
  const gate = harvest.startGate;
  if (gate.gate === 'none' || gate.gate === 'midwinter') return grown;
  const gateAt = gateDay(growing, harvest);
  let after = growing.sumOf(gate.afterDays);
  if (gate.gate === 'day-length' && gateAt < NEVER) after *= bulbingSizeFactor(growing, harvest, gateAt);
  const behind = dayOfSum(raised.bed, raised.growth, gateAt, after);
  return Math.max(grown, behind);
}
