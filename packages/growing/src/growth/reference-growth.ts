import type { CropType } from '../crops/crop-type.ts';
import { effectiveDayDegrees } from './light-limited-heat.ts';

const cache = new WeakMap<CropType, number>();

/** Effective day-degrees of one reference day of a kind, °C·d: turns handbook days into sums. */
export function referenceDayCDays(kind: CropType): number {
  let value = cache.get(kind);
  if (value === undefined) {
    const heat = Math.min(kind.referenceC, kind.growthOptimumC) - kind.growthBaseC;
    value = effectiveDayDegrees(
      heat,
      kind.referenceMJPerM2Day,
      kind.lightFactor,
      kind.lightCompensationMJPerM2Day,
    );
    cache.set(kind, value);
  }
  return value;
}
