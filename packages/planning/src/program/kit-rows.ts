/**
 * Kit lent by date: metres of mesh and net (and canes) out over candidates against what is owned. Where it is not
 * enough a sowing goes without, at about the loss that it then suffers: a slack column at a price for each metre and
 * week. Which sowing goes without is settled when the plan is laid into beds.
 *
 *   out(w) − short(w) ≤ owned
 */
import { type KitId, kitNeeds } from '../beds/kit-needs.ts';
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { ProgramBuilder } from './program-builder.ts';

/**
 * Weighted servings that a metre short costs in a week: half a metre of bed gives some six servings, a hazard takes
 * about a tenth of them in ten weeks. A cane short is one to be bought, reckoned by the week. Judged, within a factor
 * of three.
 */
const shortPrice: Readonly<Record<KitId, number>> = { mesh: 0.12, net: 0.12, fleece: 0.12, canes: 0.002 };

export function kitRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const { ownedKit } = problem;
  if (ownedKit === undefined) return;
  const southern = problem.context.site.latitudeDeg < 0;
  const changes = new Map<KitId, Map<number, { column: number; amount: number }[]>>();
  const clamp = (week: number): number => Math.min(Math.max(0, week - problem.fromWeek), problem.weekCount);
  candidates.forEach(({ plan, ground, stripsPerBatch, groundFromWeek, groundToWeek }, c) => {
    const raised = plan.stages.length > 0;
    const own = problem.ground[ground]!;
    for (const use of kitNeeds(plan.kind, own, ownedKit, raised, southern, groundFromWeek, groundToWeek)) {
      const [from, to] = [clamp(use.fromWeek), clamp(use.toWeek)];
      const counted = use.kit === 'canes' || plan.protection.includes(use.kit);
      if (to <= from || !counted) continue;
      const byWeek = changes.get(use.kit) ?? new Map();
      changes.set(use.kit, byWeek);
      const amount = Math.ceil(use.amount * stripsPerBatch * 1024) / 1024;
      for (const [week, sign] of [
        [from, 1],
        [to, -1],
      ] as const)
        if (week < problem.weekCount)
          byWeek.set(week, [...(byWeek.get(week) ?? []), { column: columnOf[c]!, amount: sign * amount }]);
    }
  });
  for (const [kit, byWeek] of changes) {
    const weeks = [...byWeek.keys()].sort((a, b) => a - b);
    let before = -1;
    weeks.forEach((week, i) => {
      const lasts = (weeks[i + 1] ?? problem.weekCount) - week;
      const out = builder.column(0, 0, Number.POSITIVE_INFINITY, false);
      const short = builder.column(shortPrice[kit] * lasts, 0, Number.POSITIVE_INFINITY, false);
      const balance = builder.row(0, 0);
      builder.add(balance, out, -1);
      if (before >= 0) builder.add(balance, before, 1);
      for (const { column, amount } of byWeek.get(week)!) builder.add(balance, column, amount);
      const limit = builder.row(Number.NEGATIVE_INFINITY, ownedKit[kit]);
      builder.add(limit, out, 1);
      builder.add(limit, short, -1);
      before = out;
    });
  }
}
