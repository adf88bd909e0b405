/**
 * Bulbing. Two things open it: the plant is big enough, and days that lengthen have reached its critical length.
 * Behind the gate the bulb fills with light-limited heat, so warmth hastens it; bigger plants are quicker, within a
 * quarter either way. Garlic divides into cloves only after cold; plants that have not had it by midsummer make one
 * undivided round. Onions and shallots need no cold to bulb.
 *
 *   gate day  = later of: growth ≥ j · day length ≥ h (lengthening)
 *   cloved(u) = 0.5 + (u − c)/(2·w·c), held to 0…1        yield = full · (cloved + r·(1 − cloved))
 *
 * | symbol | meaning | unit |
 * | j | size before which it cannot bulb (onion: 600 °C·d, Lancaster et al. 1996) | reference days |
 * | h | critical day length, sunrise to sunset | h |
 * | c, w | cold that half of the plants need, and half the width of the spread as a share of it | °C·d, – |
 * | u | highest balance of cold between planting and midsummer | °C·d |
 * | r | weight of an undivided round against a cloved bulb | – |
 *
 * Sources: Lancaster et al. 1996 and Brewster 2008 (onion); Mann & Minges 1958 (garlic: temperature before and after
 * planting decides with day length); the size of the need, 40–60 days at 0–10 °C, is recalled. Range: 45–58° of
 * latitude. Known weakness: cold in store before planting is not counted; shade of neighbours and nitrogen are not there.
 */
import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { Harvest, StartGate } from '../crops/crop-type.ts';
import { highestBalanceCDays } from './cold-balance.ts';
import type { Growing } from './growing.ts';
import { NEVER } from './running-sum.ts';

type BulbingGate = Extract<StartGate, { gate: 'day-length' }>;

/** First day on which the length is reached while days lengthen (or are far beyond it anyway). */
function dayOfRisingLength(growing: Growing, fromDay: Day, hours: number): Day {
  if (fromDay >= NEVER) return NEVER;
  for (let day = fromDay; day < fromDay + 420; day++) {
    const length = growing.lengthOfDay(day);
    if (length >= hours && (length > growing.lengthOfDay(day - 1) || length >= hours + 1.5)) return day;
  }
  return NEVER;
}

function midsummerFrom(day: Day, southern: boolean): Day {
  const { year } = civilFromDay(day);
  const of = (y: number): Day => (southern ? dayFromCivil(y, 12, 21) : dayFromCivil(y, 6, 21));
  return of(year) >= day ? of(year) : of(year + 1);
}

const standsFrom = ({ raised }: Growing): Day => Math.max(raised.groundDay, raised.emergenceDay);

/** The day on which bulbing begins, NEVER when it does not. */
export function bulbingDay(growing: Growing, gate: BulbingGate): Day {
  const bigEnough = growing.raised.dayOfGrowth(growing.sumOf(gate.juvenileDays));
  return dayOfRisingLength(growing, Math.max(standsFrom(growing), bigEnough), gate.dayLengthHours);
}

/** Share of the plants whose bulbs divide into cloves; 1 where no cold is needed. */
export function clovedShare(growing: Growing, gate: BulbingGate): number {
  const { raised, kind } = growing;
  const stands = standsFrom(growing);
  if (gate.coldCDays <= 0 || stands >= NEVER) return 1;
  const midsummer = midsummerFrom(dayOfRisingLength(growing, stands, gate.dayLengthHours), growing.southern);
  const units = highestBalanceCDays(raised.bed.cold(kind), raised.groundDay, midsummer);
  const share = 0.5 + (units - gate.coldCDays) / (2 * gate.coldSpreadShare * gate.coldCDays);
  return Math.min(1, Math.max(0, share));
}

/** Share of the full yield that the cold of the season allows: rounds weigh less than cloved bulbs. */
export function chilledYieldShare(growing: Growing, harvest: Harvest): number {
  const gate = harvest.startGate;
  if (gate.gate !== 'day-length' || gate.coldCDays <= 0) return 1;
  const cloved = clovedShare(growing, gate);
  return cloved + gate.unchilledYieldShare * (1 - cloved);
}

/** Bigger plants bulb sooner (Brewster 2008: leaf area and shade hasten bulbing), within a quarter either way. */
export function bulbingSizeFactor(growing: Growing, harvest: Harvest, gateAt: Day): number {
  const size = Math.max(1, growing.raised.growthAt(gateAt));
  const factor = Math.exp(
    growing.kind.bulbingSizePower * Math.log(Math.max(1, growing.sumOf(harvest.fullDays)) / size),
  );
  return Math.min(1.25, Math.max(0.75, factor));
}
