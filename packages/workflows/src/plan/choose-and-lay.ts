/**
 * A plan and its place in real beds. Where beds refuse what was chosen, the reason goes back as a cut on the ground of
 * those weeks and the plan is chosen again, twice at most; what still finds no strips is left out or sown on less
 * ground. So no plan is shown that cannot be laid out.
 */
import type { ChosenPlan, GroundCut, PlanningProblem } from '@twelvemonth/planning';
import type { ReportSowing } from '../report/plan-report.ts';
import { type ChosenSowing, chosenSowings } from './chosen-sowings.ts';
import type { Unplaced } from './lay-in-beds.ts';

const mostRounds = 2;

export interface LaidPlan {
  readonly chosen: ChosenPlan;
  readonly sowings: readonly ChosenSowing[];
  readonly unplaced: readonly Unplaced[];
}

const cutOf = ({ ground, fromWeek, toWeek, wantedStrips, placedStrips }: Unplaced): GroundCut => ({
  ground,
  fromWeek,
  toWeek,
  strips: wantedStrips - placedStrips,
});

export async function chooseAndLay(
  problem: PlanningProblem,
  choose: (problem: PlanningProblem) => Promise<ChosenPlan>,
  onBeds: (chosen: ChosenPlan) => void,
  before: readonly ReportSowing[] = [],
): Promise<LaidPlan> {
  let cuts: readonly GroundCut[] = problem.groundCuts ?? [];
  for (let round = 0; ; round++) {
    const chosen = await choose({ ...problem, groundCuts: cuts });
    onBeds(chosen);
    const laid = chosenSowings(problem, chosen.choices, chosen.scenarios, before);
    if (laid.unplaced.length === 0 || round === mostRounds) return { chosen, ...laid };
    cuts = [...cuts, ...laid.unplaced.map(cutOf)];
  }
}
