import { climateOf } from '../climate-inputs.ts';
import { dayOf, membersAround } from '../garden-under-probe.ts';
import { growthAbout, growthInputs, growthOutputs, standstillAbout } from '../growth-of-day.ts';
import { kindNamed, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

export const longestGapDays = 800;

export const growthProbe = probeModel({
  name: 'growth',
  about: 'growth of a kind in a place about a day, when it stands still, and its ratio to another day',
  inputs: growthInputs,
  outputs: growthOutputs,
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
    return {
      effectiveDayDegreesCDays: growth,
      againstEffectiveDayDegreesCDays: other,
      ratioToAgainst: other === null || other <= 0 ? null : growth / other,
      ...standstillAbout(context, climateOf(i).normals, day),
    };
  },
});
