import { civilFromDay, dayFromCivil } from '@twelvemonth/basis';
import { weatherMembers } from '@twelvemonth/growing';
import { z } from 'zod';
import { climateFields, climateOf } from '../climate-inputs.ts';
import { whole } from '../fields.ts';
import { probeModel } from '../probe-model.ts';
import { spreadOfMeans } from '../spread-of-means.ts';

const spans = [30, 90, 150] as const;

export const weatherYearsProbe = probeModel({
  name: 'weather-years',
  about: 'years of generated weather from monthly normals, in figures that can be held against a record',
  inputs: z.strictObject({
    ...climateFields,
    years: whole(2, 400, 'years to draw').default(60),
    seed: whole(0, 2147483647, 'number that draws the weather').default(1),
  }),
  outputs: {
    tmaxC: 'monthly means of the maximum, January first, °C',
    tminC: 'monthly means of the minimum, °C',
    rainMm: 'mean rain of each month, mm',
    radiationMJPerM2Day: 'monthly means of global radiation, MJ/m²/day',
    wetShare: 'share of days with at least 1 mm of rain, by month',
    meanSdC:
      'standard deviation of 30-, 90- and 150-day means of the daily mean temperature about the mean year, °C',
    tmaxSdC: 'the same of the maximum, °C',
    tminSdC: 'the same of the minimum, °C',
  },
  example: { station: 'dublin', years: 30, seed: 1 },
  answer: (i) => {
    const { site, source } = climateOf(i);
    const startDay = dayFromCivil(2001, 1, 1);
    const dayCount = dayFromCivil(2001 + i.years, 1, 1) - startDay;
    const drawn = weatherMembers({
      site,
      source,
      seed: i.seed,
      purpose: 'check',
      memberCount: 1,
      startDay,
      dayCount,
    })[0]!;
    const counts = new Float64Array(12);
    const months = Uint8Array.from({ length: dayCount }, (_, d) => civilFromDay(startDay + d).month - 1);
    for (const month of months) counts[month] = counts[month]! + 1;
    const meanBy = (value: (day: number) => number): Float64Array => {
      const sums = new Float64Array(12);
      months.forEach((month, d) => {
        sums[month] = sums[month]! + value(d);
      });
      return sums.map((sum, month) => sum / counts[month]!);
    };
    const spreads = (values: Float64Array) =>
      Object.fromEntries(spans.map((days) => [`over${days}Days`, spreadOfMeans(values, days)]));
    return {
      tmaxC: meanBy((d) => drawn.tmaxC[d]!),
      tminC: meanBy((d) => drawn.tminC[d]!),
      rainMm: meanBy((d) => drawn.rainMm[d]!).map((mean, month) => (mean * counts[month]!) / i.years),
      radiationMJPerM2Day: meanBy((d) => drawn.radiationMJPerM2Day[d]!),
      wetShare: meanBy((d) => (drawn.rainMm[d]! >= 1 ? 1 : 0)),
      meanSdC: spreads(drawn.tmaxC.map((tmax, d) => (tmax + drawn.tminC[d]!) / 2)),
      tmaxSdC: spreads(drawn.tmaxC),
      tminSdC: spreads(drawn.tminC),
    };
  },
});
