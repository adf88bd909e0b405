/** Which role-weeks are compared, and how the household fares in them (docs/evaluation.md, rules 3 to 5). */
import { meanOf } from '../packages/basis/src/index.ts';
import { type Appetite, type Eaten, isLean } from '../packages/growing/src/index.ts';

export const firstCountedWeek = 13;
export const endOfCountedWeeks = 65;

/** [role][week], true where the role-week is compared. `relaxedShare`: what the relaxation eats of the garden's part. */
export function comparedRoleWeeks(
  appetite: Appetite,
  relaxedShare: readonly Float64Array[] | null,
): boolean[][] {
  return appetite.roles.map((_, role) =>
    Array.from({ length: appetite.weekCount }, (_, week) => {
      if (week < firstCountedWeek || week >= endOfCountedWeeks) return false;
      const share = relaxedShare?.[role]?.[week] ?? 1;
      return !isLean(appetite, role, week, share * appetite.garden[role]![week]!);
    }),
  );
}

export interface Fare {
  readonly leanWeeks: number;
  readonly servingsMissing: number;
}

/** Mean over the members. */
export function fareIn(
  appetite: Appetite,
  eaten: readonly Eaten[],
  counted: readonly (readonly boolean[])[],
): Fare {
  const fares = eaten.map((member): Fare => {
    let [leanWeeks, servingsMissing] = [0, 0];
    appetite.roles.forEach((_, role) => {
      for (let week = firstCountedWeek; week < Math.min(endOfCountedWeeks, appetite.weekCount); week++) {
        if (!counted[role]![week]) continue;
        const had = member.eaten[role]![week]!;
        if (isLean(appetite, role, week, had)) leanWeeks++;
        servingsMissing += Math.max(0, appetite.garden[role]![week]! - had);
      }
    });
    return { leanWeeks, servingsMissing };
  });
  return {
    leanWeeks: meanOf(fares.map((fare) => fare.leanWeeks)),
    servingsMissing: meanOf(fares.map((fare) => fare.servingsMissing)),
  };
}

/** Servings that the relaxation itself misses in the compared role-weeks. */
export function missingInBound(
  appetite: Appetite,
  relaxedShare: readonly Float64Array[] | null,
  compared: readonly (readonly boolean[])[],
): number | null {
  if (relaxedShare === null) return null;
  let missing = 0;
  compared.forEach((weeks, role) => {
    weeks.forEach((counts, week) => {
      if (counts) missing += Math.max(0, 1 - relaxedShare[role]![week]!) * appetite.garden[role]![week]!;
    });
  });
  return missing;
}
