import { type DayCurve, doubleDegreeDays, singleDegreeDays } from '@twelvemonth/growing';
import { z } from 'zod';
import { measured, oneOf, tmaxC, tminC } from '../fields.ts';
import { needed, risingTemperatures, sound } from '../named-things.ts';
import { probeModel, toDecimals } from '../probe-model.ts';

export const degreeDaysProbe = probeModel({
  name: 'degree-days',
  about:
    'degree-days of one day by sine or triangle, single or double, with three cut-offs (Allen 1976; Zalom et al. 1983)',
  inputs: z.strictObject({
    tminC,
    tmaxC,
    nextTminC: measured(-70, 60, "next day's minimum, °C (double methods)").optional(),
    lowerC: measured(-20, 50, 'lower threshold, °C'),
    upperC: measured(-20, 60, 'upper threshold, °C (default: none)').optional(),
    method: oneOf(['single-sine', 'double-sine', 'single-triangle', 'double-triangle'], 'curve of the day'),
    cutOff: oneOf(['horizontal', 'vertical', 'intermediate'], 'what heat above upperC does').default(
      'horizontal',
    ),
  }),
  outputs: { degreeDaysCDays: '°C·d, three decimals' },
  example: { tminC: 2, tmaxC: 12, lowerC: 5, upperC: 30, method: 'single-sine', cutOff: 'horizontal' },
  answer: (i) => {
    risingTemperatures(i.tminC, i.tmaxC);
    const upper = i.upperC ?? null;
    sound(
      upper === null || upper > i.lowerC,
      'upperC',
      `Input "upperC" (${upper} °C) is not above "lowerC" (${i.lowerC} °C). Give an upper threshold above the lower one.`,
    );
    const curve: DayCurve = i.method.endsWith('sine') ? 'sine' : 'triangle';
    const thresholds = { lower: i.lowerC, upper };
    if (i.method.startsWith('single')) {
      sound(
        i.nextTminC === undefined,
        'nextTminC',
        `Input "nextTminC" belongs to double methods; "${i.method}" does not use it. Leave it out.`,
      );
      return {
        degreeDaysCDays: toDecimals(singleDegreeDays(curve, i.tminC, i.tmaxC, thresholds, i.cutOff), 3),
      };
    }
    const next = needed(
      i.nextTminC,
      'nextTminC',
      `"${i.method}" takes the next day's minimum, °C, −70 to 60`,
    );
    sound(
      next <= i.tmaxC,
      'nextTminC',
      `Input "nextTminC" (${next} °C) is above "tmaxC" (${i.tmaxC} °C). The half-day must fall: mend one of them.`,
    );
    return {
      degreeDaysCDays: toDecimals(doubleDegreeDays(curve, i.tminC, i.tmaxC, next, thresholds, i.cutOff), 3),
    };
  },
});
