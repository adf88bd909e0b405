/**
 * What is lost by role and week: the plan as it was in all members, less the plan as it became in those it happens in.
 * Weeks are indices. Those before the change are not counted: chance alone would speak there.
 */
import { isoOfWeek, meanOf } from '@twelvemonth/basis';
import { allRoles, type Eaten, isLean } from '@twelvemonth/growing';
import { meanScore, type PlanningProblem } from '@twelvemonth/planning';
import type { WhatIfRole, WhatIfScore } from '../report/what-if-report.ts';

const worthAWeek = 0.1;
const worthARole = 0.05;

export function scoreOfEaten(
  problem: PlanningProblem,
  eaten: readonly Eaten[],
  firstWeek: number,
): WhatIfScore {
  const score = meanScore(problem.appetite, eaten, firstWeek, problem.shownWeeks);
  return {
    leanWeeks: score.leanWeeks,
    servingsMissing: score.missingServings,
    servingsEaten: score.eatenServings,
    wasted: score.wastedServings,
  };
}

const meanEaten = (eaten: readonly Eaten[], role: number, week: number): number =>
  meanOf(eaten.map((e) => e.eaten[role]![week]!));

/** Positive losses alone: what a remedy may fill. Role by week, as in the appetite. */
export function servingsToFill(
  problem: PlanningProblem,
  before: readonly Eaten[],
  after: readonly Eaten[],
  firstWeek: number,
): Float64Array[] {
  return problem.appetite.roles.map((_, r) =>
    Float64Array.from({ length: problem.weekCount }, (_, w) =>
      w >= firstWeek && w < problem.shownWeeks
        ? Math.max(0, meanEaten(before, r, w) - meanEaten(after, r, w))
        : 0,
    ),
  );
}

export function rolesLost(
  problem: PlanningProblem,
  before: readonly Eaten[],
  after: readonly Eaten[],
  firstWeek: number,
): WhatIfRole[] {
  const { appetite } = problem;
  const chanceLean = (eaten: readonly Eaten[], r: number, w: number): number =>
    meanOf(eaten.map((e) => (isLean(appetite, r, w, e.eaten[r]![w]!) ? 1 : 0)));
  const names = new Map<string, string>(allRoles().map((role) => [role.id, role.name]));
  return appetite.roles
    .map((role, r): WhatIfRole => {
      const weeks = Array.from({ length: problem.shownWeeks - firstWeek }, (_, i) => {
        const w = firstWeek + i;
        return {
          weekOf: isoOfWeek(problem.fromWeek + w),
          servingsLost: meanEaten(before, r, w) - meanEaten(after, r, w),
          chanceLeanMore: chanceLean(after, r, w) - chanceLean(before, r, w),
        };
      });
      const hit = weeks.filter((week) => week.servingsLost >= worthAWeek);
      return {
        role,
        roleName: names.get(role) ?? role,
        servingsLost: weeks.reduce((sum, week) => sum + week.servingsLost, 0),
        leanWeeksMore: weeks.reduce((sum, week) => sum + week.chanceLeanMore, 0),
        from: hit[0]?.weekOf ?? null,
        to: hit.at(-1)?.weekOf ?? null,
        weeks: weeks.filter((w) => Math.abs(w.servingsLost) >= 0.01 || Math.abs(w.chanceLeanMore) >= 0.01),
      };
    })
    .filter((role) => Math.abs(role.servingsLost) >= worthARole || Math.abs(role.leanWeeksMore) >= worthARole)
    .sort((a, b) => b.servingsLost - a.servingsLost);
}
