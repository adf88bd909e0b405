/** How well a household is fed: lean weeks, servings missing, eaten and wasted. */
import type { Appetite, Eaten } from './kitchen-rule.ts';

/** A role-week is lean when less than this share of appetite is eaten. */
export const leanBelowShare = 0.8;
/** Role-weeks with next to no appetite are not counted, servings. */
export const leastCountedServings = 0.25;

/** Lean: of all that the household would eat, bought on purpose included, less than four fifths is eaten. */
export function isLean(appetite: Appetite, role: number, week: number, eatenServings: number): boolean {
  const garden = appetite.garden[role]![week]!;
  const bought = appetite.bought[role]![week]!;
  return garden >= leastCountedServings && eatenServings + bought < leanBelowShare * (garden + bought);
}

export interface EatenScore {
  readonly leanWeeks: number;
  readonly missingServings: number;
  readonly eatenServings: number;
  readonly wastedServings: number;
}

/** Counts weeks from `first` up to (not with) `last`, indices into the appetite's weeks. */
export function scoreOf(eaten: Eaten, appetite: Appetite, first: number, last: number): EatenScore {
  let [leanWeeks, missingServings, eatenServings, wastedServings] = [0, 0, 0, 0];
  for (let r = 0; r < appetite.roles.length; r++) {
    for (let w = first; w < Math.min(last, appetite.weekCount); w++) {
      const want = appetite.garden[r]![w]!;
      const had = eaten.eaten[r]![w]!;
      eatenServings += had;
      wastedServings += eaten.wasted[r]![w]!;
      missingServings += Math.max(0, want - had);
      if (isLean(appetite, r, w, had)) leanWeeks++;
    }
  }
  return { leanWeeks, missingServings, eatenServings, wastedServings };
}
