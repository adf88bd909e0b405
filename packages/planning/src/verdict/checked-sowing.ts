import type { Week } from '@twelvemonth/basis';
import type { SowingPlan, SowingRun } from '@twelvemonth/growing';
import type { GuestPlanting } from '../beds/interplant.ts';
import type { KitUse } from '../beds/kit-needs.ts';
import type { BrokenRest, Placement } from '../beds/strips.ts';
import type { BenchUse } from '../problem.ts';
import type { MinutesByAct } from '../work/minutes-by-week.ts';

/** A chosen sowing with what it claims to take and, where given, to yield in the members of the problem's context. */
export interface CheckedSowing {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
  readonly runs?: readonly SowingRun[];
  readonly placements?: readonly Placement[];
  readonly kit?: readonly KitUse[];
  readonly rests?: readonly BrokenRest[];
  /** Planted between others before its ground is its own. */
  readonly guestOf?: GuestPlanting;
  /** Work by week index, one row an act, as the planner reckoned it. */
  readonly minutesByAct?: MinutesByAct;
}
