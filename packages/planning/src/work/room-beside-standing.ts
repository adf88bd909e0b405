/**
 * What stands is looked after in any case. Where it takes nearly all the hours that people have, or more, a share of
 * them is still left for what is new, or nothing could grow through such a week at all.
 *
 *   cap' = max(cap, least that what stands asks for + share · cap)
 */
import { leftForNewShareOfCap } from '@twelvemonth/growing';
import { standingOptions } from '../candidates/standing-options.ts';
import type { Candidate, PlanningProblem } from '../problem.ts';

/** Members in which the work of what stands is reckoned. */
const triedMembers = 6;

/** Minutes by week index of crops that stand, each in whichever of its ways asks for least that week. */
export function leastStandingMinutes(
  problem: Pick<PlanningProblem, 'fromWeek' | 'weekCount'>,
  options: readonly Candidate[],
): Float64Array {
  const byGroup = new Map<string, Float64Array>();
  for (const { group, work } of options) {
    if (group === null) continue;
    const own = new Float64Array(problem.weekCount);
    for (const { fromWeek, toWeek, minutes } of work)
      own.fill(minutes, fromWeek - problem.fromWeek, toWeek - problem.fromWeek);
    const least = byGroup.get(group);
    byGroup.set(group, least === undefined ? own : own.map((minutes, w) => Math.min(minutes, least[w]!)));
  }
  const all = new Float64Array(problem.weekCount);
  for (const own of byGroup.values()) for (let w = 0; w < all.length; w++) all[w]! += own[w]!;
  return all;
}

export function capBesideStanding(problem: PlanningProblem): Float64Array | null {
  const { capMinutesByWeek, context } = problem;
  if (capMinutesByWeek === null) return null;
  const members = context.members.slice(0, triedMembers);
  const options = standingOptions(
    problem,
    members.map((member) => ({ member, prob: 1 / members.length })),
  );
  const least = leastStandingMinutes(problem, options);
  return capMinutesByWeek.map((cap, w) => Math.max(cap, least[w]! + leftForNewShareOfCap * cap));
}
