import type { GardenClimate, GardenSite } from '../records/garden.ts';
import { type Report, shown } from './issue-codes.ts';
import type { WrittenSite } from './schema-ground.ts';

/** A file beside this one or below it: no way out of the folder, no address. */
const besideFile = (path: string): boolean =>
  path !== '' && !/^[/\\]|:|\\|\0/.test(path) && !path.split('/').includes('..');

function readClimate(written: WrittenSite['climate'], report: Report): GardenClimate | null {
  const path = ['site', 'climate'];
  if (typeof written === 'string') return { kind: 'station', station: written };
  const { station, normals, dailyCsv } = written;
  const said = [station, normals, dailyCsv].filter((each) => each !== undefined);
  if (said.length !== 1) {
    report('climate-unclear', path, { found: Object.keys(written).join(', ') });
    return null;
  }
  if (station !== undefined) return { kind: 'station', station };
  if (dailyCsv !== undefined) {
    if (!besideFile(dailyCsv))
      report('csv-path-not-beside-file', [...path, 'dailyCsv'], { found: shown(dailyCsv) });
    return { kind: 'daily-csv', path: dailyCsv };
  }
  const months = normals ?? [];
  months.forEach(({ tmaxC, tminC }, index) => {
    if (tmaxC < tminC)
      report('normals-tmax-below-tmin', [...path, 'normals', index], { month: index + 1, tmaxC, tminC });
  });
  return { kind: 'normals', months };
}

export function readSite(written: WrittenSite, report: Report): GardenSite | null {
  const { latitude } = written;
  if (Math.abs(latitude) < 23.5 || Math.abs(latitude) > 66.6) {
    report('latitude-not-temperate', ['site', 'latitude'], { found: latitude });
  }
  const climate = readClimate(written.climate, report);
  if (climate === null) return null;
  return {
    name: written.name,
    latitudeDeg: latitude,
    longitudeDeg: written.longitude,
    elevationM: written.elevationM,
    coastal: written.coastal,
    climate,
  };
}
