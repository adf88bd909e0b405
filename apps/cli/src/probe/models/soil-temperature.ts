import { soilTemperatureC } from '@twelvemonth/growing';
import { z } from 'zod';
import { constantOrDaily, measured } from '../fields.ts';
import { daysOf, risingTemperatures, spread } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

export const soilTemperatureProbe = probeModel({
  name: 'soil-temperature',
  about: 'daily mean temperature of bare sunlit ground at sowing depth, from air and light',
  inputs: z.strictObject({
    tmaxC: constantOrDaily(-70, 60, 'maximum of each day, °C'),
    tminC: constantOrDaily(-70, 60, 'minimum of each day, °C'),
    radiationMJPerM2Day: constantOrDaily(0, 50, 'light on the ground, MJ/m²/day'),
    depthCm: measured(2, 15, 'depth, cm').default(3),
  }),
  outputs: {
    soilC: 'temperature on the last day, °C',
    dailySoilC: 'of each day, °C; one value where all inputs are single numbers',
  },
  example: { tmaxC: [8, 9, 12], tminC: [2, 3, 4], radiationMJPerM2Day: [4, 6, 8], depthCm: 10 },
  answer: ({ tmaxC, tminC, radiationMJPerM2Day, depthCm }) => {
    const days = daysOf({ tmaxC, tminC, radiationMJPerM2Day }, 1);
    const [high, low] = [spread(tmaxC, days), spread(tminC, days)];
    for (let i = 0; i < days; i++) risingTemperatures(low[i]!, high[i]!);
    const soil = soilTemperatureC(high, low, spread(radiationMJPerM2Day, days), depthCm);
    return { soilC: soil[days - 1], dailySoilC: soil };
  },
});
