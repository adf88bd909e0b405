/** What the planner is given: ground, benches, crops that stand, stock, appetite, and the members to plan with. */
import type { Day, Week } from '@twelvemonth/basis';
import type {
  Appetite,
  CropType,
  ForecastContext,
  GrowsIn,
  Lot,
  RaisingStage,
  RoleRow,
  RouteId,
  SowingPlan,
  StoreId,
} from '@twelvemonth/growing';

/** One of the like beds of a place, closed from a week up to another: it rests. */
export interface ClosedBed {
  readonly place: string;
  readonly number: number;
  readonly fromWeek: Week;
  readonly toWeek: Week;
}

/** Both ends inclusive. */
export interface DaySpan {
  readonly fromDay: Day;
  readonly toDay: Day;
}

export interface Bed {
  readonly place: string;
  readonly placeName: string;
  /** 1-based among the like places. */
  readonly number: number;
  /** How many like it there are. */
  readonly of: number;
  readonly area: string;
  readonly stripCount: number;
}

/**
 * Like places pooled: same cover instance, sun, soil, facts on record. Ground is counted in strips: half a metre of a
 * bed, or one tub. A strip holds `stripM2` of bed or `stripLitres` of tub.
 */
export interface GroundClass {
  readonly id: string;
  readonly exposure: string;
  readonly growsIn: GrowsIn;
  readonly stripM2: number;
  /** Tubs only; 0 for beds. */
  readonly stripLitres: number;
  readonly beds: readonly Bed[];
  readonly stripCount: number;
  readonly bannedFamilies: readonly string[];
  /** How often somebody comes by in a week: visited twice or less it grows no salad for tonight. */
  readonly visitsPerWeek: number;
  /** Beds that rest for some weeks. */
  readonly closed?: readonly ClosedBed[];
  /** A bench on which crops stay for life: index of the bench whose space they take; null for ground. */
  readonly bench: number | null;
  /** Families whose disease is on record here and which are grown all the same, at a steep price. None when left out. */
  readonly recordedFamilies?: readonly string[];
  /** What grew here before anything that stands. Nothing is known when left out. */
  readonly past?: readonly PastCrop[];
}

/** A family that grew in a bed in an earlier year. */
export interface PastCrop {
  readonly family: string;
  readonly place: string;
  /** 1-based; null: in any of the like places, and so in all. */
  readonly placeNumber: number | null;
  /** Year in which it was planted, see `plantedYear`. */
  readonly year: number;
}

export interface Bench {
  readonly id: string;
  readonly stage: RaisingStage['stage'];
  readonly exposure: string;
  readonly capacityM2: number;
  readonly place: string;
  readonly placeName: string;
}

/** One way for a crop that stands to go on: kept until a day, then cleared. */
export interface StandingCrop {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsCount: number;
  /** Where it is now; strips are given to it first. */
  readonly place: string;
  readonly placeNumber: number | null;
  /** Days on which it may be cleared, rising; the last is its natural end. One is chosen. */
  readonly clearDays: readonly Day[];
  /** Week from which it takes its ground (later than the first when it is still on a bench). */
  readonly groundFromWeek: Week;
  /** Benches that it takes until then. */
  readonly bench: readonly BenchUse[];
  readonly state: 'done' | 'firm';
  /** Plants when it was begun, where it was taken as begun as planned; some are eaten since. */
  readonly plantsBegun?: number;
}

export interface PlantLimit {
  readonly kind: string;
  readonly leastPlants: number;
  readonly mostPlants: number;
}

export interface PlanningProblem {
  readonly context: ForecastContext;
  readonly fromDay: Day;
  readonly fromWeek: Week;
  /** Weeks shown, and with the tail behind them. */
  readonly shownWeeks: number;
  readonly weekCount: number;
  readonly kinds: readonly CropType[];
  readonly ground: readonly GroundClass[];
  readonly benches: readonly Bench[];
  readonly standing: readonly StandingCrop[];
  readonly stock: readonly Lot[];
  readonly appetite: Appetite;
  readonly roles: readonly RoleRow[];
  readonly stores: ReadonlySet<StoreId>;
  readonly protection: SowingPlan['protection'];
  /** Kinds of which part of the harvest is kept back to plant again. */
  readonly savesSeedOf: ReadonlySet<string>;
  readonly limits: readonly PlantLimit[];
  readonly seed: number;
  /** What people have been told so far; null: this is their first plan. */
  readonly lastPlan: LastPlan | null;
  /** Days on which nothing is sown or planted out. */
  readonly noPlanting: readonly DaySpan[];
  /** Minutes that people have for it in each week, Infinity where they set no limit; null: nobody set any. */
  readonly capMinutesByWeek: Float64Array | null;
  /** What kit there is to lend; without limit when left out. */
  readonly ownedKit?: OwnedKit;
  /** Strips that a class does not have in some weeks: what real beds refused. */
  readonly groundCuts?: readonly GroundCut[];
  /** Weight of poor years against the mean, 0–1; absent: the usual one (program/price.ts). */
  readonly poorYearsWeight?: number;
}

export interface GroundCut {
  readonly ground: number;
  readonly fromWeek: Week;
  /** Exclusive. */
  readonly toWeek: Week;
  readonly strips: number;
}

/** A sowing of the last plan that is still to be begun. */
export interface LastSowing {
  readonly id: string;
  readonly kind: string;
  readonly route: RouteId;
  readonly startDay: Day;
  /** Week in which it takes its ground, and for how long it waits in pots until then. */
  readonly groundFromWeek: Week;
  readonly heldWeeks: number;
  readonly clearDay: Day;
  readonly ground: number;
  readonly stripsCount: number;
  readonly place: string;
  readonly placeNumber: number | null;
}

export interface LastPlan {
  readonly sowings: readonly LastSowing[];
  /** When crops that stand were to be cleared, by their id. */
  readonly clearDays: ReadonlyMap<string, Day>;
}

/** Metres of mesh, nets and fleece; pieces of canes. */
export interface OwnedKit {
  readonly mesh: number;
  readonly net: number;
  readonly fleece: number;
  readonly canes: number;
}

/** Bench space a candidate takes, m² a batch. */
export interface BenchUse {
  readonly bench: number;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly m2: number;
}

/** So many minutes of work in each week of a span; `to` exclusive. */
export interface MinuteSpan {
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly minutes: number;
}

/** A sowing that the program may choose; one batch is one strip. Weeks are absolute, `to` exclusive. */
export interface Candidate {
  readonly plan: SowingPlan;
  readonly ground: number;
  readonly stripsPerBatch: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly bench: readonly BenchUse[];
  readonly startWeek: Week;
  /** Work of a batch that it takes whether or not anybody eats of it, minutes in all. */
  readonly minutes: number;
  /** All work of a batch, picking and putting by too, week by week, within the horizon. */
  readonly work: readonly MinuteSpan[];
  readonly mostBatches: number;
  /** Standing crops: exactly one candidate of a group is taken, once. */
  readonly group: string | null;
  /** It is a sowing of the last plan, unmoved: that one's id, and by how much its price is lowered. */
  readonly stays?: { readonly id: string; readonly bonus: number };
  /** Lots of one batch in each scenario. */
  readonly lots: readonly (readonly Lot[])[];
  /** Mean servings of a batch that are eaten or wasted within the horizon; left out: none are counted. */
  readonly offeredServings?: number;
}

/** The plan as the planner leaves it: candidates with batches. */
export interface Choice {
  readonly candidate: Candidate;
  readonly batches: number;
}
