import type { Garden, GardenCover, GardenPlace } from '@twelvemonth/garden';
import type { CoverInstance, Exposure } from '@twelvemonth/growing';

export const openGround: CoverInstance = {
  id: 'open',
  material: 'open',
  ageYears: 0,
  ventAboveC: null,
  faces: null,
};

function coverOf(garden: Garden, place: GardenPlace): CoverInstance {
  const cover: GardenCover | undefined = garden.covers.find((c) => c.id === place.cover);
  if (cover === undefined) return openGround;
  const { id, material, ageYears, ventAboveC, faces } = cover;
  return { id, material, ageYears, ventAboveC, faces };
}

export function exposureOf(garden: Garden, place: GardenPlace): Exposure {
  const { winterSun, aspect, frostPocket, wet, windy } = place;
  const cover = coverOf(garden, place);
  const watered = place.watered || (cover.material !== 'open' && cover.material !== 'fleece');
  return { cover, winterSun, aspect, frostPocket, wet, windy, watered };
}

/** Places with the same key have the same weather. */
export function exposureKey(exposure: Exposure): string {
  const { cover, winterSun, aspect, frostPocket, wet, windy, watered } = exposure;
  const flags = [frostPocket && 'frost', wet && 'wet', windy && 'windy', !watered && 'dry'].filter(
    (f) => f !== false,
  );
  return [cover.id, winterSun, aspect, ...flags].join('/');
}

export function exposuresOf(garden: Garden): Map<string, Exposure> {
  return new Map(
    garden.places.map((place) => {
      const exposure = exposureOf(garden, place);
      return [exposureKey(exposure), exposure];
    }),
  );
}
