/** The normal year of a site, day by day: from twelve monthly normals to the figures that the generator draws with. */
import { generatorTable } from '../generated/generator.ts';
import type { Autoregression } from './autoregression.ts';
import type { MonthlyNormals, Site } from './climate.ts';
import { locationForClippedMean } from './clipped-normal.ts';
import { clearnessBounds, rangeCoefficient, sunshineRadiationMJPerM2Day } from './radiation.ts';
import { type RainModel, rainModel } from './rain-model.ts';
import { fastAutoregression, spreadFor } from './residual-model.ts';
import { daylightHours, extraterrestrialRadiationMJPerM2Day, noonSunAltitudeDeg } from './sun.ts';
import { dailyFromMonthly, dayOfYearOfSlot, monthLengths, monthlyMeans, slotCount } from './year-slots.ts';

const wetTable = generatorTable['wet-days'];
const mix = (winter: number, summer: number, warmth: number): number => winter + warmth * (summer - winter);

/** What is drawn on a dry or a wet day: location and spread, by slot. */
export interface DayKind {
  readonly tmaxC: Float64Array;
  readonly tmaxSdC: Float64Array;
  readonly tminC: Float64Array;
  readonly tminSdC: Float64Array;
  readonly clearness: Float64Array;
}

export interface NormalYear {
  readonly rain: RainModel;
  readonly dry: DayKind;
  readonly wet: DayKind;
  readonly clearnessSd: number;
  readonly leastRangeC: number;
  readonly outerMJPerM2Day: Float64Array;
  readonly overcastShare: Float64Array;
  readonly clearShare: Float64Array;
  readonly autoregression: readonly Autoregression[];
}

const bySlot = (value: (slot: number) => number): Float64Array =>
  Float64Array.from({ length: slotCount }, (_, slot) => value(slot));

/** Monthly radiation: given, else from sunshine hours, else from the daily range. */
export function monthlyRadiationMJPerM2Day(site: Site, normals: MonthlyNormals): number[] {
  const latitude = site.latitudeDeg;
  const outer = monthlyMeans(
    bySlot((s) => extraterrestrialRadiationMJPerM2Day(latitude, dayOfYearOfSlot(s))),
  );
  const daylight = monthlyMeans(bySlot((s) => daylightHours(latitude, dayOfYearOfSlot(s))));
  const noonDeg = monthlyMeans(bySlot((s) => noonSunAltitudeDeg(latitude, dayOfYearOfSlot(s))));
  return monthLengths.map((length, m) => {
    const given = normals.radiationMJPerM2Day[m] ?? null;
    if (given !== null) return given;
    const sun = normals.sunHours[m] ?? null;
    if (sun !== null) return sunshineRadiationMJPerM2Day(outer[m]!, sun / length, daylight[m]!, noonDeg[m]!);
    const rangeC = Math.max(0, normals.tmaxC[m]! - normals.tminC[m]!);
    return rangeCoefficient(site.coastal) * Math.sqrt(rangeC) * outer[m]!;
  });
}

/** Daily radiation of the normal year, by slot, keeping the monthly means. */
export function normalRadiationMJPerM2Day(site: Site, normals: MonthlyNormals): Float64Array {
  const outer = bySlot((s) => extraterrestrialRadiationMJPerM2Day(site.latitudeDeg, dayOfYearOfSlot(s)));
  const outerMeans = monthlyMeans(outer);
  const clearness = dailyFromMonthly(
    monthlyRadiationMJPerM2Day(site, normals).map((rad, m) => rad / Math.max(0.05, outerMeans[m]!)),
  );
  return clearness.map((k, slot) => k * outer[slot]!);
}

