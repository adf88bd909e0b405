/** What `compare` answers, in plain data. Days are ISO dates; changes are always after less before. */

export interface ComparedPlan {
  readonly household: string;
  readonly site: string;
  readonly from: string;
  readonly weeksShown: number;
}

export interface ComparedSowing {
  readonly id: string;
  readonly number: number;
  readonly kind: string;
  readonly kindName: string;
  readonly state: 'done' | 'firm' | 'draft';
  readonly sow: string;
  readonly place: string;
  readonly placeName: string;
  /** Plants (stations) as planned, and the ground they take. */
  readonly plants: number;
  readonly groundM2: number;
}

export interface ChangedSowing {
  /** By the same id, or by kind, route and place with days at most three weeks apart. */
  readonly matchedBy: 'id' | 'likeness';
  readonly before: ComparedSowing;
  readonly after: ComparedSowing;
  /** Days later (above 0) or earlier. */
  readonly movedDays: number;
  readonly clearMovedDays: number;
  readonly plantsChange: number;
  readonly groundM2Change: number;
}

export interface ComparedRole {
  readonly role: string;
  readonly roleName: string;
  /** Servings eaten in the mean over the weeks that both plans show. */
  readonly before: number;
  readonly after: number;
  readonly change: number;
  /** Sums of what is gained in the weeks that gain, and lost in those that lose. */
  readonly gained: number;
  readonly lost: number;
}

export interface ComparedWeek {
  readonly weekOf: string;
  /** Change in servings eaten, by role; roles without any are left out. */
  readonly change: Readonly<Record<string, number>>;
}

/** A week of a role that is short in one year of two or more often. */
export interface ComparedLeanWeek {
  readonly weekOf: string;
  readonly role: string;
  readonly chanceBefore: number;
  readonly chanceAfter: number;
}

export interface PlanComparison {
  readonly schemaVersion: 1;
  readonly before: ComparedPlan;
  readonly after: ComparedPlan;
  /** Mondays of the weeks that both plans show; null when there is none. */
  readonly shared: { readonly from: string; readonly to: string; readonly weeks: number } | null;
  readonly added: readonly ComparedSowing[];
  /** Begun after the last week for which the earlier plan chose sowings: new because the plan reaches further. */
  readonly further: readonly ComparedSowing[];
  readonly dropped: readonly ComparedSowing[];
  /** Cleared before the later plan begins: past, not dropped. */
  readonly past: readonly ComparedSowing[];
  /** Another day. */
  readonly moved: readonly ChangedSowing[];
  /** More plants, on any day. */
  readonly grown: readonly ChangedSowing[];
  readonly shrunk: readonly ChangedSowing[];
  /** In another place. */
  readonly elsewhere: readonly ChangedSowing[];
  readonly unchanged: number;
  readonly roles: readonly ComparedRole[];
  readonly weeks: readonly ComparedWeek[];
  readonly lean: {
    /** Expected lean role-weeks over the shared weeks. */
    readonly before: number;
    readonly after: number;
    readonly filled: readonly ComparedLeanWeek[];
    readonly opened: readonly ComparedLeanWeek[];
  };
  /** Work on new sowings in the weeks that each plan counts, hours. */
  readonly hours: { readonly before: number; readonly after: number; readonly change: number };
}
