import { type Day, dayOfYear, invariant, isoFromDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import {
  type DailyWeather,
  dayLengthHours,
  type Exposure,
  type ForecastContext,
  kindById,
  makePlaceClock,
  placeWeather,
  standstillPeriod,
  stationById,
} from '@twelvemonth/growing';
import { frostDays } from './climate/frost-days.ts';
import { MonthMeans, monthsOfDays } from './climate/month-means.ts';
import { contextOf } from './problem/build-problem.ts';
import { exposureKey, exposureOf, openGround } from './problem/exposures.ts';
import type { ClimateReport } from './report/forecast-report.ts';

type Month = ClimateReport['months'][number];
type PlaceMonth = Month['places'][number];

/** The kind whose growth stands for how fast cool crops grow. */
const growthKind = 'spinach-overwintering';
/** Two years in each member: one before the day asked about, one after. */
const halfSpanDays = 365;
const monthLengthDays = 365.25 / 12;
const plainGround: Exposure = {
  cover: openGround,
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
};

interface Span {
  readonly context: ForecastContext;
  /** Index into the weather of the first day looked at. */
  readonly offset: number;
  readonly months: Uint8Array;
}

function means<Name extends string>(span: Span, names: readonly Name[]): Record<Name, MonthMeans> {
  return Object.fromEntries(names.map((name) => [name, new MonthMeans(span.months)])) as Record<
    Name,
    MonthMeans
  >;
}

const outdoorNames = ['tmaxC', 'tminC', 'rainMm', 'radiationMJPerM2Day', 'frost', 'dayLengthHours'] as const;
const placeNames = ['tmaxC', 'tminC', 'radiationMJPerM2Day', 'soilC', 'growth', 'frost'] as const;

function outdoorMeans({ context, offset, months }: Span): Record<(typeof outdoorNames)[number], MonthMeans> {
  const sums = means({ context, offset, months }, outdoorNames);
  for (const { outdoor } of context.members) {
    for (const name of ['tmaxC', 'tminC', 'rainMm', 'radiationMJPerM2Day'] as const)
      sums[name].addDays((i) => outdoor[name][offset + i]!);
    sums.frost.addDays((i) => (outdoor.tminC[offset + i]! < 0 ? 1 : 0));
  }
  const lengths = Array.from({ length: months.length }, (_, i) =>
    dayLengthHours(context.site.latitudeDeg, dayOfYear(context.startDay + offset + i)),
  );
  sums.dayLengthHours.addDays((i) => lengths[i]!);
  return sums;
}

/** The weather of a place as the tables have it, without the unknown offset that members draw. */
function placeMeans(span: Span, exposure: Exposure): Record<(typeof placeNames)[number], MonthMeans> {
  const { context, offset } = span;
  const kind = kindById(growthKind);
  invariant(kind !== undefined, 'the catalogue has the kind that stands for cool crops', { growthKind });
  const sums = means(span, placeNames);
  for (const { outdoor } of context.members) {
    const weather = placeWeather(context.site, outdoor, exposure, 0);
    const growth = makePlaceClock(weather).growth(kind);
    for (const name of ['tmaxC', 'tminC', 'radiationMJPerM2Day', 'soilC'] as const)
      sums[name].addDays((i) => weather[name][offset + i]!);
    sums.growth.addDays((i) => growth[offset + i + 1]! - growth[offset + i]!);
    sums.frost.addDays((i) => (weather.tminC[offset + i]! < 0 ? 1 : 0));
  }
  return sums;
}

interface Place {
  readonly key: string;
  readonly exposure: Exposure;
  readonly names: readonly string[];
}

/** Uncovered level ground first, then each different weather in the order of the file: wet ground has no other. */
function placesOf(garden: Garden): Place[] {
  const places = new Map<string, { key: string; exposure: Exposure; names: string[] }>();
  places.set(exposureKey(plainGround), { key: exposureKey(plainGround), exposure: plainGround, names: [] });
  for (const place of garden.places) {
    const exposure = { ...exposureOf(garden, place), wet: false };
    const key = exposureKey(exposure);
    const known = places.get(key);
    if (known === undefined) places.set(key, { key, exposure, names: [place.name] });
    else known.names.push(place.name);
  }
  return [...places.values()];
}

/** 'normals' and 'daily-csv' where the file brings its own climate. */
function stationName(garden: Garden): string {
  const { climate } = garden.site;
  if (climate.kind !== 'station') return climate.kind;
  return stationById(climate.station)?.name ?? climate.station;
}

function standstillAt(context: ForecastContext, fromDay: Day): ClimateReport['standstill'] {
  const { shortDays } = standstillPeriod(context.site);
  if (shortDays === null) return null;
  let to = fromDay;
  while (dayOfYear(to) !== shortDays.toDayOfYear) to++;
  return { from: isoFromDay(to - shortDays.days + 1), to: isoFromDay(to) };
}

/** The site's year as members have it: monthly means outdoors and in each kind of place, frosts, standstill. */
export function climateOfGarden(
  garden: Garden,
  asked: { readonly memberCount: number; readonly seed: number; readonly fromDay: Day },
  daily: DailyWeather | null,
): ClimateReport {
  const { fromDay } = asked;
  const context = contextOf(garden, daily, 'plan', { ...asked, weeks: 52 });
  invariant(context !== null, 'a garden whose climate cannot be told is refused by its issues first', {
    climate: garden.site.climate.kind,
  });
  const span: Span = {
    context,
    offset: fromDay - halfSpanDays - context.startDay,
    months: monthsOfDays(fromDay - halfSpanDays, 2 * halfSpanDays),
  };
  const outdoors = outdoorMeans(span);
  const places = placesOf(garden).map((place) => ({ ...place, means: placeMeans(span, place.exposure) }));
  const months = Array.from(
    { length: 12 },
    (_, month): Month => ({
      month: month + 1,
      dayLengthHours: outdoors.dayLengthHours.meanOf(month),
      tmaxC: outdoors.tmaxC.meanOf(month),
      tminC: outdoors.tminC.meanOf(month),
      rainMm: outdoors.rainMm.meanOf(month) * monthLengthDays,
      radiationMJPerM2Day: outdoors.radiationMJPerM2Day.meanOf(month),
      frostNights: outdoors.frost.meanOf(month) * monthLengthDays,
      places: places.map(
        ({ key, names, means: own }): PlaceMonth => ({
          exposure: key,
          placeNames: names,
          tmaxC: own.tmaxC.meanOf(month),
          tminC: own.tminC.meanOf(month),
          radiationMJPerM2Day: own.radiationMJPerM2Day.meanOf(month),
          soilC: own.soilC.meanOf(month),
          growth: own.growth.meanOf(month),
          frostNights: own.frost.meanOf(month) * monthLengthDays,
        }),
      ),
    }),
  );
  return {
    schemaVersion: 1,
    site: garden.site.name,
    station: stationName(garden),
    months,
    standstill: standstillAt(context, fromDay),
    frost: frostDays(context, fromDay),
  };
}
