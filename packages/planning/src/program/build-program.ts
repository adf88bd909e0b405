/**
 * The program: whole batches of possible sowings, priced by what the household misses in a few weighted scenarios, in
 * the mean and in the poor ones (CVaR, Rockafellar & Uryasev 2000), plus small prices for work and ground.
 *
 *   min (1 − λ)·Σ p_s·cost_s + λ·(η + Σ p_s·z_s/(1 − α)) + Σ price_c·x_c,   z_s ≥ cost_s − η
 */
import type { Candidate, PlanningProblem } from '../problem.ts';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { costOf } from '../solve/greedy.ts';
import type { LinearProgram } from '../solver-port.ts';
import { cutRows } from './cut-rows.ts';
import { foodFlow } from './food-flow.ts';
import { benchRows, groundRows, plantLimitRows, standingRows } from './ground-rows.ts';
import { kitRows } from './kit-rows.ts';
import { poorYearsShare, poorYearsWeight } from './price.ts';
import { programBuilder } from './program-builder.ts';
import { rotationRows } from './rotation-rows.ts';
import { workRows } from './work-rows.ts';

export interface PlantingProgram {
  readonly program: LinearProgram;
  readonly columnOf: readonly number[];
  /** Constant part of the objective: cost when nothing at all is eaten. */
  readonly offset: number;
}

export function buildProgram(
  problem: PlanningProblem,
  scenarios: readonly Scenario[],
  candidates: readonly Candidate[],
): PlantingProgram {
  const builder = programBuilder();
  const columnOf = candidates.map((candidate) =>
    builder.column(costOf(candidate), 0, candidate.mostBatches, true),
  );
  groundRows(builder, problem, candidates, columnOf);
  benchRows(builder, problem, candidates, columnOf);
  standingRows(builder, candidates, columnOf);
  plantLimitRows(builder, problem, candidates, columnOf);
  workRows(builder, problem, candidates, columnOf);
  for (const rows of [rotationRows, kitRows, cutRows]) rows(builder, problem, candidates, columnOf);

  const eta = builder.column(poorYearsWeight, 0, Number.POSITIVE_INFINITY, false);
  let offset = 0;
  const costs: { column: number; value: number }[] = [];
  scenarios.forEach((scenario, s) => {
    const flow = foodFlow(builder, problem, candidates, columnOf, s);
    const poor = builder.column(
      (poorYearsWeight * scenario.prob) / poorYearsShare,
      0,
      Number.POSITIVE_INFINITY,
      false,
    );
    const tail = builder.row(flow.emptyCost, Number.POSITIVE_INFINITY);
    builder.add(tail, poor, 1);
    builder.add(tail, eta, 1);
    const share = (1 - poorYearsWeight) * scenario.prob;
    for (const slice of flow.slices) {
      builder.add(tail, slice.column, slice.price);
      costs.push({ column: slice.column, value: -share * slice.price });
    }
    offset += share * flow.emptyCost;
  });
  const program = builder.build();
  for (const { column, value } of costs) program.colCost[column]! += value;
  return { program, columnOf, offset };
}
