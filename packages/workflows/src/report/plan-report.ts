import type { Band, Issue } from '@twelvemonth/basis';
import type { ThreeNumbers } from '../forecast/three-numbers.ts';
import type { ReportConflict } from './conflict-report.ts';
import type {
  ReportFeeding,
  ReportGuest,
  ReportHandover,
  ReportKit,
  ReportNotPlaced,
  ReportRest,
} from './ground-report.ts';

/** What `plan` answers, in plain data: the JSON output, and what every sheet is made from. Days are ISO dates. */

/** Days over members; null with a reason code where it never comes in most members. */
export interface DayBand {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
  /** Set when a value is null: 'never-emerges', 'not-ready-before-cleared', 'killed-by-frost', 'ran-to-seed' … */
  readonly reason: string | null;
}

export interface ReportStage {
  /** 'mat' | 'sill' | 'bench' | 'frame' | 'pots' | 'bed' | 'tub' | 'tray' */
  readonly stage: string;
  readonly place: string;
  readonly placeName: string;
  readonly from: string;
  /** Middle day on which the stage ends. */
  readonly to: string;
}

export interface ReportHarvest {
  readonly id: string;
  readonly role: string;
  readonly habit: string;
  readonly first: DayBand;
  readonly last: DayBand;
  readonly servings: Band;
}

/** When a risky sowing is looked at, what must be seen by then, and what stands ready for its ground otherwise. */
export interface ReportDecision {
  readonly decisionDay: string;
  /**
   * 'up' · 'standing' (least share of plants) · 'not-bolted' (most share) · 'leaves' (least true leaves) · 'size' (least
   * share of the size at which the harvest begins).
   */
  readonly rule: {
    readonly code: 'up' | 'standing' | 'not-bolted' | 'leaves' | 'size';
    readonly value: number;
  };
  /** Share of the planning members in which it gives less than half of a good year. */
  readonly chanceFails: number;
  /** The same where the sign is seen on the day, and where it is not. */
  readonly failsWhenSeen: number;
  readonly failsWhenNot: number;
  /** Share of unseen members in which the sign is right. */
  readonly rightShare: number;
  /** Fits the same strips from that day on and is off them by the same day. */
  readonly fallback: {
    readonly kind: string;
    readonly kindName: string;
    readonly startsAs: string;
    readonly routeId: string;
    readonly sow: string;
    readonly plants: number;
    readonly clear: string;
    /** Servings in the roles and weeks that the risky sowing was to feed. */
    readonly servings: number;
  };
}

export interface ReportSowing {
  readonly id: string;
  /** Short number for the label. */
  readonly number: number;
  readonly kind: string;
  readonly kindName: string;
  /** What can do harm when the kind is eaten (a kind's `cautions`). */
  readonly cautions: readonly string[];
  readonly startsAs: string;
  readonly state: 'done' | 'firm' | 'draft';
  /** Taken as begun as the last plan had it, with so many plants then; absent where the file says what stands. */
  readonly begun?: { readonly plants: number } | undefined;
  /** Day of sowing (of planting for sets, cloves, tubers, crowns). */
  readonly sow: string;
  readonly count: ThreeNumbers;
  readonly groundM2: number;
  readonly routeId: string;
  readonly route: readonly ReportStage[];
  readonly beds: readonly {
    readonly place: string;
    readonly placeName: string;
    /** Which of the like places, 1-based; 0 where there is only one. */
    readonly number: number;
    readonly stripsFrom: number;
    readonly stripsCount: number;
    readonly m2: number;
  }[];
  readonly area: string;
  /** null: sown in place. */
  readonly plantOut: DayBand | null;
  /** Planned day on which the ground is free again. */
  readonly clear: string;
  readonly harvests: readonly ReportHarvest[];
  readonly spacingCm: { readonly inRow: number; readonly betweenRow: number };
  /** What stands there before and must be cleared, if anything: sowing ids. */
  readonly follows: readonly string[];
  readonly shares: { readonly bolted: Band; readonly frosted: Band; readonly lost: Band };
  /** Codes of what to mind, most important first ('slugs-young', 'frost', 'bolting', 'pots-check', 'leggy' …). */
  readonly risks: readonly { readonly code: string; readonly share: number }[];
  readonly kit: readonly {
    readonly kit: string;
    readonly why: string;
    readonly from: string;
    readonly to: string;
  }[];
  /** Kit that there is not enough of: it is forecast without. Plans of before 2026-12 lack it. */
  readonly withoutKit?: readonly string[] | undefined;
  /** Strips on which its family is back too soon. */
  readonly rests?: readonly ReportRest[] | undefined;
  /** Planted between crops that still stand, from a Monday on; its ground is its own when they are cleared. */
  readonly guestOf?: ReportGuest | undefined;
  readonly reason: {
    /** Roles and weeks that it feeds: Mondays, first and last week with at least a tenth of a serving. */
    readonly feeds: readonly {
      readonly role: string;
      readonly from: string;
      readonly to: string;
      readonly servings: number;
    }[];
    /** Servings missing over the weeks shown without this sowing, found by simulating without it; where it is missed behind them, those weeks, too. */
    readonly missingWithout: number;
  };
  readonly lastSafeDay: string | null;
  /** Change in mean servings when begun later. */
  readonly delays: readonly { readonly weeks: number; readonly servingsChange: number }[];
  /** Risky sowings only, see docs/models/make-or-break.md. */
  readonly decision?: ReportDecision | undefined;
}

