import type { Garden, GardenPlace } from '@twelvemonth/garden';
import { allFamilies, type Exposure, type GrowsIn, seldomVisitsPerWeek } from '@twelvemonth/growing';
import { type Bed, type Bench, benchGrain, type GroundClass, type PastCrop } from '@twelvemonth/planning';
import { kindOf } from '../kinds/garden-kinds.ts';
import { exposureKey, exposureOf } from './exposures.ts';

/** A strip is half a metre of a bed. */
const stripLengthM = 0.5;
/** A seed tray, m². */
export const trayM2 = 0.2;

export function benchAreaM2(place: GardenPlace): number {
  const each =
    place.traysCount !== null ? place.traysCount * trayM2 : (place.lengthM ?? 0) * (place.widthM ?? 0);
  return each * place.count;
}

function benchStage(garden: Garden, place: GardenPlace): Bench['stage'] {
  const material = exposureOf(garden, place).cover.material;
  if (material === 'heated-mat') return 'mat';
  if (material === 'windowsill') return 'sill';
  return material === 'cold-frame' || material === 'cloche' ? 'frame' : 'bench';
}

export function benchesOf(garden: Garden): Bench[] {
  return garden.places
    .filter((place) => place.use === 'bench' && place.takenBy === null)
    .map((place) => ({
      id: place.id,
      stage: benchStage(garden, place),
      exposure: exposureKey(exposureOf(garden, place)),
      // A bench that is given in trays holds them, whatever a tray is rounded to.
      capacityM2:
        place.traysCount === null ? benchAreaM2(place) : benchGrain(trayM2) * place.traysCount * place.count,
      place: place.id,
      placeName: place.name,
    }));
}

function growsIn(garden: Garden, place: GardenPlace): GrowsIn | null {
  const material = exposureOf(garden, place).cover.material;
  if (place.use === 'tub') return 'tub';
  if (place.use === 'bench')
    return material === 'windowsill' ? 'sill' : material === 'cold-frame' ? 'frame' : null;
  if (material === 'polytunnel' || material === 'glass') return 'cover';
  return material === 'cold-frame' ? 'frame' : 'open';
}

/** Families whose disease is on record: banned, or grown all the same. */
function recordedFamilies(place: GardenPlace, grownAnyway: boolean): string[] {
  return allFamilies()
    .filter(({ recordedDisease: disease }) => disease !== null && place.onRecord.includes(disease))
    .filter(({ recordedDisease: disease }) => place.growAnyway.includes(disease!) === grownAnyway)
    .map((family) => family.id);
}

/** Kinds that the catalogue does not know are reported elsewhere and passed over here. */
function pastOf(garden: Garden, place: GardenPlace): PastCrop[] {
  return place.grewBefore.flatMap(({ kind, year, number }) => {
    const family = kindOf(garden, kind)?.family;
    return family === undefined ? [] : [{ family, place: place.id, placeNumber: number, year }];
  });
}

/** Places of one class share what decides most: cover, winter sun, frost, water. The class takes the weather of the
 * place that brings most strips; slope, wind and wetness between like places are passed over. */
function poolKey(exposure: Exposure): string {
  const { cover, winterSun, frostPocket, watered } = exposure;
  return [cover.id, winterSun, ...(frostPocket ? ['frost'] : []), ...(watered ? [] : ['dry'])].join('/');
}

/** Before what tells a class of resting beds from the like that does not rest. */
export const restMark = '|rest-';

/** Beds that rest are a class of their own: all its strips are closed at once, so no sowing is in the way of another. */
function restKey(garden: Garden, place: string, number: number): string {
  const rests = garden.wishes.flatMap((wish) =>
    wish.wish === 'rest' && wish.place === place && (wish.placeNumber ?? number) === number
      ? [`${restMark}${wish.fromDay}-${wish.toDay ?? ''}`]
      : [],
  );
  return rests.join('');
}

export interface PlaceStrips {
  readonly stripM2: number;
  readonly stripLitres: number;
  /** Strips in one of the like places. */
  readonly stripCount: number;
}

export function stripsOf(place: GardenPlace): PlaceStrips {
  if (place.use === 'tub') return { stripM2: 0.12, stripLitres: place.litres ?? 10, stripCount: 1 };
  if (place.use === 'bench') {
    const trays = Math.floor(benchAreaM2(place) / place.count / trayM2 + 1e-9);
    return { stripM2: trayM2, stripLitres: 0, stripCount: trays };
  }
  const width = place.widthM ?? 1;
  return {
    stripM2: Math.round(width * stripLengthM * 100) / 100,
    stripLitres: 0,
    stripCount: Math.max(1, Math.floor((place.lengthM ?? 1) / stripLengthM + 1e-9)),
  };
}

/** Like places pooled into classes; benches that can carry a crop for life share their space with raising. */
export function groundOf(garden: Garden, benches: readonly Bench[]): GroundClass[] {
  const classes = new Map<string, GroundClass & { beds: Bed[] }>();
  const mostStrips = new Map<string, number>();
  for (const place of garden.places) {
    const inside = growsIn(garden, place);
    if (inside === null || place.takenBy !== null) continue;
    const exposure = exposureKey(exposureOf(garden, place));
    const banned = recordedFamilies(place, false);
    const recorded = recordedFamilies(place, true);
    const past = pastOf(garden, place);
    const strips = stripsOf(place);
    const often = place.visitsPerWeek > seldomVisitsPerWeek;
    const like = [poolKey(exposureOf(garden, place)), inside, strips.stripM2, strips.stripLitres, ...banned]
      .concat(recorded.map((family) => `${family}?`))
      .concat(often ? [] : [`seldom-${Math.round(place.visitsPerWeek)}`])
      .join('|');
    const bench = place.use === 'bench' ? benches.findIndex((b) => b.place === place.id) : -1;
    for (let number = 1; number <= place.count; number++) {
      const rest = restKey(garden, place.id, number);
      const id = like + rest;
      let ground = classes.get(id);
      if (ground === undefined) {
        ground = {
          id,
          exposure,
          growsIn: inside,
          stripM2: strips.stripM2,
          stripLitres: strips.stripLitres,
          beds: [],
          stripCount: 0,
          bannedFamilies: banned,
          visitsPerWeek: place.visitsPerWeek,
          bench: bench >= 0 ? bench : null,
          recordedFamilies: recorded,
          past: [],
          ...(rest === '' ? {} : { closed: [] }),
        };
        classes.set(id, ground);
      }
      ground.beds.push({
        place: place.id,
        placeName: place.name,
        number,
        of: place.count,
        area: place.area,
        stripCount: strips.stripCount,
      });
      const there = ground.beds.filter((bed) => bed.place === place.id).length;
      const leads = there * strips.stripCount > (mostStrips.get(id) ?? 0);
      if (leads) mostStrips.set(id, there * strips.stripCount);
      const shared = leads ? exposure : ground.exposure;
      classes.set(id, {
        ...ground,
        exposure: shared,
        stripCount: ground.stripCount + strips.stripCount,
        past: there === 1 ? [...(ground.past ?? []), ...past] : (ground.past ?? []),
      });
    }
  }
  return [...classes.values()];
}
