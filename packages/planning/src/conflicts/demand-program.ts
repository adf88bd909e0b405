/**
 * Can the gardener's own demands be met together? A small program over the sowings of the kinds that are demanded: the
 * ground, benches and hours there are, what stands and is promised, and the numbers wanted from below and above. Whole
 * batches are not asked for, so a demand is called impossible only where not even parts of strips would do.
 */
import type { Candidate, PlanningProblem } from '../problem.ts';
import { benchRows, groundRows } from '../program/ground-rows.ts';
import { type ProgramBuilder, programBuilder } from '../program/program-builder.ts';
import { workRows } from '../program/work-rows.ts';
import type { LinearProgram, SolverPort } from '../solver-port.ts';

/** What stands, and what is promised, goes on in one of its ways. */
function oneWayOfEach(
  builder: ProgramBuilder,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const rows = new Map<string, number>();
  candidates.forEach(({ group }, c) => {
    if (group === null) return;
    const row = rows.get(group) ?? builder.row(1, 1);
    rows.set(group, row);
    builder.add(row, columnOf[c]!, 1);
  });
}

/** `counted`: the kind of which as many plants as possible are wanted; null: it is enough that all can be met. */
function demandProgram(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  counted: string | null,
): LinearProgram {
  const builder = programBuilder();
  const plantsOf = (candidate: Candidate): number =>
    candidate.group === null ? candidate.plan.plantsCount : 0;
  const columnOf = candidates.map((candidate) => {
    const isCounted = candidate.plan.kind.id === counted;
    return builder.column(isCounted ? -plantsOf(candidate) : 0, 0, candidate.mostBatches, false);
  });
  groundRows(builder, problem, candidates, columnOf);
  benchRows(builder, problem, candidates, columnOf);
  oneWayOfEach(builder, candidates, columnOf);
  workRows(builder, problem, candidates, columnOf);
  for (const { kind, leastPlants, mostPlants } of problem.limits) {
    const row = builder.row(kind === counted ? 0 : leastPlants, mostPlants);
    candidates.forEach((candidate, c) => {
      if (candidate.plan.kind.id === kind) builder.add(row, columnOf[c]!, plantsOf(candidate));
    });
  }
  return builder.build();
}

export async function demandsCanBeMet(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  solver: SolverPort,
): Promise<boolean> {
  const planted = new Set(candidates.filter((c) => c.group === null).map(({ plan }) => plan.kind.id));
  if (problem.limits.some(({ kind, leastPlants }) => leastPlants > 0 && !planted.has(kind))) return false;
  if (candidates.length === 0) return true;
  const answer = await solver.relax(demandProgram(problem, candidates, null), () => false);
  return answer.status !== 'infeasible';
}

/** As many plants of a kind as could be had beside the other demands; null where that cannot be told. */
export async function mostPlantsBeside(
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  kind: string,
  solver: SolverPort,
): Promise<number | null> {
  const { colValue } = await solver.relax(demandProgram(problem, candidates, kind), () => false);
  if (colValue === null) return null;
  return candidates.reduce(
    (sum, { plan, group }, c) =>
      group === null && plan.kind.id === kind ? sum + plan.plantsCount * colValue[c]! : sum,
    0,
  );
}
