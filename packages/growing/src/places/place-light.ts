/**
 * Light that reaches the plants of a place, MJ/m²/day.
 *
 *   inside = t · a · Rs · (d + (1 − d)(1 − h))
 *
 * Rs global radiation outdoors · d its diffuse share, from the day's clearness Rs/Ra, a straight line between dull and
 * clear days after Collares-Pereira & Rabl 1979 · h share of the direct beam that a hedge or neighbour hides while the
 * noon sun is low · a slope of the ground · t transmission of the cover by material and age, or the share of outdoor
 * light that a windowsill gets by the way it faces and the height of the noon sun.
 */
import { coversTable } from '../generated/covers.ts';
import type { CoverInstance, Exposure } from './place.ts';

const clip = (value: number): number => Math.min(1, Math.max(0, value));
/** 0 where the noon sun is at 15° or lower, 1 at 60° or higher. */
const highSun = (noonAltitudeDeg: number): number => clip((noonAltitudeDeg - 15) / 45);

export function diffuseShare(clearness: number): number {
  const row = coversTable.diffuse;
  const dull = row['all-diffuse-below-clearness'];
  const clear = clip((clearness - dull) / (row['clear-from-clearness'] - dull));
  const [most, least] = [row['diffuse-share-when-dull'], row['diffuse-share-when-clear']];
  return most + clear * (least - most);
}

/** Share of the direct beam that is hidden at this height of the noon sun. */
export function hiddenBeamShare(winterSun: Exposure['winterSun'], noonAltitudeDeg: number): number {
  if (winterSun === 'all') return 0;
  const row = coversTable['winter-sun'];
  const low = clip(0.5 - (noonAltitudeDeg - row['hidden-below-deg']) / row['ramp-deg']);
  return winterSun === 'none' ? low : low * row['half-share'];
}

export function aspectFactor(aspect: Exposure['aspect'], noonAltitudeDeg: number): number {
  if (aspect === 'flat') return 1;
  const [low, high] = [coversTable.aspect[`${aspect}-low-sun`], coversTable.aspect[`${aspect}-high-sun`]];
  return low + highSun(noonAltitudeDeg) * (high - low);
}

/** Share of the light above it that a cover lets through to the plants. */
export function coverLightShare(cover: CoverInstance, noonAltitudeDeg: number): number {
  if (cover.material === 'open') return 1;
  if (cover.material === 'heated-mat') return coversTable['heated-mat']['light-share'];
  if (cover.material === 'windowsill') {
    const faces = cover.faces ?? 'east';
    const row = coversTable.windowsill;
    const [low, high] = [row[`light-share-${faces}-low-sun`], row[`light-share-${faces}-high-sun`]];
    return low + highSun(noonAltitudeDeg) * (high - low);
  }
  const row = coversTable[cover.material];
  return Math.max(
    row['transmission-least'],
    row['transmission-new'] - row['transmission-loss-per-year'] * Math.max(0, cover.ageYears),
  );
}

/** Light on the place before the cover: what slope and low winter sun leave of the outdoor light. */
export function openLightMJPerM2Day(
  exposure: Exposure,
  radiationMJPerM2Day: number,
  outerMJPerM2Day: number,
  noonAltitudeDeg: number,
): number {
  const hidden = hiddenBeamShare(exposure.winterSun, noonAltitudeDeg);
  const level = radiationMJPerM2Day * aspectFactor(exposure.aspect, noonAltitudeDeg);
  if (hidden === 0 || outerMJPerM2Day <= 0) return level;
  const diffuse = diffuseShare(radiationMJPerM2Day / outerMJPerM2Day);
  return level * (diffuse + (1 - diffuse) * (1 - hidden));
}
