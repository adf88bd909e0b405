/**
 * Rotation as a price: in each class of ground, the strips that a family takes in one year and in the next (and the one
 * after that) are no more than the class has, or the rest is broken on those beyond, at the family's price.
 *
 *   strips(y) + strips(y+1) − broken₁(y) ≤ S
 *   strips(y) + strips(y+1) + strips(y+2) − broken₁(y) − broken₁(y+1) − broken₂(y) ≤ S
 *
 * A crop counts in the year of its planting, and two crops that follow each other in one year count once: strips(y) is
 * the most that stand at once, looked at once a quarter.
 */
import { mondayOf } from '@twelvemonth/basis';
import { familyById } from '@twelvemonth/growing';
import { plantedYear } from '../beds/planted-year.ts';
import { restPricePerM2 } from '../beds/strip-prices.ts';
import { restsIn } from '../beds/strips.ts';
import type { Candidate, GroundClass, PlanningProblem } from '../problem.ts';
import type { ProgramBuilder } from './program-builder.ts';

const quarterWeeks = 13;

/** Year of planting of a candidate: what stands was planted before, what is raised when it takes its ground. */
export function yearOfPlanting(problem: PlanningProblem, candidate: Candidate): number {
  const { plan, group, groundFromWeek } = candidate;
  const day = group === null ? mondayOf(groundFromWeek) : (plan.plantDay ?? plan.plantedDay ?? plan.startDay);
  return plantedYear(day, problem.context.site.latitudeDeg);
}

function quartersOf(problem: PlanningProblem, candidate: Candidate): number[] {
  const from = Math.max(0, candidate.groundFromWeek - problem.fromWeek);
  const to = Math.min(problem.weekCount, candidate.groundToWeek - problem.fromWeek);
  if (to <= from) return [];
  const first = Math.ceil(from / quarterWeeks);
  const last = Math.floor((to - 1) / quarterWeeks);
  if (first > last) return [Math.round((from + to) / 2 / quarterWeeks)];
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

function pastStrips(ground: GroundClass, family: string): Map<number, number> {
  const byYear = new Map<number, number>();
  for (const bed of ground.beds) {
    const years = (ground.past ?? [])
      .filter((p) => p.family === family && p.place === bed.place)
      .filter((p) => (p.placeNumber ?? bed.number) === bed.number)
      .map((p) => p.year);
    for (const year of new Set(years)) byYear.set(year, (byYear.get(year) ?? 0) + bed.stripCount);
  }
  return byYear;
}

/** Columns with the most strips of a family by year. */
function stripsByYear(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  own: readonly { readonly candidate: Candidate; readonly column: number }[],
  stripCount: number,
): Map<number, number> {
  const cells = new Map<number, Map<number, { column: number; strips: number }[]>>();
  for (const { candidate, column } of own) {
    const year = yearOfPlanting(problem, candidate);
    const quarters = cells.get(year) ?? new Map();
    cells.set(year, quarters);
    for (const q of quartersOf(problem, candidate))
      quarters.set(q, [...(quarters.get(q) ?? []), { column, strips: candidate.stripsPerBatch }]);
  }
  const most = new Map<number, number>();
  for (const [year, quarters] of [...cells].sort((a, b) => a[0] - b[0])) {
    const column = builder.column(0, 0, stripCount, false);
    most.set(year, column);
    for (const terms of quarters.values()) {
      const row = builder.row(Number.NEGATIVE_INFINITY, 0);
      builder.add(row, column, -1);
      for (const term of terms) builder.add(row, term.column, term.strips);
    }
  }
  return most;
}

export function rotationRows(
  builder: ProgramBuilder,
  problem: PlanningProblem,
  candidates: readonly Candidate[],
  columnOf: readonly number[],
): void {
  const columns = candidates.map((candidate, c) => ({ candidate, column: columnOf[c]! }));
  problem.ground.forEach((ground, g) => {
    if (!restsIn(ground)) return;
    const here = columns.filter(({ candidate }) => candidate.ground === g);
    const families = [...new Set(here.map(({ candidate }) => candidate.plan.kind.family))].sort();
    for (const family of families) {
      const restYears = familyById(family)?.restYears ?? 0;
      const onRecord = ground.recordedFamilies?.includes(family) === true;
      if (restYears <= 0 || restPricePerM2(family, 0, 1, onRecord) <= 0) continue;
      const own = here.filter(({ candidate }) => candidate.plan.kind.family === family);
      const most = stripsByYear(builder, problem, own, ground.stripCount);
      const past = pastStrips(ground, family);
      const years = [...new Set([...most.keys(), ...past.keys()])].sort((a, b) => a - b);
      const broken = new Map<string, number>();
      for (let length = 2; length <= Math.min(3, restYears + 1); length++)
        for (const first of years) {
          const span = Array.from({ length }, (_, i) => first + i);
          const stand = span.flatMap((year) => most.get(year) ?? []);
          const before = span.reduce((sum, year) => sum + (past.get(year) ?? 0), 0);
          if (stand.length === 0 || stand.length + span.filter((y) => past.has(y)).length < length) continue;
          const price = restPricePerM2(family, first, first + length - 1, onRecord) * ground.stripM2;
          const row = builder.row(Number.NEGATIVE_INFINITY, ground.stripCount - before);
          for (const column of stand) builder.add(row, column, 1);
          const slack = builder.column(price, 0, Number.POSITIVE_INFINITY, false);
          builder.add(row, slack, -1);
          broken.set(`${length}/${first}`, slack);
          if (length === 3)
            for (const shorter of [`2/${first}`, `2/${first + 1}`]) {
              const other = broken.get(shorter);
              if (other !== undefined) builder.add(row, other, -1);
            }
        }
    }
  });
}
