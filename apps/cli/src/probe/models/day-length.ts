import { dayLengthHours } from '@twelvemonth/growing';
import { z } from 'zod';
import { dayOfYear, latitudeDeg, measured } from '../fields.ts';
import { probeModel } from '../probe-model.ts';

export const dayLengthProbe = probeModel({
  name: 'day-length',
  about: 'hours from sunrise to sunset (Forsythe et al. 1995)',
  inputs: z.strictObject({
    latitudeDeg,
    dayOfYear,
    horizonDeg: measured(
      -5,
      18,
      "depth of the sun's centre below the horizon, degrees: 0.8333 sunrise, 6 civil twilight",
    ).default(0.8333),
  }),
  outputs: { dayLengthHours: 'h; 0 in the polar night, 24 in the polar day' },
  example: { latitudeDeg: 54.6, dayOfYear: 15, horizonDeg: 0.8333 },
  answer: (i) => ({ dayLengthHours: dayLengthHours(i.latitudeDeg, i.dayOfYear, i.horizonDeg) }),
});
