import { type CropType, sownThickness, standShare } from '@twelvemonth/growing';
import type { DrawSeed } from './seed-tin.ts';

export interface ThreeNumbers {
  readonly sow: number;
  readonly plant: number;
  readonly keep: number;
  /** Of what is sown: from the tin; the rest is fresh. */
  readonly fromTin: number;
  /** Germination of that seed from the tin against fresh seed, 0–1; 1 where none is used. */
  readonly tinLeftShare: number;
}

/**
 * What to sow so that so many stand, how many to plant (or thin to), how many to expect. Ground too cold or too warm
 * is sown thicker, and leaves a thin stand where that is not enough; old seed from the tin is sown thicker, too.
 * `germinatingShare`: of the seed, at the warmth it meets, against its best (middle of the members).
 */
export function threeNumbers(
  kind: CropType,
  plantsCount: number,
  raised: boolean,
  germinatingShare: number,
  drawSeed: DrawSeed,
): ThreeNumbers {
  const plant = Math.max(1, Math.round(plantsCount));
  const stand = kind.startsAs === 'seed' ? standShare(germinatingShare) : 1;
  const keep = stand === 0 ? 0 : Math.max(1, Math.round(plant * stand * (1 - kind.growingLossShare)));
  const comesUp = kind.germinationShare * (raised ? 1 - kind.raisingLossShare : kind.fieldShare);
  const fresh =
    kind.startsAs === 'seed'
      ? (plant * kind.stationSeedsCount * sownThickness(germinatingShare)) / Math.max(0.05, comesUp)
      : plant;
  const { fromTin, bought, leftShare } = drawSeed(fresh);
  return { sow: fromTin + bought, plant, keep, fromTin, tinLeftShare: leftShare };
}
