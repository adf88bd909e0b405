/** Climate stations that come with the program: published monthly normals with their source (tables/stations.csv). */
import { stationsTable } from '../generated/stations.ts';
import type { MonthlyNormals, Site } from './climate.ts';

export interface Station {
  readonly id: string;
  readonly name: string;
  readonly site: Site;
  readonly normals: MonthlyNormals;
  readonly source: string;
}

const stations: ReadonlyMap<string, Station> = new Map(
  stationsTable.map((row) => [
    row.id,
    {
      id: row.id,
      name: row.name,
      site: {
        latitudeDeg: row.latitudeDeg,
        longitudeDeg: row.longitudeDeg,
        elevationM: row.elevationM,
        coastal: row.coastal,
      },
      normals: {
        tmaxC: row.tmaxC,
        tminC: row.tminC,
        rainMm: row.rainMm,
        sunHours: row.sunHours,
        radiationMJPerM2Day: row.radiationMJPerM2Day,
        wetDaysCount: row.wetDaysCount,
      },
      source: row.source,
    },
  ]),
);

export const stationIds: readonly string[] = [...stations.keys()];
export const stationById = (id: string): Station | null => stations.get(id) ?? null;
