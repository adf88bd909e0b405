/**
 * When each harvest of a kind begins: the later of its growth and its gate (cold, day length, midwinter), then the
 * reference days behind the gate. Sequences count from the first day of the harvest they follow.
 */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { bulbingDay, bulbingSizeFactor } from './bulbing.ts';
import { dayOfBalance } from './cold-balance.ts';
import type { Growing } from './growing.ts';
import { dayOfSum, NEVER } from './place-clock.ts';

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
    return dayOfBalance(raised.bed.cold(kind), juvenile, gate.coldCDays);
  }
  if (gate.gate === 'day-length') return bulbingDay(growing, gate);
  return 0;
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
