import { quantileOfSorted } from '@twelvemonth/basis';
import {
  type CropType,
  dayOfSum,
  type ForecastContext,
  NEVER,
  referenceDayCDays,
} from '@twelvemonth/growing';
import { climateOf } from '../climate-inputs.ts';
import { dayOf, membersAround, placeKey } from '../garden-under-probe.ts';
import { growthAbout, growthInputs, growthOutputs, standstillAbout } from '../growth-of-day.ts';
import { countBand } from '../member-bands.ts';
import { kindNamed, sound } from '../named-things.ts';
import { ProbeRefusal, probeModel } from '../probe-model.ts';
import { longestGapDays } from './growth.ts';

function regrowthDays(context: ForecastContext, kind: CropType, cutDay: number, cutDays: number): number[] {
  const sum = cutDays * referenceDayCDays(kind);
  return context.members.map((member) => {
    const clock = member.clockOf(placeKey);
    const back = dayOfSum(clock, clock.growth(kind), cutDay, sum);
    return back >= NEVER ? NEVER : back - cutDay;
  });
}

const medianOf = (days: readonly number[]): number => quantileOfSorted(Float64Array.from(days).sort(), 0.5);

export const regrowthProbe = probeModel({
  name: 'regrowth',
  about:
    'how soon a cut or tip has grown back after a day, at the pace of the tables, and its ratio to another day',
  inputs: growthInputs,
  outputs: {
    harvest: 'harvest that is cut',
    regrowthDays: 'days until it has grown back after "day": p10, p50, p90 over the weather runs',
    againstRegrowthDays: 'the same after againstDay (null without)',
    regrowthRatio: 'median days after "day" over those after againstDay (null without)',
    ...growthOutputs,
  },
  example: {
    kind: 'field-bean-tips',
    station: 'camborne',
    cover: 'polytunnel',
    day: '2027-03-25',
    againstDay: '2027-01-10',
  },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    const harvest = kind.harvests.find((h) => (h.habit === 'cuts' || h.habit === 'tips') && h.cutDays > 0);
    if (harvest === undefined)
      throw new ProbeRefusal(
        'kind',
        `"${i.kind}" has no cuts or tips that grow back. Take one that has, as rocket-mustard.`,
      );
    const day = dayOf(i.day);
    const against = i.againstDay === undefined ? null : dayOf(i.againstDay);
    sound(
      against === null || Math.abs(against - day) <= longestGapDays,
      'againstDay',
      `Input "againstDay" (${i.againstDay}) is more than ${longestGapDays} days from "day" (${i.day}). Take one nearer.`,
    );
    const context = membersAround(i, Math.min(day, against ?? day), longestGapDays + 500);
    const after = regrowthDays(context, kind, day, harvest.cutDays);
    const other = against === null ? null : regrowthDays(context, kind, against, harvest.cutDays);
    const growth = growthAbout(context, kind, day, i.windowDays);
    const otherGrowth = against === null ? null : growthAbout(context, kind, against, i.windowDays);
    const come =
      medianOf(after) < NEVER / 2 && other !== null && medianOf(other) < NEVER / 2 && medianOf(other) > 0;
    return {
      harvest: harvest.id,
      regrowthDays: countBand(after),
      againstRegrowthDays: other === null ? null : countBand(other),
      regrowthRatio: come ? medianOf(after) / medianOf(other) : null,
      effectiveDayDegreesCDays: growth,
      againstEffectiveDayDegreesCDays: otherGrowth,
      ratioToAgainst: otherGrowth === null || otherGrowth <= 0 ? null : growth / otherGrowth,
      ...standstillAbout(context, climateOf(i).normals, day),
    };
  },
});
