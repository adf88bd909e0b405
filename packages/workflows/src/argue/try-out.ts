/** The plan with some sowings left out and others put in, through the kitchen rule in a few members. */
import { isoOfWeek, meanOf } from '@twelvemonth/basis';
import { type Eaten, eat, runSowing, type SowingPlan, type SowingRun, scoreOf } from '@twelvemonth/growing';
import { type PlanningProblem, simulatedCost } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { EatenBecause } from '../report/argue-report.ts';

/** Enough to tell a serving from none, and quick. */
export const triedMembers = 10;

/** A plan, simulated: what try-outs start from. */
export interface LivedPlan {
  readonly problem: PlanningProblem;
  readonly sowings: readonly ChosenSowing[];
  readonly eaten: readonly Eaten[];
}

export const runsOf = (problem: PlanningProblem, plan: SowingPlan, memberCount: number): SowingRun[] =>
  problem.context.members
    .slice(0, memberCount)
    .map((member) => runSowing(problem.context, member, plan, problem.stores));

export function eatenWith(
  { problem, sowings }: LivedPlan,
  without: ReadonlySet<string>,
  added: readonly (readonly SowingRun[])[],
  memberCount = triedMembers,
): Eaten[] {
  const kept = sowings.filter((sowing) => !without.has(sowing.id));
  return problem.context.members
    .slice(0, memberCount)
    .map((_, m) =>
      eat(
        [
          ...problem.stock,
          ...kept.flatMap((sowing) => sowing.runs[m]!.lots),
          ...added.flatMap((runs) => runs[m]!.lots),
        ],
        problem.appetite,
        problem.roles,
      ),
    );
}

/**
 * Week index up to which a sowing's worth is counted: the weeks shown; those behind them, too, where it is missed there
 * rather than before. `missedUntil`: servings missing without it up to a week index.
 */
export function countedUntil(
  { shownWeeks, weekCount }: PlanningProblem,
  missedUntil: (lastWeek: number) => number,
): number {
  return missedUntil(shownWeeks) * 2 >= missedUntil(weekCount) ? shownWeeks : weekCount;
}

export interface Gap {
  readonly missing: number;
  readonly lean: number;
  /** The program's own price of what is missing: dear foods and poor years weigh more. */
  readonly cost: number;
}

/** Mean servings missing and lean role-weeks, up to a week index: that of the last week shown, or of the tail. */
export function gapOf(problem: PlanningProblem, eaten: readonly Eaten[], lastWeek = problem.shownWeeks): Gap {
  const scores = eaten.map((e) => scoreOf(e, problem.appetite, 0, lastWeek));
  return {
    missing: meanOf(scores.map((s) => s.missingServings)),
    lean: meanOf(scores.map((s) => s.leanWeeks)),
    cost: simulatedCost(problem, eaten),
  };
}

const worthAWordServings = 0.5;
const worthAWeekServings = 0.08;

/** What is eaten more in `more` than in `less`, by role, with the first and last week in which it is felt. */
export function eatenBecause(
  problem: PlanningProblem,
  more: readonly Eaten[],
  less: readonly Eaten[],
): EatenBecause[] {
  const count = Math.min(more.length, less.length);
  return problem.appetite.roles
    .flatMap((role, r): EatenBecause[] => {
      let [servings, from, to] = [0, -1, -1];
      for (let w = 0; w < problem.weekCount; w++) {
        let gain = 0;
        for (let m = 0; m < count; m++) gain += (more[m]!.eaten[r]![w]! - less[m]!.eaten[r]![w]!) / count;
        servings += gain;
        if (gain < worthAWeekServings) continue;
        if (from < 0) from = w;
        to = w;
      }
      if (servings < worthAWordServings || from < 0) return [];
      const week = (w: number): string => isoOfWeek(problem.fromWeek + w);
      return [{ role, from: week(from), to: week(to), servings }];
    })
    .sort((a, b) => b.servings - a.servings);
}
