/**
 * The program: whole batches of possible sowings, priced by what the household misses in a few weighted scenarios, in
 * the mean and in the poor ones (CVaR, Rockafellar & Uryasev 2000), plus small prices for work and ground.
 *
 *   min (1 − λ)·Σ p_s·cost_s + λ·(η + Σ p_s·z_s/(1 − α)) + Σ price_c·x_c,   z_s ≥ cost_s − η
 *
 * It begins with the side rows of all sowings and the columns of some; others are let in later.
 */
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import type { LinearProgram } from '../solver-port.ts';
import { type FoodFlow, foodFlow } from './food-flow.ts';
import { type Inflows, inflowsOf } from './inflows.ts';
import { poorYearsShare, poorYearsWeightOf } from './price.ts';
import { type ProgramBuilder, programBuilder } from './program-builder.ts';
import { sideProgram } from './side-rows.ts';

/** What of a program is the same whichever sowings it holds. */
export interface ProgramParts {
  readonly problem: PlanningProblem;
  readonly scenarios: readonly Scenario[];
  readonly candidates: readonly Candidate[];
  readonly indexOf: ReadonlyMap<Candidate, number>;
  readonly side: LinearProgram;
  readonly inflows: Inflows;
}

export interface PlantingProgram {
  readonly builder: ProgramBuilder;
  readonly flows: readonly FoodFlow[];
  /** Column of each sowing, −1 while it is left out. */
  readonly columnOf: Int32Array;
  /** Constant part of the objective: cost when nothing at all is eaten. */
  readonly offset: number;
}

export function programParts(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
): ProgramParts {
  const side = sideProgram(problem, candidates);
  const indexOf = new Map(candidates.map((candidate, c) => [candidate, c]));
  const inflows = inflowsOf(problem, candidates, scenarios.length);
  return { problem, scenarios, candidates, indexOf, side, inflows };
}

function addSide(builder: ProgramBuilder, { side, candidates }: ProgramParts): void {
  side.rowLower.forEach((lower, row) => {
    builder.row(lower, side.rowUpper[row]!);
  });
  for (let column = candidates.length; column < side.colCost.length; column++)
    copyColumn(builder, side, column, false);
}

function copyColumn(builder: ProgramBuilder, from: LinearProgram, column: number, whole: boolean): number {
  const own = builder.column(from.colCost[column]!, from.colLower[column]!, from.colUpper[column]!, whole);
  for (let e = from.starts[column]!; e < from.starts[column + 1]!; e++)
    builder.add(from.indices[e]!, own, from.values[e]!);
  return own;
}

/** Lets sowings in, by their indices among the candidates. */
export function letIn(parts: ProgramParts, planting: PlantingProgram, sowings: Iterable<number>): void {
  for (const sowing of sowings) {
    if (planting.columnOf[sowing]! >= 0) continue;
    const column = copyColumn(planting.builder, parts.side, sowing, true);
    planting.columnOf[sowing] = column;
    for (const flow of planting.flows) flow.feed(sowing, column);
  }
}

/** Roles that a program leaves out, as they are: what they cost in each scenario. */
export interface LookedAt {
  readonly roles: ReadonlySet<number>;
  readonly otherCost: readonly number[];
}

export function wholeTable({ problem, scenarios }: ProgramParts): LookedAt {
  return { roles: new Set(problem.appetite.roles.keys()), otherCost: scenarios.map(() => 0) };
}

export function plantingProgram(
  parts: ProgramParts,
  sowings: Iterable<number>,
  { roles, otherCost }: LookedAt = wholeTable(parts),
): PlantingProgram {
  const { problem, scenarios, inflows } = parts;
  const builder = programBuilder();
  addSide(builder, parts);
  const poorYearsWeight = poorYearsWeightOf(problem);
  const eta = builder.column(poorYearsWeight, 0, Number.POSITIVE_INFINITY, false);
  let offset = 0;
  const flows = scenarios.map(({ prob }, s) => {
    const meanShare = (1 - poorYearsWeight) * prob;
    return foodFlow(builder, problem, inflows, roles, s, meanShare, (emptyCostOfRoles) => {
      const emptyCost = emptyCostOfRoles + otherCost[s]!;
      const poor = builder.column(
        (poorYearsWeight * prob) / poorYearsShare,
        0,
        Number.POSITIVE_INFINITY,
        false,
      );
      const tail = builder.row(emptyCost, Number.POSITIVE_INFINITY);
      builder.add(tail, poor, 1);
      builder.add(tail, eta, 1);
      offset += meanShare * emptyCost;
      return tail;
    });
  });
  const planting = { builder, flows, columnOf: new Int32Array(parts.candidates.length).fill(-1), offset };
  letIn(parts, planting, sowings);
  return planting;
}