export interface ReportRoleWeek {
  /** Servings the household would eat, and the part it buys on purpose. */
  readonly appetite: number;
  readonly bought: number;
  /** Mean servings that came ready this week. */
  readonly offered: number;
  readonly eaten: Band;
  /** Mean over members, which may be added up over weeks; plans of before 2026-12 lack it. */
  readonly eatenMean?: number | undefined;
  readonly fromStock: number;
  readonly stockLeft: number;
  readonly chanceLean: number;
}

export interface ReportWeek {
  readonly weekOf: string;
  readonly roles: Readonly<Record<string, ReportRoleWeek>>;
}

export interface ReportShortage {
  readonly role: string;
  readonly from: string;
  readonly to: string;
  readonly servingsMissing: number;
  readonly leanWeeks: number;
  /** What binds: 'too-late' | 'ground-open' | 'ground-cover' | 'bench' | 'hours' | 'season' | 'not-worth-it'. */
  readonly binds: string;
  /** Cheapest remedy found by trying it, or null. `filled` = servings. */
  readonly remedy: {
    readonly code:
      | 'sow-more'
      | 'more-cover'
      | 'more-ground'
      | 'more-bench'
      | 'more-hours'
      | 'substitute'
      | 'buy';
    readonly kind: string | null;
    readonly m2: number;
    readonly by: string | null;
    readonly filled: number;
  } | null;
}

export interface Measured {
  readonly leanWeeks: number;
  readonly servingsMissing: number;
  readonly servingsEaten: number;
  readonly wasted: number;
  readonly groundIdleShare: number;
  readonly hours: number;
  readonly sowings: number;
}

export interface ReportProof {
  readonly gapShare: number | null;
  readonly gapServingsPerYear: number | null;
  readonly effort: number;
  readonly seconds: number;
  readonly reproducible: boolean;
  readonly stoppedBecause: 'gap' | 'effort' | 'time' | 'stopped' | 'greedy-only';
  readonly candidates: number;
  readonly scenarios: number;
  readonly leanWeeksCheck: number;
  readonly servingsMissingCheck: number;
  readonly wastedCheck: number;
  /** Weeks counted in the check (13–65 of the horizon). */
  readonly countedWeeks: number;
  readonly check: Measured;
  readonly rivals: { readonly calendar: Measured; readonly practised: Measured };
  /** Findings of the independent check: empty when ground, bench, stock and servings add up. */
  readonly violations: readonly string[];
}

