/** A sowing of the plan as every part of the report reads it. */
import type { Week } from '@twelvemonth/basis';
import type { SowingPlan, SowingRun } from '@twelvemonth/growing';
import type {
  BenchUse,
  BrokenRest,
  GuestPlanting,
  KitId,
  KitUse,
  MinutesByAct,
  Placement,
  StandingCrop,
} from '@twelvemonth/planning';

export interface ChosenSowing {
  readonly id: string;
  readonly number: number;
  readonly state: 'done' | 'firm' | 'draft';
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
  readonly placements: readonly Placement[];
  readonly runs: readonly SowingRun[];
  readonly standing: StandingCrop | null;
  /** Work by week index as the program reckoned it; absent where no scenarios were at hand. */
  readonly minutesByAct?: MinutesByAct;
  /** Strips on which its family is back too soon. */
  readonly rests?: readonly BrokenRest[];
  /** Kit that lies on it, by weeks, and kit that there was not enough of. */
  readonly kit?: readonly KitUse[];
  readonly withoutKit?: readonly KitId[];
  /** Planted between others before its ground is its own. */
  readonly guestOf?: GuestPlanting;
}
