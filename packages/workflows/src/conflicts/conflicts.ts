/**
 * Demands that cannot be met together: sets from which nothing can be left out, over the gardener's own demands only. One
 * wanted thing of each set is dropped, the last named and a promise last of all, until the rest can be met.
 */
import type { Garden } from '@twelvemonth/garden';
import type { ForecastContext } from '@twelvemonth/growing';
import {
  type Candidate,
  demandsCanBeMet,
  irreducibleSet,
  mostPlantsBeside,
  type PlanningProblem,
  type SolverPort,
  standingOptions,
} from '@twelvemonth/planning';
import type { ReportConflict } from '../report/conflict-report.ts';
import { demandedSowings, sowingsFor } from './demanded-sowings.ts';
import { type Demand, demandsOf, gardenWith, reportDemand } from './demands.ts';
import { promisesClash } from './promises-clash.ts';

/** A look at what ground and time allow needs no fine weather. */
const lookedAtMembers = 2;
const mostConflicts = 6;

export interface FoundConflicts {
  /** The garden without the demands that were dropped. */
  readonly garden: Garden;
  readonly conflicts: readonly ReportConflict[];
}

const isPromise = (demand: Demand): boolean => demand.demand === 'wish' && demand.wish.wish === 'firm';
const kindWanted = (demand: Demand): string | null =>
  demand.demand === 'yearly'
    ? demand.kind
    : demand.demand === 'wish' && demand.wish.wish === 'at-least'
      ? demand.wish.kind
      : null;

/** `problemFor`: the problem of a garden in a context, with all that stands. */
export async function conflictsOf(
  garden: Garden,
  context: ForecastContext,
  solver: SolverPort | null,
  problemFor: (garden: Garden, context: ForecastContext) => PlanningProblem,
): Promise<FoundConflicts> {
  const { all, wanted } = demandsOf(garden);
  if (solver === null || wanted.length === 0) return { garden, conflicts: [] };
  const members = context.members.slice(0, lookedAtMembers);
  const few = { ...context, members };
  const problemOf = (demands: readonly Demand[]): PlanningProblem =>
    problemFor(gardenWith(garden, demands), few);
  const scenarios = members.map((member) => ({ member, prob: 1 / members.length }));
  const kinds = new Set(wanted.flatMap((demand) => kindWanted(demand) ?? []));
  const open = { ...problemOf(wanted), noPlanting: [] };
  const demanded = demandedSowings([problemOf(all), open], scenarios, kinds);
  const candidatesFor = (problem: PlanningProblem): Candidate[] => [
    ...standingOptions(problem, scenarios),
    ...sowingsFor(problem, demanded),
  ];
  const canBeMet = async (demands: readonly Demand[]): Promise<boolean> => {
    const problem = problemOf(demands);
    if (promisesClash(gardenWith(garden, demands), problem)) return false;
    return demandsCanBeMet(problem, candidatesFor(problem), solver);
  };
  let left = all;
  const conflicts: ReportConflict[] = [];
  if (!(await canBeMet([]))) return { garden, conflicts };
  while (conflicts.length < mostConflicts && !(await canBeMet(left))) {
    const set = await irreducibleSet(left, canBeMet);
    const soft = set.filter((demand) => wanted.includes(demand) && !isPromise(demand));
    const drop = soft.at(-1) ?? set.filter((demand) => wanted.includes(demand)).at(-1);
    if (drop === undefined) break;
    const kind = kindWanted(drop);
    const beside = problemOf(set);
    const possible =
      kind === null ? null : await mostPlantsBeside(beside, candidatesFor(beside), kind, solver);
    conflicts.push({
      set: set.map((demand) => reportDemand(garden, demand)),
      drop: reportDemand(garden, drop),
      possiblePlants: possible === null ? null : Math.floor(possible + 1e-6),
    });
    left = left.filter((demand) => demand !== drop);
  }
  return { garden: gardenWith(garden, left), conflicts };
}
