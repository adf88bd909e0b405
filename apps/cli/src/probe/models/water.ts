import { dayFromCivil } from '@twelvemonth/basis';
import {
  extraterrestrialRadiationMJPerM2Day,
  hargreavesEt0Mm,
  placeWeather,
  waterShareOf,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { daily, oneOf } from '../fields.ts';
import { exposureOf } from '../garden-under-probe.ts';
import { daysOf } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

const equator = { latitudeDeg: 0, longitudeDeg: 0, elevationM: 0, coastal: true };
const meanC = 20;
/** Three years without a leap day. */
const mostDays = 1095;
const startDay = dayFromCivil(2001, 1, 1);

/** The engine takes evaporation from temperatures: a day of 20 °C whose range gives this ET0. */
function rangeFor(et0Mm: number, dayOfYear: number): number {
  const ofOneDegree = hargreavesEt0Mm(
    meanC + 0.5,
    meanC - 0.5,
    extraterrestrialRadiationMJPerM2Day(0, dayOfYear),
  );
  return (et0Mm / ofOneDegree) ** 2;
}

export const waterProbe = probeModel({
  name: 'water',
  about:
    'shortage of water in unwatered open ground: a bucket as deep as the roots reach (FAO-56 ch. 8), full on the first day',
  inputs: z.strictObject({
    rainMm: daily(0, 600, 'rain of each day, mm', mostDays),
    et0Mm: daily(0, 20, 'reference evapotranspiration of each day, mm', mostDays),
    rooting: oneOf(['shallow', 'middle', 'deep'], 'how deep the roots reach: 0.4, 0.6 or 0.8 m').default(
      'shallow',
    ),
  }),
  outputs: {
    waterShare: 'of each day, as it begins: 1 = no shortage, 0 = growth stopped',
    lastWaterShare: 'on the last day',
  },
  example: { rainMm: [0, 0, 0, 0, 0, 0, 0, 0, 0, 20, 0], et0Mm: [5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5] },
  answer: ({ rainMm, et0Mm, rooting }) => {
    const days = daysOf({ rainMm, et0Mm }, 1);
    const half = et0Mm.map((et0, i) => rangeFor(et0, (i % 365) + 1) / 2);
    const outdoor = {
      startDay,
      tmaxC: Float64Array.from(half, (h) => meanC + h),
      tminC: Float64Array.from(half, (h) => meanC - h),
      rainMm: Float64Array.from(rainMm),
      radiationMJPerM2Day: new Float64Array(days).fill(10),
    };
    const inside = placeWeather(equator, outdoor, exposureOf({ watered: false }), 0);
    const waterShare = waterShareOf(inside, rooting);
    return { waterShare, lastWaterShare: waterShare[days - 1] };
  },
});
