/**
 * Scenario reduction: a few members stand for all, each weighted by the members nearest to it. Members are compared by
 * what a set of probe sowings gives in them, week by week of the year; medoids are chosen by forward selection
 * (Heitsch & Römisch 2003): each next one is the member that most reduces the summed distance of all members to their
 * nearest chosen one.
 */
import { invariant } from '@twelvemonth/basis';
import { type Member, runSowing, type SowingPlan } from '@twelvemonth/growing';
import type { PlanningProblem } from '../problem.ts';

export interface Scenario {
  readonly member: Member;
  readonly prob: number;
}

const periodWeeks = 8;

function featuresOf(problem: PlanningProblem, member: Member, probes: readonly SowingPlan[]): Float64Array {
  const periods = Math.ceil(problem.weekCount / periodWeeks);
  const features = new Float64Array(probes.length * periods);
  probes.forEach((plan, p) => {
    for (const lot of runSowing(problem.context, member, plan, problem.stores).lots) {
      const period = Math.floor((lot.fromWeek - problem.fromWeek) / periodWeeks);
      if (period >= 0 && period < periods) features[p * periods + period]! += lot.servings;
    }
  });
  return features;
}

function scaledDistances(features: readonly Float64Array[]): number[][] {
  const width = features[0]?.length ?? 0;
  const scale = new Float64Array(width);
  for (const f of features) for (let i = 0; i < width; i++) scale[i]! += Math.abs(f[i]!) / features.length;
  return features.map((a) =>
    features.map((b) => {
      let sum = 0;
      for (let i = 0; i < width; i++) if (scale[i]! > 1e-9) sum += Math.abs(a[i]! - b[i]!) / (scale[i]! + 1);
      return sum;
    }),
  );
}

export function chooseScenarios(
  problem: PlanningProblem,
  probes: readonly SowingPlan[],
  count: number,
): readonly Scenario[] {
  const { members } = problem.context;
  invariant(members.length > 0, 'planning needs members');
  const distances = scaledDistances(members.map((member) => featuresOf(problem, member, probes)));
  const chosen: number[] = [];
  const nearest = members.map(() => Number.POSITIVE_INFINITY);
  while (chosen.length < Math.min(count, members.length)) {
    let best = -1;
    let bestSum = Number.POSITIVE_INFINITY;
    for (let c = 0; c < members.length; c++) {
      if (chosen.includes(c)) continue;
      let sum = 0;
      for (let m = 0; m < members.length; m++) sum += Math.min(nearest[m]!, distances[c]![m]!);
      if (sum < bestSum - 1e-12) [best, bestSum] = [c, sum];
    }
    chosen.push(best);
    for (let m = 0; m < members.length; m++) nearest[m] = Math.min(nearest[m]!, distances[best]![m]!);
  }
  const weights = chosen.map(() => 0);
  for (let m = 0; m < members.length; m++) {
    let home = 0;
    for (let c = 1; c < chosen.length; c++)
      if (distances[chosen[c]!]![m]! < distances[chosen[home]!]![m]!) home = c;
    weights[home]! += 1 / members.length;
  }
  return chosen.map((index, i) => ({ member: members[index]!, prob: weights[i]! }));
}
