import type { CropType } from '@twelvemonth/growing';

export interface ThreeNumbers {
  readonly sow: number;
  readonly plant: number;
  readonly keep: number;
}

/** What to sow so that so many stand, how many to plant (or thin to), how many to expect: seed ages are not counted here. */
export function threeNumbers(kind: CropType, plantsCount: number, raised: boolean): ThreeNumbers {
  const plant = Math.max(1, Math.round(plantsCount));
  const keep = Math.max(1, Math.round(plant * (1 - kind.growingLossShare)));
  if (kind.startsAs !== 'seed') return { sow: plant, plant, keep };
  const comesUp = kind.germinationShare * (raised ? 1 - kind.raisingLossShare : kind.fieldShare);
  const sow = Math.ceil((plant * kind.stationSeedsCount) / Math.max(0.05, comesUp));
  return { sow, plant, keep };
}
