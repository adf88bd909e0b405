/** Real weather as members: each begins on 1 January of a year of the record and runs for two. Nothing else is drawn. */
import { type Day, dayFromCivil, dayOfYear } from '../../packages/basis/src/index.ts';
import {
  blightSpellDays,
  type DailyWeather,
  dayLengthHours,
  type Exposure,
  type ForecastContext,
  type Member,
  type MonthlyNormals,
  makePlaceClock,
  type PlaceClock,
  placeWeather,
  type Site,
  weatherMembers,
} from '../../packages/growing/src/index.ts';

export const runYears = 2;

export interface WeatherYear {
  readonly year: number;
  readonly startDay: Day;
  readonly context: ForecastContext;
  readonly member: Member;
}

/** Years of the record that are followed by another whole one. */
export function yearsOf(record: DailyWeather): number[] {
  const endDay = record.startDay + record.tmaxC.length;
  const years: number[] = [];
  for (let year = 1800; year < 2300; year++)
    if (dayFromCivil(year, 1, 1) >= record.startDay && dayFromCivil(year + runYears, 1, 1) <= endDay)
      years.push(year);
  return years;
}

function cutOf(record: DailyWeather, startDay: Day, dayCount: number): DailyWeather {
  const from = startDay - record.startDay;
  const part = (values: Float64Array): Float64Array => values.slice(from, from + dayCount);
  return {
    startDay,
    tmaxC: part(record.tmaxC),
    tminC: part(record.tminC),
    rainMm: part(record.rainMm),
    radiationMJPerM2Day: part(record.radiationMJPerM2Day),
  };
}

/** The pace of every crop is the handbook's, no cover has an offset, no year is bad: only the weather differs. */
function memberOf(site: Site, outdoor: DailyWeather, exposures: ReadonlyMap<string, Exposure>): Member {
  const clocks = new Map<string, PlaceClock>();
  return {
    index: 0,
    outdoor,
    blightDays: blightSpellDays(outdoor),
    hazardYears: { isBad: () => false },
    clockOf: (key) => {
      const known = clocks.get(key);
      if (known !== undefined) return known;
      const clock = makePlaceClock(placeWeather(site, outdoor, exposures.get(key)!, 0));
      clocks.set(key, clock);
      return clock;
    },
    paceOf: () => 1,
    drawFor: () => 0,
  };
}

function asWeatherYear(
  site: Site,
  outdoor: DailyWeather,
  year: number,
  exposures: ReadonlyMap<string, Exposure>,
): WeatherYear {
  const { startDay } = outdoor;
  const dayCount = outdoor.tmaxC.length;
  const member = memberOf(site, outdoor, exposures);
  const lengthOfDay = (day: Day): number => dayLengthHours(site.latitudeDeg, dayOfYear(day));
  return {
    year,
    startDay,
    member,
    context: {
      site,
      purpose: 'check',
      exposures,
      members: [member],
      startDay,
      dayCount,
      away: [],
      lengthOfDay,
    },
  };
}

export function weatherYear(
  site: Site,
  record: DailyWeather,
  year: number,
  exposures: ReadonlyMap<string, Exposure>,
): WeatherYear {
  const startDay = dayFromCivil(year, 1, 1);
  const dayCount = dayFromCivil(year + runYears, 1, 1) - startDay;
  return asWeatherYear(site, cutOf(record, startDay, dayCount), year, exposures);
}

/** Drawn years, as a household without a daily record near it has them: from twelve normals. */
export function generatedYears(
  site: Site,
  normals: MonthlyNormals,
  count: number,
  exposures: ReadonlyMap<string, Exposure>,
): WeatherYear[] {
  const year = 2001;
  const startDay = dayFromCivil(year, 1, 1);
  const dayCount = dayFromCivil(year + runYears, 1, 1) - startDay;
  const source = { kind: 'normals', normals } as const;
  const request = {
    site,
    source,
    seed: 1,
    purpose: 'check',
    memberCount: count,
    startDay,
    dayCount,
  } as const;
  return weatherMembers(request).map((outdoor) => asWeatherYear(site, outdoor, year, exposures));
}
