/** A list of sowings through the same kitchen rule in every member of a context: what is eaten, week by week. */
import { type Band, bandOf, type Week } from '@twelvemonth/basis';
import {
  type Appetite,
  type Eaten,
  eat,
  type ForecastContext,
  isLean,
  type Lot,
  type Member,
  type RoleRow,
  runSowing,
  type SowingPlan,
  type SowingRun,
  type StoreId,
  scoreOf,
} from '@twelvemonth/growing';

export interface SimulatedMember {
  readonly runs: readonly SowingRun[];
  readonly eaten: Eaten;
}

export interface SimulationInput {
  readonly context: ForecastContext;
  readonly plans: readonly SowingPlan[];
  readonly stock: readonly Lot[];
  readonly appetite: Appetite;
  readonly roles: readonly RoleRow[];
  readonly stores: ReadonlySet<StoreId>;
}

export function simulateMember(input: SimulationInput, member: Member): SimulatedMember {
  const runs = input.plans.map((plan) => runSowing(input.context, member, plan, input.stores));
  const lots = [...input.stock, ...runs.flatMap((run) => run.lots)];
  return { runs, eaten: eat(lots, input.appetite, input.roles) };
}

export function simulate(input: SimulationInput): readonly SimulatedMember[] {
  return input.context.members.map((member) => simulateMember(input, member));
}

export interface RoleWeekView {
  readonly appetite: number;
  readonly bought: number;
  readonly offered: number;
  readonly eaten: Band;
  readonly eatenMean: number;
  readonly fromStock: number;
  readonly stockLeft: number;
  readonly chanceLean: number;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length);

export function roleWeekView(
  appetite: Appetite,
  eaten: readonly Eaten[],
  role: number,
  week: Week,
): RoleWeekView {
  const garden = appetite.garden[role]![week]!;
  const bought = appetite.bought[role]![week]!;
  const had = eaten.map((e) => e.eaten[role]![week]!);
  return {
    appetite: garden + bought,
    bought,
    offered: mean(eaten.map((e) => e.offered[role]![week]!)),
    eaten: bandOf(had),
    eatenMean: mean(had),
    fromStock: mean(eaten.map((e) => e.fromStock[role]![week]!)),
    stockLeft: mean(eaten.map((e) => e.stockLeft[role]![week]!)),
    chanceLean: mean(had.map((v) => (isLean(appetite, role, week, v) ? 1 : 0))),
  };
}

/** Expected score over the members, counted from one week index up to another. */
export function meanScore(
  appetite: Appetite,
  eaten: readonly Eaten[],
  first: number,
  last: number,
): {
  leanWeeks: number;
  missingServings: number;
  eatenServings: number;
  wastedServings: number;
} {
  const scores = eaten.map((e) => scoreOf(e, appetite, first, last));
  return {
    leanWeeks: mean(scores.map((s) => s.leanWeeks)),
    missingServings: mean(scores.map((s) => s.missingServings)),
    eatenServings: mean(scores.map((s) => s.eatenServings)),
    wastedServings: mean(scores.map((s) => s.wastedServings)),
  };
}
