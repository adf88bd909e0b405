import { dayFromCivil } from '@twelvemonth/basis';
import { placeWeather } from '@twelvemonth/growing';
import { z } from 'zod';
import { placeFields } from '../climate-inputs.ts';
import { constantOrDaily, dayOfYear, elevationM, latitudeDeg, measured } from '../fields.ts';
import { exposureOf } from '../garden-under-probe.ts';
import { daysOf, risingTemperatures, spread } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

const settlingDays = 30;

export const placeWeatherProbe = probeModel({
  name: 'place-weather',
  about:
    'weather that plants have in a place, from the weather outdoors; single numbers stand for a month of such days',
  inputs: z.strictObject({
    ...placeFields,
    latitudeDeg,
    elevationM: elevationM.default(50),
    dayOfYear: dayOfYear.describe('day of the year of the last day, 1 January = 1'),
    tmaxC: constantOrDaily(-60, 60, 'maximum outdoors, °C'),
    tminC: constantOrDaily(-70, 45, 'minimum outdoors, °C'),
    radiationMJPerM2Day: constantOrDaily(0, 45, 'global radiation outdoors, MJ/m²/day'),
    rainMm: constantOrDaily(0, 600, 'rain, mm/day').default(2),
    coverOffsetC: measured(-10, 10, 'learned offset of the cover, °C').default(0),
  }),
  outputs: {
    tmaxC: 'maximum in the place on the last day, °C',
    tminC: 'minimum in the place, °C',
    radiationMJPerM2Day: 'light that reaches the plants, MJ/m²/day',
    radiation7MJPerM2Day: 'its mean of seven days, MJ/m²/day',
    lightShare: 'light inside over light outdoors, share (null without light)',
    soilC: 'soil or compost at sowing depth, °C',
    waterShare: '1 = no shortage of water, 0 = growth stopped: shallow roots and seedbeds',
    middleWaterShare: 'the same for roots of middle depth',
    deepWaterShare: 'the same for deep roots',
    hardenedShare: '0 = soft, 1 = fully hardened',
    daily: 'the same of each day, where daily values are given',
  },
  example: {
    cover: 'polytunnel',
    latitudeDeg: 51,
    dayOfYear: 46,
    tmaxC: 9,
    tminC: 3,
    radiationMJPerM2Day: 5,
  },
  answer: (i) => {
    const { tmaxC, tminC, radiationMJPerM2Day, rainMm } = i;
    const run = daysOf({ tmaxC, tminC, radiationMJPerM2Day, rainMm }, 0);
    const days = run === 0 ? settlingDays : run;
    const outdoor = {
      startDay: dayFromCivil(2027, 1, 1) + i.dayOfYear - days,
      tmaxC: spread(tmaxC, days),
      tminC: spread(tminC, days),
      rainMm: spread(rainMm, days),
      radiationMJPerM2Day: spread(radiationMJPerM2Day, days),
    };
    for (let d = 0; d < days; d++) risingTemperatures(outdoor.tminC[d]!, outdoor.tmaxC[d]!);
    const site = { latitudeDeg: i.latitudeDeg, longitudeDeg: 0, elevationM: i.elevationM, coastal: true };
    const {
      startDay: _,
      workableDay: __,
      ...inside
    } = placeWeather(site, outdoor, exposureOf(i), i.coverOffsetC);
    const last = Object.fromEntries(Object.entries(inside).map(([name, values]) => [name, values[days - 1]]));
    const sky = outdoor.radiationMJPerM2Day[days - 1]!;
    return {
      ...last,
      lightShare: sky > 0 ? inside.radiationMJPerM2Day[days - 1]! / sky : null,
      ...(run === 0 ? {} : { daily: inside }),
    };
  },
});
