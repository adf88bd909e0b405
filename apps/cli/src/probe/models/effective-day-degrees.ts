import { effectiveDayDegrees, referenceDayCDays, sineDayDegreesC } from '@twelvemonth/growing';
import { z } from 'zod';
import { kindField, measured, radiationMJPerM2Day, tmaxC, tminC } from '../fields.ts';
import { kindNamed, needed, risingTemperatures, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

export const effectiveDayDegreesProbe = probeModel({
  name: 'effective-day-degrees',
  about: 'heat that the light lets a plant use, 1/E = 1/D + f/(R − R0) (Scaife, Cox & Morris 1987)',
  inputs: z.strictObject({
    kind: kindField.optional(),
    dayDegreesCDays: measured(
      0,
      60,
      'D, day-degrees above the base, °C·d (or give tminC and tmaxC)',
    ).optional(),
    tminC: tminC.optional(),
    tmaxC: tmaxC.optional(),
    baseC: measured(-5, 20, 'base of growth, °C (default: of the kind)').optional(),
    optimumC: measured(5, 45, 'optimum of growth, °C (default: of the kind)').optional(),
    radiationMJPerM2Day: radiationMJPerM2Day.describe('R, seven-day mean light inside the cover, MJ/m²/day'),
    lightFactor: measured(0, 5, 'f, MJ/m²/day per °C·d (default: of the kind)').optional(),
    compensationMJPerM2Day: measured(
      0,
      5,
      'R0, light that a plant burns itself, MJ/m²/day (default: of the kind)',
    ).optional(),
  }),
  outputs: {
    effectiveDayDegreesCDays: 'E, °C·d',
    dayDegreesCDays: 'D, °C·d',
    referenceDayCDays: 'E of a reference day of the kind, °C·d (null without a kind)',
  },
  example: { dayDegreesCDays: 8, radiationMJPerM2Day: 4, lightFactor: 0.8, compensationMJPerM2Day: 0.6 },
  answer: (i) => {
    const kind = i.kind === undefined ? null : kindNamed(i.kind);
    const factor = needed(
      i.lightFactor ?? kind?.lightFactor,
      'lightFactor',
      'f, MJ/m²/day per °C·d, 0 to 5, where no "kind" is named',
    );
    const compensation = needed(
      i.compensationMJPerM2Day ?? kind?.lightCompensationMJPerM2Day,
      'compensationMJPerM2Day',
      'R0, MJ/m²/day, 0 to 5, where no "kind" is named',
    );
    let heat = i.dayDegreesCDays;
    if (heat === undefined) {
      const tmin = needed(i.tminC, 'tminC', 'minimum of the day, °C, or "dayDegreesCDays" in its place');
      const tmax = needed(i.tmaxC, 'tmaxC', 'maximum of the day, °C, or "dayDegreesCDays" in its place');
      risingTemperatures(tmin, tmax);
      const base = needed(
        i.baseC ?? kind?.growthBaseC,
        'baseC',
        'base of growth, °C, where no "kind" is named',
      );
      const optimum = needed(
        i.optimumC ?? kind?.growthOptimumC,
        'optimumC',
        'optimum of growth, °C, where no "kind" is named',
      );
      sound(
        optimum > base,
        'optimumC',
        `Input "optimumC" (${optimum} °C) is not above "baseC" (${base} °C). Mend one of them.`,
      );
      heat = sineDayDegreesC(tmin, tmax, base, optimum);
    }
    return {
      effectiveDayDegreesCDays: effectiveDayDegrees(heat, i.radiationMJPerM2Day, factor, compensation),
      dayDegreesCDays: heat,
      referenceDayCDays: kind === null ? null : referenceDayCDays(kind),
    };
  },
});