export interface ReportJob {
  readonly day: string;
  readonly code:
    | 'pot-on'
    | 'plant-out'
    | 'harden-off'
    | 'clear'
    | 'net-on'
    | 'net-off'
    | 'mesh-on'
    | 'mesh-off'
    | 'kit-move'
    | 'feed'
    | 'lime'
    | 'fleece-night'
    | 'lift'
    | 'order'
    | 'cure';
  readonly area: string;
  readonly sowing: string | null;
  readonly kindName: string;
  readonly placeName: string;
  readonly count: number;
  /** fleece-night: to be laid when a minimum below this is forecast, °C. */
  readonly belowC?: number | undefined;
  /** kit-move: what, how many metres of bed, and from where; feed: barrows of compost. */
  readonly kit?: string | undefined;
  readonly amount?: number | undefined;
  readonly fromPlaceName?: string | undefined;
}

export interface ReportStock {
  readonly kind: string;
  readonly kindName: string;
  readonly store: string;
  readonly kg: number;
  readonly servings: number;
  readonly role: string;
  /** When it runs out or ends. */
  readonly runsOut: DayBand;
}

/** Hours of work of one week, by kind of work. `visit`: opening up and putting away at ground that is not at home. */
export interface HoursByWork {
  readonly sow: number;
  readonly plant: number;
  readonly weed: number;
  readonly water: number;
  readonly pick: number;
  readonly putBy: number;
  readonly clear: number;
  readonly visit: number;
}

export interface ReportHours {
  readonly weekOf: string;
  readonly hours: number;
  readonly byWork: HoursByWork;
  /** Hours that people have; null: no limit was set. */
  readonly cap: number | null;
}

/** What a bench holds in the weeks in which it holds anything, beside what it can. */
export interface ReportBench {
  readonly place: string;
  readonly placeName: string;
  readonly stage: string;
  readonly weeks: readonly {
    readonly weekOf: string;
    readonly m2: number;
    readonly capacityM2: number;
    readonly trays: number;
  }[];
}

/** Compost that sowings of a calendar month take, and the most trays and pots in use at once in it. */
export interface ReportMaterials {
  readonly month: string;
  readonly compostLitres: number;
  readonly trays: number;
  readonly pots: number;
}

/** Why a plan begins nothing. */
export type ReasonForNothing = 'no-ground' | 'no-appetite' | 'all-forbidden' | 'nothing-worth-it';

export interface PlanReport {
  readonly schemaVersion: 1;
  readonly garden: {
    readonly household: string;
    readonly site: string;
    readonly invented: boolean;
    readonly eaters: number;
  };
  readonly from: string;
  readonly weeksShown: number;
  readonly members: number;
  readonly seed: number;
  readonly tables: string;
  /** First day of the weather runs: a plan made again goes on with the same weather. */
  readonly weatherFrom?: string | undefined;
  /** Day length under ten hours, from and to, nearest winter of the horizon; null near the equator. */
  readonly standstill: readonly { readonly from: string; readonly to: string }[];
  /** First and last day with air frost in one year of ten / of two, at the site, as month-day text; null: rarely any. */
  readonly frost: { readonly lastSpring: DayBand; readonly firstAutumn: DayBand };
  readonly roleNames: Readonly<Record<string, string>>;
  /** Why the plan begins nothing; null where it does. */
  readonly nothing: ReasonForNothing | null;
  /** Demands that cannot be met together; the plan is made without what each drops. */
  readonly conflicts: readonly ReportConflict[];
  /** Ids of crops of the garden file that are taken as cleared, as an earlier plan had it. */
  readonly cleared?: readonly string[] | undefined;
  readonly sowings: readonly ReportSowing[];
  readonly weeks: readonly ReportWeek[];
  readonly shortages: readonly ReportShortage[];
  readonly stock: readonly ReportStock[];
  readonly jobs: readonly ReportJob[];
  readonly hours: readonly ReportHours[];
  readonly benches: readonly ReportBench[];
  readonly materials: readonly ReportMaterials[];
  /** Plans of before 2026-12 lack these four. */
  readonly handovers?: readonly ReportHandover[] | undefined;
  readonly feeding?: readonly ReportFeeding[] | undefined;
  readonly kitLedger?: readonly ReportKit[] | undefined;
  readonly notPlaced?: readonly ReportNotPlaced[] | undefined;
  readonly proof: ReportProof;
  readonly issues: readonly Issue[];
}
