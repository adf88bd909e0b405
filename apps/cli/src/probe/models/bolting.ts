import {
  boltedShareOfUnits,
  coldChangeCDays,
  dayLengthHours,
  firstDayOfLength,
  NEVER,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { daily, dayOfYear, kindField, latitudeDeg, measured, whole } from '../fields.ts';
import { kindNamed, needed, sound } from '../named-things.ts';
import { ProbeRefusal, probeModel } from '../probe-model.ts';

const hoursOn = (latitude: number) => (day: number) => dayLengthHours(latitude, ((day - 1) % 365) + 1);

export const boltingProbe = probeModel({
  name: 'bolting',
  about:
    'share of plants past the juvenile size that run to seed after so much cold; for day-length kinds the day that sets it off',
  inputs: z.strictObject({
    kind: kindField,
    unitsCDays: measured(0, 5000, 'cold units since the juvenile stage, °C·d').optional(),
    constantC: measured(-40, 50, 'daily mean temperature, °C (with days)').optional(),
    days: whole(0, 1000, 'days at constantC').optional(),
    dailyC: daily(-40, 50, 'daily mean temperature, one a day, °C').optional(),
    latitudeDeg: latitudeDeg.optional(),
    dayOfYear: dayOfYear
      .describe('day on which the juvenile stage ends (day-length kinds), 1 January = 1')
      .optional(),
  }),
  outputs: {
    mode: 'cold or day-length',
    boltedShare: 'share of plants bolted (cold kinds)',
    unitsCDays: 'cold units, °C·d (cold kinds)',
    unitsPerDayCDays: 'cold units of the last day, °C·d (constantC or dailyC)',
    criticalHours: 'day length that sets it off, h (day-length kinds)',
    triggerDayOfYear: 'day of the year that sets it off, null when none (day-length kinds)',
    daysToTrigger: 'days until then, null when none (day-length kinds)',
  },
  example: { kind: 'onion-autumn-red', constantC: 7, days: 60 },
  answer: (i) => {
    const { bolting } = kindNamed(i.kind);
    if (bolting === null)
      throw new ProbeRefusal(
        'kind',
        `The tables have no bolting for "${i.kind}". Take a kind that runs to seed, as leek.`,
      );
    if (bolting.mode === 'day-length') {
      const latitude = needed(
        i.latitudeDeg,
        'latitudeDeg',
        `"${i.kind}" bolts by day length; latitude, degrees, −90 to 90`,
      );
      const from = needed(
        i.dayOfYear,
        'dayOfYear',
        `"${i.kind}" bolts by day length; day on which its juvenile stage ends, 1 to 366`,
      );
      const trigger = firstDayOfLength(hoursOn(latitude), from, bolting.dayLengthHours);
      const none = trigger >= NEVER;
      return {
        mode: bolting.mode,
        criticalHours: bolting.dayLengthHours,
        triggerDayOfYear: none ? null : ((trigger - 1) % 365) + 1,
        daysToTrigger: none ? null : trigger - from,
      };
    }
    const given = [i.unitsCDays, i.constantC, i.dailyC].filter((value) => value !== undefined).length;
    sound(
      given === 1,
      'unitsCDays',
      'Give one of "unitsCDays", "constantC" with "days", or "dailyC" for a kind that bolts by cold.',
    );
    const temperatures =
      i.constantC === undefined
        ? (i.dailyC ?? [])
        : new Array<number>(needed(i.days, 'days', 'days at "constantC", 0 to 1000')).fill(i.constantC);
    const daily = temperatures.map((meanC) => coldChangeCDays(kindNamed(i.kind).cold, meanC));
    const units = i.unitsCDays ?? daily.reduce((sum, value) => sum + value, 0);
    return {
      mode: bolting.mode,
      // The engine counts nobody as bolted where there was no cold at all.
      boltedShare: units > 0 ? boltedShareOfUnits(bolting, units) : 0,
      unitsCDays: units,
      unitsPerDayCDays: daily.at(-1) ?? null,
    };
  },
});
