/** What two plans put on the table in the weeks that both show. */
import { likelyLean } from '@twelvemonth/planning';
import type {
  ComparedLeanWeek,
  ComparedRole,
  ComparedWeek,
  PlanComparison,
} from '../report/plan-comparison.ts';
import type { PlanReport, ReportRoleWeek, ReportWeek } from '../report/plan-report.ts';

const leastChange = 0.05;

/** Plans of an earlier day know only the middle. */
const eatenOf = (week: ReportRoleWeek | undefined): number =>
  week === undefined ? 0 : (week.eatenMean ?? week.eaten.p50);
const leanOf = (week: ReportRoleWeek | undefined): number => week?.chanceLean ?? 0;

export function compareWeeks(
  before: PlanReport,
  after: PlanReport,
): Pick<PlanComparison, 'shared' | 'roles' | 'weeks' | 'lean'> {
  const earlier = new Map(before.weeks.map((week) => [week.weekOf, week]));
  const pairs = after.weeks.flatMap((week): { a: ReportWeek; b: ReportWeek }[] => {
    const same = earlier.get(week.weekOf);
    return same === undefined ? [] : [{ a: same, b: week }];
  });
  const names = { ...before.roleNames, ...after.roleNames };
  const ids = [...new Set(pairs.flatMap(({ a, b }) => [...Object.keys(a.roles), ...Object.keys(b.roles)]))];
  const filled: ComparedLeanWeek[] = [];
  const opened: ComparedLeanWeek[] = [];
  let [leanBefore, leanAfter] = [0, 0];
  const byWeek = pairs.map(() => ({}) as Record<string, number>);
  const roles = ids.map((role): ComparedRole => {
    let [sumBefore, sumAfter, gained, lost] = [0, 0, 0, 0];
    pairs.forEach(({ a, b }, w) => {
      const change = eatenOf(b.roles[role]) - eatenOf(a.roles[role]);
      sumBefore += eatenOf(a.roles[role]);
      sumAfter += eatenOf(b.roles[role]);
      gained += Math.max(0, change);
      lost += Math.max(0, -change);
      if (Math.abs(change) >= leastChange) byWeek[w]![role] = change;
      const [chanceBefore, chanceAfter] = [leanOf(a.roles[role]), leanOf(b.roles[role])];
      leanBefore += chanceBefore;
      leanAfter += chanceAfter;
      const lean = { weekOf: b.weekOf, role, chanceBefore, chanceAfter };
      if (chanceBefore >= likelyLean && chanceAfter < likelyLean) filled.push(lean);
      if (chanceBefore < likelyLean && chanceAfter >= likelyLean) opened.push(lean);
    });
    const roleName = names[role] ?? role;
    return { role, roleName, before: sumBefore, after: sumAfter, change: sumAfter - sumBefore, gained, lost };
  });
  const [first, last] = [pairs[0], pairs.at(-1)];
  return {
    shared:
      first === undefined || last === undefined
        ? null
        : { from: first.b.weekOf, to: last.b.weekOf, weeks: pairs.length },
    roles,
    weeks: pairs.map(({ b }, w): ComparedWeek => ({ weekOf: b.weekOf, change: byWeek[w]! })),
    lean: { before: leanBefore, after: leanAfter, filled, opened },
  };
}
