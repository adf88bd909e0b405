/**
 * All that limits sowings apart from food: ground, benches, crops that stand, wishes, hours. Its rows are the same
 * whichever sowings the program holds, so that a sowing left out can be priced from them.
 */
import type { Candidate, PlanningProblem } from '../problem.ts';
import { costOf } from '../solve/greedy.ts';
import type { LinearProgram } from '../solver-port.ts';
import { cutRows } from './cut-rows.ts';
import { benchRows, groundRows, plantLimitRows, standingRows } from './ground-rows.ts';
import { kitRows } from './kit-rows.ts';
import { type ProgramBuilder, programBuilder } from './program-builder.ts';
import { rotationRows } from './rotation-rows.ts';
import { workRows } from './work-rows.ts';

type SideRows = (
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
) => void;

const sides: readonly SideRows[] = [
  groundRows,
  benchRows,
  standingRows,
  plantLimitRows,
  workRows,
  rotationRows,
  kitRows,
  cutRows,
];

/** Columns of all candidates first, in their order, then the rows' own. */
export function sideProgram(problem: PlanningProblem, candidates: readonly Candidate[]): LinearProgram {
  const builder = programBuilder();
  const columnOf = candidates.map((candidate) =>
    builder.column(costOf(candidate), 0, candidate.mostBatches, true),
  );
  for (const rows of sides) rows(builder, problem, candidates, columnOf);
  return builder.build();
}
