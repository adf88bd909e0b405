/** Both rivals in unseen members, and whether they are opponents or straw men. */
import type { ForecastContext } from '@twelvemonth/growing';
import type { PlanningProblem } from '../../problem.ts';
import { type PlanScore, scorePlaced } from '../measure.ts';
import { calendarGardener } from './calendar-gardener.ts';
import { practisedGardener } from './practised-gardener.ts';

/** Where ground suffices a rival must harvest this much, or the comparison says that it is a straw man. */
export const strawManBelowKgPerM2Year = 2;

export interface RivalScore extends PlanScore {
  readonly kgPerM2Year: number;
  readonly strawMan: boolean;
}

export interface RivalScores {
  readonly calendar: RivalScore;
  readonly practised: RivalScore;
}

/** Weeks as indices from the problem's first week, `lastWeek` exclusive: 13 and 65 by the rules. */
export function rivalScores(
  problem: PlanningProblem,
  checkContext: ForecastContext,
  firstWeek: number,
  lastWeek: number,
): RivalScores {
  const scoreOf = (rival: typeof calendarGardener): RivalScore => {
    const { placed } = rival(problem);
    const { score, kgPerM2Year } = scorePlaced(problem, checkContext, placed, firstWeek, lastWeek);
    return { ...score, kgPerM2Year, strawMan: kgPerM2Year < strawManBelowKgPerM2Year };
  };
  return { calendar: scoreOf(calendarGardener), practised: scoreOf(practisedGardener) };
}
