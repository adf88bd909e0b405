/**
 * What a sowing left out would be worth to the relaxation, from the row duals of those let in. A serving on a shelf is
 * worth what the best week until its end pays for it:
 *
 *   V(w) = max(μ(role, w), keep·V(w + 1)),   reduced cost = cost − Σ side·y − Σ servings·V
 *
 * These V complete the duals of the rows that the program holds to a feasible set for the program with all sowings, so
 * the bound below holds for it. A bound: what is let in is optimal, and of what is left out no more can be taken than
 * the ground holds at a time: for each class of ground the dearest chain of spans, times its strips.
 */
import type { PlantingProgram, ProgramParts } from '../program/build-program.ts';

/** Reduced costs of all sowings, negative where letting one in would pay. */
export function reducedCosts(
  { inflows, side, candidates, problem }: ProgramParts,
  { flows }: PlantingProgram,
  rowDual: Float64Array,
): Float64Array {
  const { weekCount } = problem;
  const worth = flows.map(({ eatRow }) => {
    const table = new Float64Array(inflows.shelves.length * weekCount);
    inflows.shelves.forEach(({ role, keepShare, lastWeek }, shelf) => {
      let best = 0;
      for (let w = lastWeek; w >= 0; w--) {
        const row = eatRow[role]![w]!;
        best = Math.max(keepShare * best, row < 0 ? 0 : rowDual[row]!);
        table[shelf * weekCount + w] = best;
      }
    });
    return table;
  });
  const costs = new Float64Array(candidates.length);
  for (let c = 0; c < candidates.length; c++) {
    let cost = side.colCost[c]!;
    for (let e = side.starts[c]!; e < side.starts[c + 1]!; e++)
      cost -= side.values[e]! * rowDual[side.indices[e]!]!;
    for (let s = 0; s < flows.length; s++) {
      const at = c * inflows.scenarioCount + s;
      const table = worth[s]!;
      for (let e = inflows.starts[at]!; e < inflows.starts[at + 1]!; e++)
        cost -= inflows.servings[e]! * table[inflows.shelf[e]! * weekCount + inflows.week[e]!]!;
    }
    costs[c] = cost;
  }
  return costs;
}

export interface Chain {
  /** Worth of one strip through the horizon. */
  readonly worth: number;
  readonly sowings: readonly number[];
}

/** For each class of ground the dearest sequence of sowings that one strip can carry, by worth −reduced cost. */
export function dearestChains(
  { candidates, problem }: ProgramParts,
  costs: Float64Array,
  leftOut: (sowing: number) => boolean,
): Chain[] {
  const { weekCount, fromWeek } = problem;
  const clamp = (week: number): number => Math.min(Math.max(0, week - fromWeek), weekCount);
  const beginning = problem.ground.map(() => Array.from({ length: weekCount + 1 }, (): number[] => []));
  candidates.forEach((candidate, c) => {
    if (costs[c]! < 0 && leftOut(c)) beginning[candidate.ground]![clamp(candidate.groundFromWeek)]!.push(c);
  });
  return beginning.map((byWeek) => {
    const best = new Float64Array(weekCount + 2);
    const taken = new Int32Array(weekCount + 1).fill(-1);
    for (let w = weekCount; w >= 0; w--) {
      best[w] = best[w + 1]!;
      for (const c of byWeek[w]!) {
        const { groundToWeek, stripsPerBatch } = candidates[c]!;
        const worth = -costs[c]! / stripsPerBatch + best[Math.max(w + 1, clamp(groundToWeek))]!;
        if (worth > best[w]!) [best[w], taken[w]] = [worth, c];
      }
    }
    const sowings: number[] = [];
    for (let w = 0; w <= weekCount; ) {
      const c = taken[w]!;
      if (c < 0) w++;
      else {
        sowings.push(c);
        w = Math.max(w + 1, clamp(candidates[c]!.groundToWeek));
      }
    }
    return { worth: best[0]!, sowings };
  });
}
