/**
 * From the relaxation to whole batches, by a dive: what is whole is kept, the largest fractions are rounded up as far as
 * ground, benches and hours allow, what is next to nothing is dropped, and the solver relaxes the rest again, until all
 * is whole. Before it, the price of a job is spread over the batches that a sowing is likely to have, so that few large
 * sowings beat many small.
 */
import type { Choice } from '../problem.ts';
import type { PlantingProgram, ProgramParts } from '../program/build-program.ts';
import type { KeptRelaxation } from '../solver-port.ts';
import { choicesWith } from './evaluate.ts';
import { groundLedger } from './ground-ledger.ts';
import { jobPrice } from './tidy.ts';

const whole = 1e-6;
/** Part of the fractions that is rounded up in one round. */
const upAtOnceShare = 0.06;
/** A fraction of a batch below this goes when nothing whole stands beside it. */
const dropBelow = 0.08;
const mostRounds = 200;
/** Rounds in which the price of jobs follows the batches before anything is fixed. */
const priceRounds = 2;

interface Bounds {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

/** What may still be begun on top of what is fixed, and what has been fixed of each crop that stands. */
function fixing(parts: ProgramParts, bounds: Bounds) {
  const ledger = groundLedger(parts.problem);
  const groups = new Set<string>();
  return {
    /** Raises a sowing's least batches as far as it fits; says whether it could. */
    raise: (c: number, to: number): boolean => {
      const candidate = parts.candidates[c]!;
      const more = to - bounds.lower[c]!;
      if (more < whole) return false;
      if (candidate.group !== null) {
        if (groups.has(candidate.group)) return false;
        groups.add(candidate.group);
      } else if (ledger.room(candidate) < more - whole) return false;
      ledger.take(candidate, more);
      bounds.lower[c] = to;
      return true;
    },
  };
}

function changesOf(
  planting: PlantingProgram,
  parts: ProgramParts,
  bounds: Bounds,
  cost: Float64Array | null,
) {
  const sowings = [...planting.columnOf.keys()]
    .filter((c) => planting.columnOf[c]! >= 0)
    .sort((a, b) => planting.columnOf[a]! - planting.columnOf[b]!);
  return {
    columns: Int32Array.from(sowings, (c) => planting.columnOf[c]!),
    lower: Float64Array.from(sowings, (c) => bounds.lower[c]!),
    upper: Float64Array.from(sowings, (c) => bounds.upper[c]!),
    cost: cost === null ? null : Float64Array.from(sowings, (c) => parts.side.colCost[c]! + cost[c]!),
  };
}

const valuesOf = (planting: PlantingProgram, point: Float64Array): Float64Array =>
  Float64Array.from(planting.columnOf, (column) => (column < 0 ? 0 : point[column]!));

/** Null when it was stopped, or no whole plan lay that way. */
export async function dive(
  parts: ProgramParts,
  planting: PlantingProgram,
  kept: KeptRelaxation,
  relaxed: Float64Array,
  stopRequested: () => boolean,
): Promise<{ readonly choices: readonly Choice[] | null; readonly iterations: number }> {
  const { candidates } = parts;
  const bounds: Bounds = {
    lower: new Float64Array(candidates.length),
    upper: Float64Array.from(candidates, ({ mostBatches }) => mostBatches),
  };
  const { raise } = fixing(parts, bounds);
  let values = relaxed;
  let iterations = 0;
  const jobPrices = (): Float64Array =>
    Float64Array.from(candidates, ({ group }, c) =>
      group === null ? jobPrice / Math.max(1, values[c]!) : 0,
    );
  const again = async (jobs: Float64Array | null): Promise<boolean> => {
    await kept.change(changesOf(planting, parts, bounds, jobs));
    const answer = await kept.relax(stopRequested);
    iterations += answer.iterations;
    if (answer.colValue === null) return false;
    values = valuesOf(planting, answer.colValue);
    return true;
  };
  for (let round = 0; round < mostRounds; round++) {
    if (round >= priceRounds && !fixMore(parts, values, bounds, raise)) {
      const batches = new Map([...values].flatMap((v, c) => (v > 0.5 ? [[c, Math.round(v)] as const] : [])));
      return { choices: choicesWith(candidates, batches), iterations };
    }
    if (!(await again(round < priceRounds ? jobPrices() : null))) return { choices: null, iterations };
  }
  return { choices: null, iterations };
}

/** False when everything is whole. */
function fixMore(
  { candidates }: ProgramParts,
  values: Float64Array,
  bounds: Bounds,
  raise: (c: number, to: number) => boolean,
): boolean {
  const broken: { c: number; rest: number }[] = [];
  values.forEach((value, c) => {
    const rest = value - Math.floor(value + whole);
    if (rest > whole) broken.push({ c, rest });
    if (value >= 1 - whole) raise(c, Math.floor(value + whole));
  });
  if (broken.length === 0) return false;
  broken.sort((a, b) => b.rest - a.rest || a.c - b.c);
  const wanted = Math.max(1, Math.ceil(broken.length * upAtOnceShare));
  let raised = 0;
  for (const { c } of broken) {
    if (raised > 0 && raised >= wanted) break;
    if (raise(c, Math.ceil(values[c]!))) raised++;
    else if (candidates[c]!.group === null)
      bounds.upper[c] = Math.max(bounds.lower[c]!, Math.floor(values[c]! + whole));
  }
  for (const { c, rest } of broken)
    if (rest < dropBelow && candidates[c]!.group === null && bounds.lower[c]! < Math.ceil(values[c]!))
      bounds.upper[c] = Math.max(bounds.lower[c]!, Math.floor(values[c]! + whole));
  return true;
}
