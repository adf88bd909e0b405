/**
 * Dominance among sowings of one kind in one class of ground: A makes B needless when A takes its ground within B's
 * weeks, gives nearly as much as B by every week and for as long, and takes no more work. "Nearly" is 97 %: the loss
 * is measured in docs/models/dominance.md, so the bound stays a bound of the program over the candidates that are left.
 */
import type { Candidate } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';

const nearlyShare = 0.97;
const binWeeks = 3;

interface Profile {
  readonly candidate: Candidate;
  /** Mean servings that have come by the end of each bin, and that end in or after each bin. */
  readonly comeBy: Float64Array;
  readonly lastFrom: Float64Array;
}

function profileOf(
  candidate: Candidate,
  scenarios: readonly Scenario[],
  firstWeek: number,
  bins: number,
): Profile {
  const comeBy = new Float64Array(bins);
  const lastFrom = new Float64Array(bins);
  const bin = (week: number): number =>
    Math.min(bins - 1, Math.max(0, Math.floor((week - firstWeek) / binWeeks)));
  candidate.lots.forEach((lots, s) => {
    for (const lot of lots) {
      comeBy[bin(lot.fromWeek)]! += lot.servings * scenarios[s]!.prob;
      lastFrom[bin(lot.toWeek)]! += lot.servings * scenarios[s]!.prob;
    }
  });
  for (let b = 1; b < bins; b++) comeBy[b]! += comeBy[b - 1]!;
  for (let b = bins - 2; b >= 0; b--) lastFrom[b]! += lastFrom[b + 1]!;
  return { candidate, comeBy, lastFrom };
}

function dominates(a: Profile, b: Profile): boolean {
  const [x, y] = [a.candidate, b.candidate];
  if (x.groundFromWeek < y.groundFromWeek || x.groundToWeek > y.groundToWeek) return false;
  if (x.minutes > y.minutes + 1e-9 || benchWeeks(x) > benchWeeks(y) + 1e-9) return false;
  for (let i = 0; i < a.comeBy.length; i++) {
    if (a.comeBy[i]! < nearlyShare * b.comeBy[i]! - 0.02) return false;
    if (a.lastFrom[i]! < nearlyShare * b.lastFrom[i]! - 0.02) return false;
  }
  return true;
}

function benchWeeks(candidate: Candidate): number {
  return candidate.bench.reduce((sum, use) => sum + use.m2 * (use.toWeek - use.fromWeek), 0);
}

export function withoutDominated(
  candidates: readonly Candidate[],
  scenarios: readonly Scenario[],
): Candidate[] {
  if (candidates.length < 2) return [...candidates];
  const lots = candidates.flatMap((c) => c.lots.flat());
  const firstWeek = lots.reduce((least, lot) => Math.min(least, lot.fromWeek), Number.POSITIVE_INFINITY);
  const lastWeek = lots.reduce((most, lot) => Math.max(most, lot.toWeek), 0);
  const bins = Math.max(1, Math.ceil((lastWeek - firstWeek + 1) / binWeeks));
  const profiles = candidates.map((candidate) => profileOf(candidate, scenarios, firstWeek, bins));
  const kept: Profile[] = [];
  profiles.forEach((profile, i) => {
    const beaten = profiles.some(
      (other, j) => j !== i && dominates(other, profile) && (!dominates(profile, other) || j < i),
    );
    if (!beaten) kept.push(profile);
  });
  return kept.map((profile) => profile.candidate);
}
