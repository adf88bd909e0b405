import {
  boltedShareOfUnits,
  coldChangeCDays,
  dayLengthHours,
  firstDayOfLength,
  highestBalanceCDays,
  makeColdBalance,
  NEVER,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { boltingOfSowing } from '../bolting-of-sowing.ts';
import { climateFields, placeFields } from '../climate-inputs.ts';
import { daily, dayOfYear, isoDay, kindField, measured, whole } from '../fields.ts';
import { memberFields } from '../garden-under-probe.ts';
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
    startDay: isoDay(
      'day of sowing or planting: the share of that sowing, in a climate and a place',
    ).optional(),
    byDay: isoDay('taken on this day (with startDay; default: when it is ready)').optional(),
    setMm: measured(5, 60, 'size of the sets, mm across (with startDay; default: the usual size)').optional(),
    ...climateFields,
    ...placeFields,
    ...memberFields,
    dayOfYear: dayOfYear
      .describe('day on which the juvenile stage ends (day-length kinds), 1 January = 1')
      .optional(),
  }),
  outputs: {
    mode: 'cold or day-length',
    boltedShare: 'share of plants bolted (cold kinds); mean over the weather runs with startDay',
    boltedShareOverWinters: 'p10, p50, p90 over the weather runs (startDay)',
    harvest: 'harvest that the share is lost to (startDay)',
    takenDay: 'day on which it is taken: p10, p50, p90 (startDay)',
    unitsCDays: 'highest balance of cold, warmth taken off, °C·d (cold kinds)',
    unitsPerDayCDays: 'cold of the last day, below 0 where warmth undoes it, °C·d (constantC or dailyC)',
    criticalHours: 'day length that sets it off, h (day-length kinds)',
    triggerDayOfYear: 'day of the year that sets it off, null when none (day-length kinds)',
    daysToTrigger: 'days until then, null when none (day-length kinds)',
  },
  example: { kind: 'onion-autumn-red', constantC: 7, days: 60 },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    const { bolting } = kind;
    for (const input of ['byDay', 'setMm'] as const)
      sound(
        i[input] === undefined || i.startDay !== undefined,
        input,
        `"${input}" belongs to one sowing: give "startDay" with it.`,
      );
    sound(
      i.setMm === undefined || kind.setAcrossMm > 0,
      'setMm',
      `"${i.kind}" has no usual size of set to compare with. Leave "setMm" out.`,
    );
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
    const given = [i.unitsCDays, i.constantC, i.dailyC, i.startDay].filter(
      (value) => value !== undefined,
    ).length;
    sound(
      given === 1,
      'unitsCDays',
      'Give one of "unitsCDays", "constantC" with "days", "dailyC", or "startDay" with a climate for a kind that bolts by cold.',
    );
    if (i.startDay !== undefined)
      return { mode: bolting.mode, ...boltingOfSowing(kind, { ...i, startDay: i.startDay }) };
    const temperatures =
      i.constantC === undefined
        ? (i.dailyC ?? [])
        : new Array<number>(needed(i.days, 'days', 'days at "constantC", 0 to 1000')).fill(i.constantC);
    const daily = temperatures.map((meanC) => coldChangeCDays(kind.cold, meanC));
    const balance = makeColdBalance(0, daily.length, (day) => daily[day]!);
    const units = i.unitsCDays ?? highestBalanceCDays(balance, 0, daily.length);
    return {
      mode: bolting.mode,
      boltedShare: boltedShareOfUnits(bolting, units),
      unitsCDays: units,
      unitsPerDayCDays: daily.at(-1) ?? null,
    };
  },
});
