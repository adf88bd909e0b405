import type { Garden } from '@twelvemonth/garden';
import {
  type ClimateSource,
  type DailyWeather,
  type MonthlyNormals,
  type Site,
  stationById,
} from '@twelvemonth/growing';

export function siteOf(garden: Garden): Site {
  const { latitudeDeg, longitudeDeg, elevationM, coastal } = garden.site;
  return { latitudeDeg, longitudeDeg, elevationM, coastal };
}

/** The site's normals: a station's, or the file's own twelve rows; null when it brings daily records. */
export function normalsOf(garden: Garden): MonthlyNormals | null {
  const { climate } = garden.site;
  if (climate.kind === 'station') return stationById(climate.station)?.normals ?? null;
  if (climate.kind === 'daily-csv') return null;
  return {
    tmaxC: climate.months.map((m) => m.tmaxC),
    tminC: climate.months.map((m) => m.tminC),
    rainMm: climate.months.map((m) => m.rainMm),
    sunHours: climate.months.map((m) => m.sunHours),
    radiationMJPerM2Day: climate.months.map((m) => m.radiationMJPerM2Day),
    wetDaysCount: climate.months.map((m) => m.wetDaysCount),
  };
}

/** Null when there is neither a known station, nor normals, nor a record. */
export function climateSourceOf(garden: Garden, daily: DailyWeather | null): ClimateSource | null {
  if (daily !== null) return { kind: 'daily', record: daily };
  const normals = normalsOf(garden);
  return normals === null ? null : { kind: 'normals', normals };
}
