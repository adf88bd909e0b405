/** Running to seed as one sowing meets it: when the crop is over, and which share is lost or eaten young before that. */
import type { Day } from '@twelvemonth/basis';
import type { Harvest } from '../crops/crop-type.ts';
import { boltingEndDay, coldBoltedShare } from '../growth/bolting.ts';
import type { Growing } from '../growth/growing.ts';
import { gateDay } from '../growth/harvest-days.ts';
import { lastDayBefore, NEVER } from '../growth/place-clock.ts';

/** Day on which a crop that ends by bolting is over, and NEVER for the others. */
export function endByBolting(growing: Growing): Day {
  const { kind, raised } = growing;
  const bolting = kind.bolting;
  if (bolting === null || bolting.effect !== 'ends') return NEVER;
  const juvenile = Math.max(raised.groundDay, raised.dayOfGrowth(growing.sumOf(bolting.juvenileDays)));
  const cold = bolting.mode === 'cold' ? raised.bed.cold(kind) : null;
  const after = growing.sumOf(bolting.afterDays);
  return boltingEndDay(bolting, raised.bed, raised.growth, cold, juvenile, after, growing.lengthOfDay);
}

/** Share of the plants that cold up to a day brings to seed while the others go on. */
function sharedByCold(growing: Growing, untilDay: Day): number {
  const { kind, raised } = growing;
  const bolting = kind.bolting;
  if (bolting === null || bolting.mode !== 'cold' || untilDay >= NEVER) return 0;
  return coldBoltedShare(
    bolting,
    raised.bed.cold(kind),
    raised,
    growing.sumOf(bolting.juvenileDays),
    untilDay,
  );
}

/**
 * Day up to which cold still shows by the harvest. Bulbs: some growth before bulbing takes over. Spring cabbage and the
 * like: the harvest itself, as a head with a stalk in it is lost. Crops that end by bolting: early enough for stalks
 * to rise.
 */
export function coldCountsUntil(growing: Growing, harvest: Harvest, firstDay: Day): Day {
  const { kind, raised } = growing;
  const bolting = kind.bolting;
  if (bolting === null || firstDay >= NEVER) return firstDay;
  const before = (day: Day, days: number): Day =>
    days > 0 ? lastDayBefore(raised.bed, raised.growth, day, growing.sumOf(days)) : day;
  if (harvest.startGate.gate === 'day-length')
    return before(Math.min(firstDay, gateDay(growing, harvest)), bolting.beforeBulbingDays);
  if (bolting.effect !== 'ends') return firstDay;
  const last = before(firstDay, bolting.afterDays);
  const stalksRise = growing.lengthOfDay(last) >= bolting.dayLengthHours;
  return stalksRise ? last : raised.groundDay;
}

/** Share of the plants lost to a harvest (or eaten young) because they ran to seed before it was taken on a day. */
export function boltedShareBy(growing: Growing, harvest: Harvest, day: Day): number {
  // A curd that needs a winter is the flower itself: no plant runs to seed before it.
  if (!harvest.endsPlant || harvest.startGate.gate === 'cold') return 0;
  return sharedByCold(growing, coldCountsUntil(growing, harvest, day));
}
