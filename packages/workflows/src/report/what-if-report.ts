import type { Measured } from './plan-report.ts';

/** What `what-if` answers, in plain data. Days are ISO dates. Servings and lean weeks are means over members. */

export type WhatIfChange =
  | {
      readonly change: 'lost';
      readonly sowing: string;
      readonly number: number;
      readonly kindName: string;
      readonly day: string;
    }
  | {
      readonly change: 'cover';
      readonly cover: string;
      readonly coverName: string;
      readonly day: string;
      /** Sowings that grow under it on that day or later, and those that are only raised there. */
      readonly grow: readonly string[];
      readonly raised: readonly string[];
    }
  | {
      readonly change: 'weather';
      readonly weather: 'late-spring' | 'dry-may';
      readonly from: string;
      readonly to: string;
      /** Members chosen, of how many. */
      readonly members: number;
      readonly ofMembers: number;
      /** Mean temperature of the season, °C, or its rain, mm: of the members chosen and of all. */
      readonly value: number;
      readonly usual: number;
    };

export interface WhatIfRole {
  readonly role: string;
  readonly roleName: string;
  /** More is lost; below 0: gained. */
  readonly servingsLost: number;
  readonly leanWeeksMore: number;
  /** First and last week with at least a tenth of a serving lost; null: none. */
  readonly from: string | null;
  readonly to: string | null;
  readonly weeks: readonly {
    readonly weekOf: string;
    readonly servingsLost: number;
    readonly chanceLeanMore: number;
  }[];
}

export interface WhatIfRemedy {
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly sow: string;
  /** Last day on which it still does four fifths of that. */
  readonly by: string;
  readonly plants: number;
  readonly m2: number;
  readonly placeNames: readonly string[];
  readonly roles: readonly string[];
  /** Of the servings lost, by role and week, what it brings back on top of the remedies before it. */
  readonly filled: number;
}

export type WhatIfScore = Pick<Measured, 'leanWeeks' | 'servingsMissing' | 'servingsEaten' | 'wasted'>;

export interface WhatIfReport {
  readonly schemaVersion: 1;
  readonly garden: { readonly household: string; readonly site: string };
  readonly from: string;
  readonly weeksShown: number;
  readonly seed: number;
  readonly members: number;
  readonly changes: readonly WhatIfChange[];
  /** First day of the week from which everything below is counted: that of the first change. */
  readonly countedFrom: string;
  readonly before: WhatIfScore;
  readonly after: WhatIfScore;
  readonly withRemedies: WhatIfScore;
  readonly roles: readonly WhatIfRole[];
  /** From when the remedies are reckoned: when the loss is known. */
  readonly knownDay: string;
  readonly remedies: readonly WhatIfRemedy[];
  /** Sowings of the plan that the garden file no longer has a kind, place or route for; they were left out. */
  readonly leftOut: readonly string[];
}
