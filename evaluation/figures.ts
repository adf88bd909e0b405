/** What the evaluation finds out about a case: plain data, as `--json` gives it. */
import type { PlanScore } from '../packages/planning/src/index.ts';

/** Lean weeks and servings missing over compared role-weeks; the rest over all weeks that count. */
export interface Measured extends PlanScore {
  readonly leanWeeksAll: number;
  readonly servingsMissingAll: number;
  readonly kgPerM2Year: number;
}

export interface RivalMeasured extends Measured {
  readonly strawMan: boolean;
}

export interface Ratios {
  /** Plan over rival; null where the rival has none. */
  readonly leanWeeks: number | null;
  readonly servingsMissing: number | null;
  readonly wasted: number | null;
}

export interface CaseFigures {
  readonly name: string;
  readonly groundM2: number;
  readonly shortOfGround: boolean;
  readonly plan: Measured;
  readonly calendar: RivalMeasured;
  readonly practised: RivalMeasured;
  readonly ratios: { readonly calendar: Ratios; readonly practised: Ratios };
  /** Role-weeks with appetite that are not compared; null: the planner does not say what its relaxation eats. */
  readonly leftOutRoleWeeks: number | null;
  readonly boundServingsMissing: number | null;
  readonly gapShare: number | null;
  readonly stoppedBecause: string;
  readonly candidates: number;
  readonly seconds: number;
  readonly violations: readonly string[];
}

export interface CaseSettings {
  readonly effort: number;
  readonly memberCount: number;
  readonly checkMemberCount: number;
  /** Without it the first plan alone: quick, and without a bound. */
  readonly solver: boolean;
}

export interface CaseTask extends CaseSettings {
  readonly name: string;
}

export const fullSettings: CaseSettings = {
  effort: 0,
  memberCount: 30,
  checkMemberCount: 100,
  solver: true,
};
export const smallSettings: CaseSettings = { effort: 0, memberCount: 12, checkMemberCount: 30, solver: true };
