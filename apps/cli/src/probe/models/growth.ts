import { firstFlowerDay } from '@twelvemonth/growing';
import { climateOf } from '../climate-inputs.ts';
import { dayOf, membersAround } from '../garden-under-probe.ts';
import { growthAbout, growthInputs, growthOutputs, standstillAbout } from '../growth-of-day.ts';
import { dayBand } from '../member-bands.ts';
import { kindNamed, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';
import { growingIn } from '../raised-members.ts';

export const longestGapDays = 800;

export const growthProbe = probeModel({
  name: 'growth',
  about: 'growth of a kind in a place about a day, when it stands still, and its ratio to another day',
  inputs: growthInputs,
  outputs: {
    firstFlowerDay:
      'first open flower when sown or planted in the place on "day": p10, p50, p90 over the weather runs (null where the kind has no flowering-days)',
    ...growthOutputs,
  },
  example: {
    kind: 'lettuce-leaf',
    station: 'valentia',
    cover: 'polytunnel',
    day: '2027-02-21',
    againstDay: '2026-12-21',
  },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    const day = dayOf(i.day);
    const against = i.againstDay === undefined ? null : dayOf(i.againstDay);
    sound(
      against === null || Math.abs(against - day) <= longestGapDays,
      'againstDay',
      `Input "againstDay" (${i.againstDay}) is more than ${longestGapDays} days from "day" (${i.day}). Take one nearer.`,
    );
    const first = Math.min(day, against ?? day);
    const context = membersAround(i, first, longestGapDays + 100);
    const growth = growthAbout(context, kind, day, i.windowDays);
    const other = against === null ? null : growthAbout(context, kind, against, i.windowDays);
    const inPlace = kind.routes.find((route) => route === 'direct' || route === 'planted') ?? 'direct';
    return {
      firstFlowerDay:
        kind.floweringDays === 0
          ? null
          : dayBand(growingIn(context, kind, inPlace, day, null).map(firstFlowerDay)),
      effectiveDayDegreesCDays: growth,
      againstEffectiveDayDegreesCDays: other,
      ratioToAgainst: other === null || other <= 0 ? null : growth / other,
      ...standstillAbout(context, climateOf(i).normals, day),
    };
  },
});
