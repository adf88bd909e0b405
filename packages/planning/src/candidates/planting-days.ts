import type { Day } from '@twelvemonth/basis';
import type { Candidate, DaySpan, PlanningProblem } from '../problem.ts';

const isWithin = (spans: readonly DaySpan[], day: Day | null): boolean =>
  day !== null && spans.some((span) => day >= span.fromDay && day <= span.toDay);

/** Neither sown nor planted out on a day on which nothing is to be planted. */
export const plantedWhenAllowed = (
  { noPlanting }: Pick<PlanningProblem, 'noPlanting'>,
  plan: Pick<Candidate['plan'], 'startDay' | 'plantDay'>,
): boolean => !isWithin(noPlanting, plan.startDay) && !isWithin(noPlanting, plan.plantDay);
