import type { Band } from '@twelvemonth/basis';
import type { DayBand, ReportSowing } from './plan-report.ts';

/** What `explain` and `slots` answer, in plain data. Days are ISO dates, weeks their Mondays. */

/** Servings of a role that the household eats between two weeks because of something. */
export interface EatenBecause {
  readonly role: string;
  readonly from: string;
  readonly to: string;
  readonly servings: number;
}

/** A sowing that is not in the plan. */
export interface OtherSowing {
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly routeId: string;
  readonly sow: string;
  /** null: sown or planted in place. */
  readonly plantOut: string | null;
  readonly clear: string;
  readonly placeName: string;
  readonly plants: number;
  readonly m2: number;
  /** In tubs or trays, how many of them; 0 in beds. */
  readonly vessels: number;
}

export interface Neighbour {
  readonly id: string;
  readonly number: number;
  readonly kindName: string;
  /** The day it goes, or the one that comes after it comes. */
  readonly day: string;
}

export interface Delay {
  readonly weeks: number;
  /** Change in mean servings, and in servings missing at table (more is worse). */
  readonly servingsChange: number;
  readonly missingChange: number;
  /** When it can then first be eaten. */
  readonly first: DayBand;
}

/** 'gives-little': under half of what it is there for · 'not-ready': not in most years · 'not-sold': no longer to be had. */
export type UnsafeBecause = 'gives-little' | 'not-ready' | 'not-sold';

export interface SowingReasons {
  readonly schemaVersion: 1;
  readonly about: 'sowing';
  readonly today: string;
  readonly sowing: ReportSowing;
  readonly roleNames: Readonly<Record<string, string>>;
  readonly members: number;
  /** Mean servings that come of it within the weeks looked at. */
  readonly servings: number;
  readonly eats: readonly EatenBecause[];
  /** Servings missing, and lean role-weeks, more than in the plan: without it. */
  readonly missingWithout: number;
  readonly leanWithout: number;
  /** The same after its ground has been filled again, as well as can quickly be found. */
  readonly refill: {
    readonly sowings: readonly OtherSowing[];
    readonly missing: number;
    /** By the plan's own prices no worse than the plan. */
    readonly asGood: boolean;
  } | null;
  /** The best other kind for that ground and time; `missing`: servings missing more than in the plan. */
  readonly runnerUp: {
    readonly sowing: OtherSowing;
    readonly missing: number;
    readonly asGood: boolean;
    readonly eats: readonly EatenBecause[];
  } | null;
  readonly delays: readonly Delay[];
  readonly lastSafe: {
    readonly day: string;
    /** null: still safe at the end of what was looked at. */
    readonly afterwards: UnsafeBecause | null;
    readonly weeks: number;
  } | null;
  readonly before: readonly Neighbour[];
  readonly after: readonly Neighbour[];
  /** Other sowings of the same kind in the plan, numbers on their labels. */
  readonly likeIt: readonly number[];
}

export interface Slot {
  /** Number 0, id of its own making: it is not in the plan. */
  readonly sowing: ReportSowing;
  readonly servings: number;
  readonly fills: readonly EatenBecause[];
  /** Servings and lean role-weeks missing less than without it. */
  readonly missingFilled: number;
  readonly leanFilled: number;
  /** Share of years in which nothing comes of it. */
  readonly neverShare: number;
}

/**
 * 'nothing-free': all ground or bench is taken · 'no-such-place': it grows in nothing that this household has ·
 * 'banned': a disease on record forbids its family · 'never-ready': begun from now on it is not ready in time.
 */
export type NoSlotBecause = 'nothing-free' | 'no-such-place' | 'banned' | 'never-ready';

export interface SlotInstead {
  readonly sowing: OtherSowing;
  readonly replaces: { readonly id: string; readonly number: number; readonly kindName: string };
  /** Servings missing more than in the plan; below 0: fewer. */
  readonly missingChange: number;
}

export interface SlotsReport {
  readonly schemaVersion: 1;
  readonly about: 'slots';
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly from: string;
  /** What else is in the ground: a plan, or only what stands. */
  readonly beside: 'plan' | 'what-stands';
  /** Numbers of its sowings that the plan has already. */
  readonly inPlan: readonly number[];
  readonly roleNames: Readonly<Record<string, string>>;
  readonly slots: readonly Slot[];
  /** So many plants as were asked for fit nowhere: the slots hold fewer. */
  readonly fewer: boolean;
  readonly none: NoSlotBecause | null;
  readonly instead: SlotInstead | null;
  /** The household's own wishes leave it out. */
  readonly unwanted: boolean;
  readonly mostPlants: number | null;
}

export interface WeekSource {
  readonly kind: string;
  readonly kindName: string;
  /** Number on the label; null: from stock. */
  readonly number: number | null;
  readonly stored: boolean;
  /** Eaten in place of the role it stands under. */
  readonly standsIn: boolean;
  readonly servings: number;
}

export interface LeanReason {
  /** The lean stretch that the week belongs to, Mondays of its first and last week. */
  readonly from: string;
  readonly to: string;
  readonly servingsMissing: number;
  readonly leanWeeks: number;
  /** As in the plan's shortages. */
  readonly binds: string;
  /** What was tried and found to help most for what it takes; null: nothing that can still be sown. */
  readonly remedy: { readonly code: string; readonly sowing: OtherSowing; readonly filled: number } | null;
  /** Where a remedy has no room: the sowing of the plan that would best make way, if that helps in sum. */
  readonly makesWay: {
    readonly id: string;
    readonly number: number;
    readonly kindName: string;
    readonly missingLess: number;
  } | null;
}

export interface WeekRole {
  readonly role: string;
  /** Servings wanted from the garden, and bought on purpose. */
  readonly wanted: number;
  readonly bought: number;
  readonly eaten: Band;
  readonly chanceLean: number;
  readonly sources: readonly WeekSource[];
  readonly lean: LeanReason | null;
}

export interface WeekReasons {
  readonly schemaVersion: 1;
  readonly about: 'week';
  readonly weekOf: string;
  readonly today: string;
  readonly roleNames: Readonly<Record<string, string>>;
  readonly members: number;
  /** False: in the tail behind the weeks shown, which is planned again before it comes. */
  readonly shown: boolean;
  readonly roles: readonly WeekRole[];
  /** Roles of which more spoils in these weeks than is worth keeping quiet about. */
  readonly spare: readonly { readonly role: string; readonly servings: number }[];
}
