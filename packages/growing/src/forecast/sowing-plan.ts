import type { Day, Week } from '@twelvemonth/basis';
import type { CropType, KitchenRole, RouteId, StoreId } from '../crops/crop-type.ts';

/** A stage of raising on a bench, with the key of its exposure (see ForecastContext). */
export interface RaisingStage {
  readonly stage: 'mat' | 'sill' | 'bench' | 'frame';
  readonly exposure: string;
}

/** Who looks after the place where it grows, as far as that decides what is had of it. */
export interface PlaceCare {
  readonly visitsPerWeek: number;
  /** A tub has no ground to draw on. */
  readonly inTub: boolean;
}

/** One sowing as the engine needs it: what, when, through which places, until when. */
export interface SowingPlan {
  readonly id: string;
  readonly kind: CropType;
  readonly route: RouteId;
  /** Day of sowing; of planting for sets, cloves, tubers, crowns. `startSpreadDays`: vague dates, uniform around it. */
  readonly startDay: Day;
  readonly startSpreadDays: number;
  /** Benches on the way; empty: straight into the ground (or tray). */
  readonly stages: readonly RaisingStage[];
  /** Exposure of the place where it grows. */
  readonly exposure: string;
  /** Day from which its ground is free; null: planted out as soon as it is fit. */
  readonly plantDay: Day | null;
  /** Planned end: what has not been taken by then is lifted, stored or lost; null: until it ends by itself. */
  readonly clearDay: Day | null;
  /** Stations planted (or thinned to). */
  readonly plantsCount: number;
  /** The plants stand already and were counted: no seed can fail any more. */
  readonly counted?: boolean;
  /** Nobody noted when it was sown, `startDay` is a guess: taken as set out when fit, neither checked nor drawn up. */
  readonly startDayGuessed?: boolean;
  /** Perennials: when they were planted, however long ago; absent or null: long established. */
  readonly plantedDay?: Day | null;
  readonly protection: readonly ('mesh' | 'net' | 'fleece')[];
  /** The household keeps seed, cloves or tubers of it for the next planting: that share of the harvest is not eaten. */
  readonly keepsSeed?: boolean;
  /** Absent: somebody comes by nearly every day, and it is no tub. */
  readonly care?: PlaceCare;
}

/** Where a glut of it may go before it spoils. */
export interface PutBy {
  readonly store: StoreId;
  readonly lifeWeeks: number;
  readonly lossPerWeekShare: number;
}

/** Servings that can be eaten between two weeks, both inclusive, from one harvest of one sowing in one member. */
export interface Lot {
  readonly source: string;
  readonly kind: string;
  readonly role: KitchenRole;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly servings: number;
  readonly lossPerWeekShare: number;
  readonly form: 'fresh' | 'standing' | 'store';
  readonly store: StoreId | null;
  /** Week from which it takes room in its store; null: never. Standing crops are lifted when their ground is cleared. */
  readonly storeFromWeek: Week | null;
  /** Weight of a serving as it is kept, g. */
  readonly keptGPerServing: number;
  /** Freezer or jar for what would spoil; null: none, or the household has neither. */
  readonly putBy: PutBy | null;
  readonly bolted: boolean;
}

export interface HarvestRun {
  readonly id: string;
  readonly role: KitchenRole;
  /** NEVER when it does not come; `reason` says why. */
  readonly firstDay: Day;
  readonly lastDay: Day;
  readonly servings: number;
  readonly reason: HarvestReason | null;
}

export type HarvestReason =
  | 'never-emerges'
  | 'not-ready-in-time'
  | 'not-ready-before-cleared'
  | 'ran-to-seed'
  | 'killed-by-frost'
  | 'plant-gone'
  | 'still-establishing';

export interface SowingRun {
  readonly startDay: Day;
  readonly emergenceDay: Day;
  /** Share of the seed that came up at the warmth it met, against its best temperature; 1 for sets and the like. */
  readonly germinatingShare: number;
  /** Yield left after waiting in pots, and after raising in too little light; 1 where it did neither. */
  readonly keptYieldShare: number;
  readonly sturdyYieldShare: number;
  /** Day in the ground: planting out, or sowing when sown in place. */
  readonly groundDay: Day;
  /** Day on which the ground is free again. */
  readonly clearDay: Day;
  readonly harvests: readonly HarvestRun[];
  readonly boltedShare: number;
  readonly frostedShare: number;
  readonly lostShare: number;
  /** Nitrogen that the ground has from it when it is cleared, tops and roots left there; 0 for all but legumes. */
  readonly nitrogenLeftGPerM2: number;
  readonly lots: readonly Lot[];
}
