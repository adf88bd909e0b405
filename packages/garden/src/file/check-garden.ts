import type { GardenPlace, StandingSowing } from '../records/garden.ts';
import type { FilePath, Report } from './issue-codes.ts';
import { nearestOf } from './nearest.ts';
import type { WrittenGarden } from './schema.ts';

/** What can be known about a garden without a catalogue: ids, what refers to what, declared ground. */
function checkIdsOnce(written: WrittenGarden, report: Report): void {
  for (const list of ['covers', 'places', 'standing', 'stock', 'ownKinds', 'wishes'] as const) {
    const first = new Map<string, number>();
    written[list].forEach(({ id }, index) => {
      if (id === undefined) return;
      const before = first.get(id);
      if (before === undefined) first.set(id, index);
      else report('id-twice', [list, index, 'id'], { id, first: `${list}[${before}]` });
    });
  }
}

function areaOf(place: GardenPlace): number | null {
  return place.use === 'bed' && place.lengthM !== null && place.widthM !== null
    ? place.lengthM * place.widthM
    : null;
}

function checkStanding(
  standing: readonly StandingSowing[],
  placesById: ReadonlyMap<string, GardenPlace>,
  knownPlace: (id: string, path: FilePath) => GardenPlace | null,
  report: Report,
): void {
  const declaredM2 = new Map<string, { sumM2: number; lastPath: FilePath }>();
  standing.forEach((each, index) => {
    if (each.plantInto !== null) knownPlace(each.plantInto, ['standing', index, 'plantInto']);
    const place = knownPlace(each.place, ['standing', index, 'place']);
    if (place === null) return;
    if (each.placeNumber !== null && each.placeNumber > place.count) {
      report('place-number-unknown', ['standing', index, 'number'], {
        found: each.placeNumber,
        most: place.count,
      });
    }
    if (each.groundM2 !== null && each.mayClearFrom === null) {
      const key = `${each.place} ${each.placeNumber ?? ''}`;
      const sumM2 = (declaredM2.get(key)?.sumM2 ?? 0) + each.groundM2;
      declaredM2.set(key, { sumM2, lastPath: ['standing', index, 'groundM2'] });
    }
  });
  for (const [key, { sumM2, lastPath }] of declaredM2) {
    const [id = '', number = ''] = key.split(' ');
    const place = placesById.get(id);
    const oneM2 = place === undefined ? null : areaOf(place);
    if (place === undefined || oneM2 === null) continue;
    const placeM2 = number === '' ? oneM2 * place.count : oneM2;
    if (sumM2 <= placeM2 * 1.01) continue;
    const detail = { groundM2: Math.round(sumM2 * 100) / 100, placeM2: Math.round(placeM2 * 100) / 100 };
    report('bed-over-full', lastPath, { place: number === '' ? id : `${id} ${number}`, ...detail });
  }
}

export function checkGarden(
  written: WrittenGarden,
  places: readonly GardenPlace[],
  standing: readonly StandingSowing[],
  report: Report,
): void {
  checkIdsOnce(written, report);
  if (places.length === 0) report('no-places', ['places'], {});
  const coverIds = new Set(written.covers.map((cover) => cover.id));
  const placesById = new Map(places.map((place) => [place.id, place]));
  places.forEach(({ cover }, index) => {
    if (cover === null || coverIds.has(cover)) return;
    report('cover-unknown', ['places', index, 'cover'], {
      found: cover,
      nearest: nearestOf(cover, coverIds),
    });
  });
  const knownPlace = (id: string, path: FilePath): GardenPlace | null => {
    const place = placesById.get(id) ?? null;
    if (place === null)
      report('place-unknown', path, { found: id, nearest: nearestOf(id, placesById.keys()) });
    return place;
  };
  checkStanding(standing, placesById, knownPlace, report);
  written.wishes.forEach(({ place: id, number }, index) => {
    if (id === undefined) return;
    const path = ['wishes', index, 'place'];
    const place = knownPlace(id, path);
    if (place !== null && place.takenBy !== null)
      report('place-taken', path, { place: id, takenBy: place.takenBy });
    if (place !== null && number !== undefined && number > place.count)
      report('place-number-unknown', ['wishes', index, 'number'], { found: number, most: place.count });
  });
}
