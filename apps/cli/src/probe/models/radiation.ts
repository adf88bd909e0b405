import {
  angstromRadiationMJPerM2Day,
  clearSkyRadiationMJPerM2Day,
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  rangeCoefficient,
  rangeRadiationMJPerM2Day,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { dayOfYear, elevationM, latitudeDeg, measured, oneOf, tmaxC, tminC, yesNo } from '../fields.ts';
import { needed, risingTemperatures, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

export const radiationProbe = probeModel({
  name: 'radiation',
  about:
    'global radiation from sunshine (angstrom), from the daily range (hargreaves), under a clear sky (clear-sky)',
  inputs: z.strictObject({
    method: oneOf(['angstrom', 'hargreaves', 'clear-sky'], 'way of reckoning: FAO-56 eq. 35, 50, 37'),
    latitudeDeg,
    dayOfYear,
    sunshineHours: measured(0, 24, 'sunshine, h (angstrom)').optional(),
    tmaxC: tmaxC.optional(),
    tminC: tminC.optional(),
    coastal: yesNo('near the sea: coefficient of hargreaves').default(false),
    rangeCoefficient: measured(
      0.1,
      0.3,
      'coefficient of hargreaves, °C^-0.5 (default: by coastal)',
    ).optional(),
    elevationM: elevationM.default(0),
  }),
  outputs: {
    radiationMJPerM2Day: 'MJ/m²/day',
    extraterrestrialRadiationMJPerM2Day: 'MJ/m²/day',
    daylightHours: 'h (angstrom)',
    rangeCoefficient: '°C^-0.5 (hargreaves)',
  },
  example: { method: 'angstrom', latitudeDeg: -22.9, dayOfYear: 135, sunshineHours: 7.1 },
  answer: (i) => {
    const outer = extraterrestrialRadiationMJPerM2Day(i.latitudeDeg, i.dayOfYear);
    const common = { extraterrestrialRadiationMJPerM2Day: outer };
    if (i.method === 'clear-sky')
      return { radiationMJPerM2Day: clearSkyRadiationMJPerM2Day(outer, i.elevationM), ...common };
    if (i.method === 'angstrom') {
      const sun = needed(i.sunshineHours, 'sunshineHours', 'angstrom reckons from sunshine, h, 0 to 24');
      const daylight = daylightHours(i.latitudeDeg, i.dayOfYear);
      sound(
        sun <= daylight + 0.5,
        'sunshineHours',
        `Input "sunshineHours" (${sun} h) is longer than the day (${daylight.toFixed(1)} h). Give the hours of that day.`,
      );
      return {
        radiationMJPerM2Day: angstromRadiationMJPerM2Day(outer, sun, daylight),
        ...common,
        daylightHours: daylight,
      };
    }
    const tmax = needed(i.tmaxC, 'tmaxC', 'hargreaves reckons from the daily range, °C');
    const tmin = needed(i.tminC, 'tminC', 'hargreaves reckons from the daily range, °C');
    risingTemperatures(tmin, tmax);
    const coefficient = i.rangeCoefficient ?? rangeCoefficient(i.coastal);
    return {
      radiationMJPerM2Day: rangeRadiationMJPerM2Day(outer, tmax, tmin, coefficient),
      ...common,
      rangeCoefficient: coefficient,
    };
  },
});
