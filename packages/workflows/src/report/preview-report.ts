import type { DayBand, ReportHarvest } from './plan-report.ts';

/** What a preview of one moved sowing answers. Days are ISO dates, weeks their Mondays. */

export type MoveForbidden =
  /** The household has no such place. */
  | 'no-such-place'
  /** What stands already can only be cleared on another day. */
  | 'stands-already'
  | 'in-the-past'
  | 'planted-before-sown'
  | 'cleared-before-planted'
  /** Sets, cloves and tubers are not sold at that time. */
  | 'not-sold'
  /** It grows in nothing like that place; a disease on record there forbids its family; one plant wants a larger tub. */
  | 'cannot-grow-there'
  | 'family-banned'
  | 'tub-too-small'
  /** More plants than the household wished for at most. */
  | 'over-wish';

export interface Clash {
  /** 'rotation': the same family in the same strips before its ground has rested. */
  readonly over: 'ground' | 'bench' | 'rotation' | 'kit';
  /** Place of the bed or bench, or the kind of kit. */
  readonly where: string;
  readonly from: string;
  readonly to: string;
  /** Sowings that it clashes with. */
  readonly with: readonly string[];
  /** Strips, m² of bench, metres or pieces of kit, or years of rest too few. */
  readonly short: number;
  /** The plan has this clash without the move, too. */
  readonly before: boolean;
}

export interface RoleChange {
  readonly role: string;
  /** Mean servings eaten more (below 0: less). */
  readonly servings: number;
  readonly weeks: readonly { readonly weekOf: string; readonly servings: number }[];
}

export interface LeanChange {
  readonly role: string;
  readonly weekOf: string;
}

export interface MovePreview {
  readonly sowing: string;
  /** Why it cannot be done at all; the rest is then as without the move. */
  readonly forbidden: readonly MoveForbidden[];
  readonly plantOut: DayBand | null;
  /** When each part can then be eaten. */
  readonly harvests: readonly ReportHarvest[];
  readonly changes: readonly RoleChange[];
  readonly missingChange: number;
  readonly lean: {
    readonly filled: readonly LeanChange[];
    readonly opened: readonly LeanChange[];
    /** Change in expected lean role-weeks. */
    readonly change: number;
  };
  readonly clashes: readonly Clash[];
  /** Shares of plants: run to seed in the middle year, frosted in one year of ten; and years in which nothing comes. */
  readonly risk: {
    readonly bolted: { readonly before: number; readonly after: number };
    readonly frosted: { readonly before: number; readonly after: number };
    readonly nothing: { readonly before: number; readonly after: number };
  };
}
