import type { PlaceWeather } from '@twelvemonth/growing';

/** Weather of a place made of given soil temperatures: nothing else is short. */
export function steadyPlace(startDay: number, soilC: Float64Array): PlaceWeather {
  const same = (value: number): Float64Array => new Float64Array(soilC.length).fill(value);
  return {
    startDay,
    tmaxC: soilC,
    tminC: soilC,
    radiationMJPerM2Day: same(10),
    radiation7MJPerM2Day: same(10),
    soilC,
    waterShare: same(1),
    middleWaterShare: same(1),
    deepWaterShare: same(1),
    hardenedShare: same(0),
    workableDay: Int32Array.from(soilC, (_, i) => startDay + i),
  };
}
