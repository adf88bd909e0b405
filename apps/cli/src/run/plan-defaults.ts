/** What a plan is made with when nobody says otherwise. */
export const planDefaults = {
  weeks: 78,
  memberCount: 30,
  checkMemberCount: 30,
  seed: 1,
  /** Counted LP iterations, in thousands. */
  effort: 10,
} as const;
