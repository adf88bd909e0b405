import type { MinuteSpan, PlanningProblem } from '../problem.ts';
import { addSowingWork, type Outcome, type WorkAct, type WorkedSowing, workActs } from './sowing-work.ts';

/** Minutes by week index of the horizon, one row an act. */
export type MinutesByAct = Readonly<Record<WorkAct, Float64Array>>;

export function minutesByAct(
  problem: PlanningProblem,
  sowing: WorkedSowing,
  outcomes: readonly Outcome[],
): MinutesByAct {
  const rows = Object.fromEntries(
    workActs.map((act) => [act, new Float64Array(problem.weekCount)]),
  ) as Record<WorkAct, Float64Array>;
  addSowingWork(problem, sowing, outcomes, (act, week, minutes) => {
    const w = week - problem.fromWeek;
    if (w >= 0 && w < problem.weekCount) rows[act][w]! += minutes;
  });
  return rows;
}

/** Up to the grain that the solver sees, never less than it takes. */
const grainPerMinute = 64;
const roundedUp = (minutes: number): number => Math.ceil(minutes * grainPerMinute - 1e-9) / grainPerMinute;

export interface CandidateWork {
  /** All work, as spans of weeks with about the same minutes: never less than the work, hardly more. */
  readonly work: readonly MinuteSpan[];
  /** Work that it takes whether or not anybody eats of it: all but picking and putting by. */
  readonly minutes: number;
}

export function candidateWork(
  problem: PlanningProblem,
  sowing: WorkedSowing,
  outcomes: readonly Outcome[],
): CandidateWork {
  const all = new Float64Array(problem.weekCount);
  let minutes = 0;
  addSowingWork(problem, sowing, outcomes, (act, week, amount) => {
    const w = week - problem.fromWeek;
    if (w < 0 || w >= problem.weekCount) return;
    all[w]! += amount;
    if (act !== 'pick' && act !== 'putBy') minutes += amount;
  });
  return { work: spansOf(all, problem.fromWeek), minutes };
}

/** Neighbouring weeks that differ by less are one span, with the minutes of the fuller: fewer coefficients. */
const mergedShare = 0.2;
const mergedMinutes = 0.2;

function spansOf(byWeek: Float64Array, fromWeek: number): MinuteSpan[] {
  const spans: MinuteSpan[] = [];
  let [start, least, most] = [0, 0, 0];
  const close = (end: number): void => {
    if (most > 0)
      spans.push({ fromWeek: fromWeek + start, toWeek: fromWeek + end, minutes: roundedUp(most) });
  };
  byWeek.forEach((minutes, w) => {
    const [low, high] = [Math.min(least, minutes), Math.max(most, minutes)];
    const alike = high - low <= Math.max(mergedMinutes, mergedShare * high) && minutes > 0 === most > 0;
    if (w > 0 && alike) {
      least = low;
      most = high;
      return;
    }
    if (w > 0) close(w);
    start = w;
    least = minutes;
    most = minutes;
  });
  close(byWeek.length);
  return spans;
}