export function normalYear(site: Site, normals: MonthlyNormals): NormalYear {
  const rain = rainModel(normals);
  const tmaxC = dailyFromMonthly(normals.tmaxC);
  const tminC = dailyFromMonthly(normals.tminC);
  const monthlyMeanC = normals.tmaxC.map((tmax, m) => (tmax + normals.tminC[m]!) / 2);
  const annualRangeC = Math.max(...monthlyMeanC) - Math.min(...monthlyMeanC);
  const meanC = tmaxC.map((tmax, slot) => (tmax + tminC[slot]!) / 2);
  const coldestC = Math.min(...meanC);
  const warmestC = Math.max(...meanC);
  const warmth = meanC.map((mean) =>
    warmestC - coldestC < 0.5 ? 0.5 : (mean - coldestC) / (warmestC - coldestC),
  );
  const radiation = normalRadiationMJPerM2Day(site, normals);
  const outer = bySlot((s) => extraterrestrialRadiationMJPerM2Day(site.latitudeDeg, dayOfYearOfSlot(s)));
  const bounds = Array.from({ length: slotCount }, (_, s) =>
    clearnessBounds(noonSunAltitudeDeg(site.latitudeDeg, dayOfYearOfSlot(s))),
  );
  const empty = (): DayKind => ({
    tmaxC: new Float64Array(slotCount),
    tmaxSdC: new Float64Array(slotCount),
    tminC: new Float64Array(slotCount),
    tminSdC: new Float64Array(slotCount),
    clearness: new Float64Array(slotCount),
  });
  const [dry, wet] = [empty(), empty()];
  const autoregression: Autoregression[] = [];
  for (let s = 0; s < slotCount; s++) {
    const w = warmth[s]!;
    const f = rain.wetShare[s]!;
    const rangeC = Math.max(wetTable['least-daily-range-c'] + 0.5, tmaxC[s]! - tminC[s]!);
    const spread = spreadFor(annualRangeC, w);
    autoregression.push(fastAutoregression(spread.correlation, w));
    const tmaxRiseC = mix(
      wetTable['tmax-rise-winter-c'],
      -wetTable['tmax-fall-summer-range-share'] * rangeC,
      w,
    );
    const tminRiseC = mix(
      wetTable['tmin-rise-winter-c'],
      wetTable['tmin-rise-summer-range-share'] * rangeC,
      w,
    );
    const drySd = (totalSd: number, riseC: number, ratio: number): number =>
      Math.sqrt(Math.max(0.3, totalSd * totalSd - f * (1 - f) * riseC * riseC) / (f * ratio * ratio + 1 - f));
    const tmaxRatio = mix(wetTable['tmax-spread-ratio-winter'], wetTable['tmax-spread-ratio-summer'], w);
    const tminRatio = mix(wetTable['tmin-spread-ratio-winter'], wetTable['tmin-spread-ratio-summer'], w);
    const sunRatio = mix(wetTable['radiation-ratio-winter'], wetTable['radiation-ratio-summer'], w);
    const dryTmaxSdC = drySd(spread.tmaxSdC, tmaxRiseC, tmaxRatio);
    const dryTminSdC = drySd(spread.tminSdC, tminRiseC, tminRatio);
    const dryClearness = outer[s]! <= 0 ? 0 : radiation[s]! / outer[s]! / (1 - f + f * sunRatio);
    for (const kind of [dry, wet]) {
      const isWet = kind === wet;
      const above = isWet ? 1 - f : -f;
      const tmaxSd = dryTmaxSdC * (isWet ? tmaxRatio : 1);
      const tminSd = dryTminSdC * (isWet ? tminRatio : 1);
      const tmax = tmaxC[s]! + above * tmaxRiseC;
      const tmin = tminC[s]! + above * tminRiseC;
      const rangeSd = Math.sqrt(tmaxSd * tmaxSd + tminSd * tminSd - 2 * spread.correlation * tmaxSd * tminSd);
      const wantedRangeC = Math.max(wetTable['least-daily-range-c'] + 0.3, tmax - tmin);
      const drawnRangeC = locationForClippedMean(
        wantedRangeC,
        rangeSd,
        wetTable['least-daily-range-c'],
        Number.POSITIVE_INFINITY,
      );
      const shiftC = (wantedRangeC - drawnRangeC) / 2;
      kind.tmaxC[s] = tmax - shiftC;
      kind.tminC[s] = tmin + shiftC;
      kind.tmaxSdC[s] = tmaxSd;
      kind.tminSdC[s] = tminSd;
      kind.clearness[s] = locationForClippedMean(
        dryClearness * (isWet ? sunRatio : 1),
        wetTable['clearness-sd'],
        bounds[s]!.overcastShare,
        bounds[s]!.clearShare,
      );
    }
  }
  return {
    rain,
    dry,
    wet,
    clearnessSd: wetTable['clearness-sd'],
    leastRangeC: wetTable['least-daily-range-c'],
    outerMJPerM2Day: outer,
    overcastShare: Float64Array.from(bounds, (b) => b.overcastShare),
    clearShare: Float64Array.from(bounds, (b) => b.clearShare),
    autoregression,
  };
}
