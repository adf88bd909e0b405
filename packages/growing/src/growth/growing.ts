import type { Day } from '@twelvemonth/basis';
import type { CropType } from '../crops/crop-type.ts';
import type { Raised } from './raising.ts';

/** A sowing on its way in one member: what its harvests are asked of. */
export interface Growing {
  readonly kind: CropType;
  readonly raised: Raised;
  /** Sum for so many reference days at this member's pace, °C·d. */
  sumOf(referenceDays: number): number;
  lengthOfDay(day: Day): number;
  readonly southern: boolean;
}
