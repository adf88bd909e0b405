import {
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  relativeSunDistance,
  solarDeclinationRad,
  sunsetHourAngleRad,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { dayOfYear, latitudeDeg } from '../fields.ts';
import { probeModel } from '../probe-model.ts';

export const extraterrestrialRadiationProbe = probeModel({
  name: 'extraterrestrial-radiation',
  about: 'sunlight on top of the air (FAO-56 eq. 21–25, 34)',
  inputs: z.strictObject({ latitudeDeg, dayOfYear }),
  outputs: {
    extraterrestrialRadiationMJPerM2Day: 'MJ/m²/day',
    relativeSunDistance: 'inverse relative distance of the sun, 1',
    solarDeclinationRad: 'rad',
    sunsetHourAngleRad: 'rad',
    daylightHours: 'h, sun centre on a flat horizon without refraction',
  },
  example: { latitudeDeg: -20, dayOfYear: 246 },
  answer: (i) => ({
    extraterrestrialRadiationMJPerM2Day: extraterrestrialRadiationMJPerM2Day(i.latitudeDeg, i.dayOfYear),
    relativeSunDistance: relativeSunDistance(i.dayOfYear),
    solarDeclinationRad: solarDeclinationRad(i.dayOfYear),
    sunsetHourAngleRad: sunsetHourAngleRad(i.latitudeDeg, i.dayOfYear),
    daylightHours: daylightHours(i.latitudeDeg, i.dayOfYear),
  }),
});
