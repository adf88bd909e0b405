/** Strips of real beds that nobody has in a span of weeks, as the plan at hand has laid them out. */
import type { Week } from '@twelvemonth/basis';
import type { Bed, Placement, PlanningProblem } from '@twelvemonth/planning';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';

export interface FreeRun {
  readonly bed: Bed;
  /** First strip, 1-based. */
  readonly stripsFrom: number;
  readonly stripsCount: number;
}

export type Holding = Pick<ChosenSowing, 'id' | 'ground' | 'groundFromWeek' | 'groundToWeek' | 'placements'>;

export const sameBed = (a: Bed, b: Bed): boolean => a.place === b.place && a.number === b.number;

/** Those that hold ground of a class in a span of weeks; `to` exclusive. */
export function holdersOf<T extends Holding>(
  sowings: readonly T[],
  ground: number,
  fromWeek: Week,
  toWeek: Week,
): T[] {
  return sowings.filter((s) => s.ground === ground && s.groundFromWeek < toWeek && fromWeek < s.groundToWeek);
}

/** Runs of neighbouring strips that are free all the time, longest first. */
export function freeRuns(
  problem: PlanningProblem,
  sowings: readonly Holding[],
  ground: number,
  fromWeek: Week,
  toWeek: Week,
): FreeRun[] {
  const holders = holdersOf(sowings, ground, fromWeek, toWeek);
  const runs: FreeRun[] = [];
  for (const bed of problem.ground[ground]!.beds) {
    const taken = new Uint8Array(bed.stripCount + 2);
    for (const { placements } of holders)
      for (const p of placements)
        if (sameBed(p.bed, bed)) taken.fill(1, p.stripsFrom, p.stripsFrom + p.stripsCount);
    let from = 0;
    for (let strip = 1; strip <= bed.stripCount + 1; strip++) {
      const free = strip <= bed.stripCount && taken[strip] === 0;
      if (free && from === 0) from = strip;
      if (free || from === 0) continue;
      runs.push({ bed, stripsFrom: from, stripsCount: strip - from });
      from = 0;
    }
  }
  return runs.sort((a, b) => b.stripsCount - a.stripsCount);
}

/** So many strips out of the free runs: side by side in the run that they fill best, else in the fewest runs. */
export function placeInRuns(runs: readonly FreeRun[], stripsCount: number, booking: string): Placement[] {
  const whole = runs.filter((run) => run.stripsCount >= stripsCount).at(-1);
  const placements: Placement[] = [];
  let left = stripsCount;
  for (const { bed, stripsFrom, stripsCount: length } of whole === undefined ? runs : [whole]) {
    if (left <= 0) break;
    const here = Math.min(left, length);
    placements.push({ booking, bed, stripsFrom, stripsCount: here, follows: [] });
    left -= here;
  }
  return placements;
}
