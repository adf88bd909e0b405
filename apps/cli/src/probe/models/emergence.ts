import {
  agedShare,
  dayOfSum,
  emergenceRate,
  leastGerminatingShare,
  makePlaceClock,
  NEVER,
  shareUpBetween,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { daily, kindField, measured } from '../fields.ts';
import { kindNamed, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';
import { steadyPlace } from '../steady-place.ts';

const longestTrialDays = 1000;

export const emergenceProbe = probeModel({
  name: 'emergence',
  about: 'days from sowing until half of the seed is up, by thermal time, and the share that comes up',
  inputs: z.strictObject({
    kind: kindField,
    constantC: measured(-20, 60, 'soil temperature at seed depth, the same each day, °C').optional(),
    dailyC: daily(-20, 60, 'soil temperature at seed depth, one a day from the sowing on, °C').optional(),
    packetAgeYears: measured(0, 50, 'years since the year on the packet (0: fresh), years').default(0),
  }),
  outputs: {
    days: `days to half emergence, whole; null when it never comes (within ${longestTrialDays} days, or the days given); a forecast gives seed up after 90`,
    exactDays: 'the same with its fraction, at a constant temperature; null otherwise',
    emergedShare:
      'share of the seeds sown that come up in the field in the end: germination × what age has left of it × field factor × what this warmth lets up; 0 where the last is under 0.05 or days is null',
    germinatingShare:
      'of the seed that can germinate, what this warmth lets up against the best; 0 where days is null',
    agedShare: 'germination that the packet still has against a fresh one; 1 for sets and the like',
    ratePerDay: 'progress on the last day, share a day',
  },
  example: { kind: 'carrot-maincrop', constantC: 12 },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    sound(
      (i.constantC === undefined) !== (i.dailyC === undefined),
      i.dailyC === undefined ? 'constantC' : 'dailyC',
      'Give either "constantC" (one soil temperature, °C, −20 to 60) or "dailyC" (one a day), not both and not neither.',
    );
    const soilC =
      i.dailyC === undefined
        ? new Float64Array(longestTrialDays).fill(i.constantC!)
        : Float64Array.from(i.dailyC);
    const clock = makePlaceClock(steadyPlace(0, soilC));
    const day = dayOfSum(clock, clock.emergence(kind), 0, 1);
    const rate = emergenceRate(kind, soilC[soilC.length - 1]!);
    const share = day < NEVER ? shareUpBetween(clock, kind, 0, day) : 0;
    const aged = kind.startsAs === 'seed' ? agedShare(i.packetAgeYears, kind.seedLifeYears) : 1;
    const comes = share >= leastGerminatingShare;
    return {
      days: comes ? day : null,
      exactDays: comes && i.constantC !== undefined ? 1 / rate : null,
      emergedShare: comes ? kind.germinationShare * aged * kind.fieldShare * share : 0,
      germinatingShare: comes ? share : 0,
      agedShare: aged,
      ratePerDay: rate,
    };
  },
});
