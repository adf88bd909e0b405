/**
 * The weather of a covered place whose cover a gale takes on a day: before it what the cover made of the sky, from it on
 * what the uncovered ground has. Plants come out of the cover as soft as they were: hardening is followed through the
 * change, everything else is taken over day by day (soil and water are up to a few days ahead of what they would be).
 */
import type { Day } from '@twelvemonth/basis';
import { hardenedShares } from './hardening.ts';
import type { PlaceWeather } from './place.ts';

function joined<Values extends Float64Array | Int32Array>(before: Values, after: Values, at: number): Values {
  const values = before.slice() as Values;
  values.set(after.subarray(at), at);
  return values;
}

/** `covered` and `open` are of the same days. */
export function tornPlaceWeather(covered: PlaceWeather, open: PlaceWeather, tornDay: Day): PlaceWeather {
  const at = Math.min(Math.max(0, tornDay - covered.startDay), covered.tmaxC.length);
  const tmaxC = joined(covered.tmaxC, open.tmaxC, at);
  const tminC = joined(covered.tminC, open.tminC, at);
  return {
    startDay: covered.startDay,
    tmaxC,
    tminC,
    radiationMJPerM2Day: joined(covered.radiationMJPerM2Day, open.radiationMJPerM2Day, at),
    radiation7MJPerM2Day: joined(covered.radiation7MJPerM2Day, open.radiation7MJPerM2Day, at),
    soilC: joined(covered.soilC, open.soilC, at),
    waterShare: joined(covered.waterShare, open.waterShare, at),
    middleWaterShare: joined(covered.middleWaterShare, open.middleWaterShare, at),
    deepWaterShare: joined(covered.deepWaterShare, open.deepWaterShare, at),
    hardenedShare: hardenedShares(tmaxC, tminC),
    workableDay: joined(covered.workableDay, open.workableDay, at),
  };
}
