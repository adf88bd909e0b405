/**
 * What a missing serving costs. Appetite of a role-week is cut into three slices: the first 40 % dearest, the next 40 %
 * in the middle, the last 20 % cheapest (convex in what is missing), times the weight of the role. Weeks of the tail,
 * beyond those shown, count less and less: what stands and lies there is worth what it replaces.
 */
import type { PlanningProblem } from '../problem.ts';

export const slices = [
  { share: 0.4, price: 1.5 },
  { share: 0.4, price: 1 },
  { share: 0.2, price: 0.5 },
] as const;

/** Weight of poor years (CVaR) against the mean, and the part of years that counts as poor (1 − α). */
export const poorYearsWeight = 0.3;
export const poorYearsShare = 0.2;
export const poorYearsWeightOf = (problem: PlanningProblem): number =>
  problem.poorYearsWeight ?? poorYearsWeight;
/** Price of an hour of work and of a strip for a week, in servings: small, to choose the lesser of two equals. */
export const hourPrice = 0.15;
/** An hour beyond what people have, where standing crops take it: dear. */
export const beyondHourPrice = 6;
export const stripWeekPrice = 0.004;

/**
 * Price of a serving that nobody eats, in the form of the same price on what is offered and, taken back, on what is
 * eaten. Measured on fourteen invented gardens: at 0.02 waste falls by a quarter to a half for a few per cent more
 * missing; at 0.05 a tenth to a half more is missing.
 */
export const wastePrice = 0.02;

export function weekWeight(problem: PlanningProblem, weekIndex: number): number {
  if (weekIndex < problem.shownWeeks) return 1;
  const tail = Math.max(1, problem.weekCount - problem.shownWeeks);
  return Math.max(0.15, 1 - (weekIndex - problem.shownWeeks) / tail);
}

export function roleWeight(problem: PlanningProblem, roleIndex: number): number {
  const id = problem.appetite.roles[roleIndex];
  return problem.roles.find((row) => row.id === id)?.weight ?? 1;
}

/** Price of a missing serving in a slice of a role-week, and what eating one takes back of the price of waste. */
export function slicePrice(
  problem: PlanningProblem,
  roleIndex: number,
  weekIndex: number,
  price: number,
): number {
  return price * roleWeight(problem, roleIndex) * weekWeight(problem, weekIndex) + wastePrice;
}
