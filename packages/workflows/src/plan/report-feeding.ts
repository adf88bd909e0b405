import { isoOfWeek, meanOf } from '@twelvemonth/basis';
import { feedingOf, type PlanningProblem, restsIn } from '@twelvemonth/planning';
import type { ReportFeeding } from '../report/ground-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

/** A builder's barrow, level. Common practice. */
const barrowL = 80;

const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** What beds are given before what; tubs and trays are filled anew and have no line. */
export function reportFeeding(problem: PlanningProblem, sowings: readonly ChosenSowing[]): ReportFeeding[] {
  const kindNames = new Map(sowings.map(({ id, plan }) => [id, plan.kind.name]));
  const fed = sowings
    .filter((sowing) => restsIn(problem.ground[sowing.ground]!))
    .map(({ id, plan, ground, groundFromWeek, groundToWeek, placements, runs, standing }) => ({
      id,
      kind: plan.kind,
      stripM2: problem.ground[ground]!.stripM2,
      groundFromWeek,
      groundToWeek,
      placements,
      standing: standing !== null && standing.state === 'done',
      nitrogenLeftGPerM2: meanOf(runs.map((run) => run.nitrogenLeftGPerM2)),
    }));
  const end = problem.fromWeek + problem.shownWeeks;
  return feedingOf(fed)
    .filter(({ week }) => week < end)
    .map(({ bed, week, before, compostL, savedL, lime, residueOf }) => ({
      place: bed.place,
      placeName: bed.placeName,
      number: bed.of > 1 ? bed.number : 0,
      day: isoOfWeek(week),
      before,
      kindName: kindNames.get(before) ?? before,
      compostL: Math.round(compostL),
      barrows: hundredths(compostL / barrowL),
      savedL: Math.round(savedL),
      lime,
      residueOf,
    }));
}
