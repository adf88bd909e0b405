/**
 * The weather that plants have in one place, from the outdoor weather and what decides the place's exposure: light
 * (place-light.ts), air under covers (cover-balance.ts), rooms, frost pockets, soil, water and hardening.
 */

import type { DailyWeather, Site } from '../climate/climate.ts';
import { hargreavesEt0Mm } from '../climate/evapotranspiration.ts';
import { soilTemperatureC } from '../climate/soil-temperature.ts';
import { slotsFrom } from '../climate/year-slots.ts';
import { coversTable } from '../generated/covers.ts';
import { coverBalance } from './cover-balance.ts';
import { waterShares, workableDays } from './ground-water.ts';
import { hardenedShares } from './hardening.ts';
import type { CoverMaterial, Exposure, PlaceWeather } from './place.ts';
import { coverLightShare, openLightMJPerM2Day } from './place-light.ts';
import { yearSun } from './year-sun.ts';

const isRoom = (material: CoverMaterial): material is 'windowsill' | 'heated-mat' =>
  material === 'windowsill' || material === 'heated-mat';

function sevenDayMeans(values: Float64Array): Float64Array {
  const means = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const from = Math.max(0, i - 6);
    let sum = 0;
    for (let k = from; k <= i; k++) sum += values[k]!;
    means[i] = sum / (i - from + 1);
  }
  return means;
}

function pocketMinimumC(tmaxC: number, tminC: number): number {
  const row = coversTable['frost-pocket'];
  const clearC = Math.max(0, tmaxC - tminC - row['from-daily-range-c']);
  return tminC - Math.min(row['cooling-most-c'], row['cooling-share'] * clearC);
}

interface Air {
  readonly tmaxC: Float64Array;
  readonly tminC: Float64Array;
}

function roomAir(material: 'windowsill' | 'heated-mat', outdoor: DailyWeather, light: Float64Array): Air {
  const row = coversTable[material];
  const liftC = material === 'windowsill' ? coversTable.windowsill['sun-lift-c-per-mj'] : 0;
  return {
    tmaxC: outdoor.tmaxC.map((t, i) => Math.max(row['room-tmax-c'], t) + liftC * light[i]!),
    tminC: outdoor.tminC.map((t) => Math.max(row['room-tmin-c'], t)),
  };
}

function placeAir(
  outdoor: DailyWeather,
  exposure: Exposure,
  light: Float64Array,
  daylightHours: ArrayLike<number>,
): Air {
  const { material, ventAboveC } = exposure.cover;
  if (isRoom(material)) return roomAir(material, outdoor, light);
  const minimum = exposure.frostPocket
    ? outdoor.tminC.map((tmin, i) => pocketMinimumC(outdoor.tmaxC[i]!, tmin))
    : outdoor.tminC;
  if (material === 'open') return { tmaxC: outdoor.tmaxC.slice(), tminC: minimum.slice() };
  const balance = coverBalance(material, ventAboveC, exposure.windy);
  return {
    tmaxC: outdoor.tmaxC.map((tmax, i) => balance.maximumC(tmax, light[i]!, daylightHours[i]!)),
    tminC: minimum.map((tmin, i) => balance.minimumC(tmin, light[Math.max(0, i - 1)]!)),
  };
}

function soilOf(exposure: Exposure, air: Air, light: Float64Array): Float64Array {
  const { material } = exposure.cover;
  if (material === 'heated-mat') return air.tminC.map(() => coversTable['heated-mat']['compost-c']);
  if (material === 'windowsill') {
    const aboveC = coversTable.windowsill['soil-above-mean-c'];
    return air.tminC.map((tmin, i) => (tmin + air.tmaxC[i]!) / 2 + aboveC);
  }
  return soilTemperatureC(air.tmaxC, air.tminC, light);
}

type WaterShares = Pick<PlaceWeather, 'waterShare' | 'middleWaterShare' | 'deepWaterShare'>;

function noShortage(count: number): WaterShares {
  const all = new Float64Array(count).fill(1);
  return { waterShare: all, middleWaterShare: all, deepWaterShare: all };
}

const rainfed = (rainMm: Float64Array, et0Mm: Float64Array): WaterShares => ({
  waterShare: waterShares('shallow', rainMm, et0Mm),
  middleWaterShare: waterShares('middle', rainMm, et0Mm),
  deepWaterShare: waterShares('deep', rainMm, et0Mm),
});

export function placeWeather(
  site: Site,
  outdoor: DailyWeather,
  exposure: Exposure,
  coverOffsetC: number,
): PlaceWeather {
  const { startDay } = outdoor;
  const count = outdoor.tmaxC.length;
  const { material } = exposure.cover;
  const slots = slotsFrom(startDay, count);
  const sun = yearSun(site.latitudeDeg);
  const covered = sun.noonAltitudeDeg.map((altitude) => coverLightShare(exposure.cover, altitude));
  const light = new Float64Array(count);
  const et0Mm = new Float64Array(count);
  const daylightHours = new Float64Array(count);
  const dryingFactor = exposure.windy && material === 'open' ? coversTable.windy['evaporation-factor'] : 1;
  for (let i = 0; i < count; i++) {
    const slot = slots[i]!;
    const outer = sun.outerMJPerM2Day[slot]!;
    const open = openLightMJPerM2Day(
      exposure,
      outdoor.radiationMJPerM2Day[i]!,
      outer,
      sun.noonAltitudeDeg[slot]!,
    );
    light[i] = open * covered[slot]!;
    daylightHours[i] = sun.daylightHours[slot]!;
    et0Mm[i] = hargreavesEt0Mm(outdoor.tmaxC[i]!, outdoor.tminC[i]!, outer) * covered[slot]! * dryingFactor;
  }
  const air = placeAir(outdoor, exposure, light, daylightHours);
  if (coverOffsetC !== 0) {
    for (let i = 0; i < count; i++) {
      air.tmaxC[i] = air.tmaxC[i]! + coverOffsetC;
      air.tminC[i] = air.tminC[i]! + coverOffsetC;
    }
  }
  for (let i = 0; i < count; i++) air.tminC[i] = Math.min(air.tminC[i]!, air.tmaxC[i]!);
  const soilC = soilOf(exposure, air, light);
  const rainShare = material === 'open' ? 1 : isRoom(material) ? 0 : coversTable[material]['rain-share'];
  const rainMm = rainShare === 1 ? outdoor.rainMm : outdoor.rainMm.map((rain) => rain * rainShare);
  return {
    startDay,
    tmaxC: air.tmaxC,
    tminC: air.tminC,
    radiationMJPerM2Day: light,
    radiation7MJPerM2Day: sevenDayMeans(light),
    soilC,
    ...(exposure.watered || isRoom(material) ? noShortage(count) : rainfed(rainMm, et0Mm)),
    hardenedShare: hardenedShares(air.tmaxC, air.tminC),
    workableDay: workableDays(startDay, rainMm, et0Mm, soilC, exposure.wet),
  };
}
