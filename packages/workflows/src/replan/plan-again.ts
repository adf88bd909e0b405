/** A garden's problem when there is a plan already: what was begun stands, what is still to begin is remembered. */
import { type Day, dayFromIso, type Issue, mondayOf, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { LastSowing, PlanningProblem } from '@twelvemonth/planning';
import { plannedOf } from '../argue/sowings-of-report.ts';
import { pastDays } from '../problem/build-problem.ts';
import { cutToBenches } from '../problem/standing-benches.ts';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { dayOf } from '../sheets/sheet-days.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';
import { begunCrops, clearedCrops } from './begun-crops.ts';
import { type BegunSowings, begunSowings } from './begun-sowings.ts';

export interface LastPlanWish {
  readonly report: PlanReport;
  /** Ids of sowings whose day has passed and that were not begun all the same. */
  readonly notBegun: readonly string[];
}

/** Weather drawn longer ago than this is not gone on with: the runs would grow with every plan. */
const mostWeatherDays = 366;

/** The day on which the last plan's weather begins, so that forecasts change only where facts do; null: draw anew. */
export function weatherFromOf({ report }: LastPlanWish, fromDay: Day): Day | null {
  const began = dayFromIso(report.weatherFrom ?? '') ?? dayOf(report.from) - pastDays;
  const late = fromDay - pastDays - began;
  return late >= 0 && late <= mostWeatherDays ? began : null;
}

/** Promised sowings whose day has passed stand: they are no longer wishes. */
export function gardenSince(garden: Garden, begun: BegunSowings): Garden {
  const ids = new Set([...begun.begun, ...begun.inFile.map(({ sowing }) => sowing)].map(({ id }) => id));
  return { ...garden, wishes: garden.wishes.filter((wish) => wish.wish !== 'firm' || !ids.has(wish.id)) };
}

function heldWeeksOf(sowing: ReportSowing): number {
  const pots = sowing.route.find((stage) => stage.stage === 'pots');
  return pots === undefined ? 0 : weekOfDay(dayOf(pots.to)) - weekOfDay(dayOf(pots.from));
}

function lastSowingOf(garden: Garden, problem: PlanningProblem, sowing: ReportSowing): LastSowing[] {
  const planned = plannedOf(garden, problem, sowing);
  if (planned === null || planned.stripsCount <= 0) return [];
  const { plan, ground, stripsCount, groundFromWeek, placements } = planned;
  return [
    {
      id: sowing.id,
      kind: sowing.kind,
      route: plan.route,
      startDay: plan.startDay,
      groundFromWeek,
      heldWeeks: heldWeeksOf(sowing),
      clearDay: plan.clearDay ?? mondayOf(groundFromWeek),
      ground,
      stripsCount,
      place: placements[0]?.bed.place ?? sowing.route.at(-1)?.place ?? '',
      placeNumber: placements.length === 1 ? placements[0]!.bed.number : null,
    },
  ];
}

export { begunSowings };

export interface PlannedAgain {
  readonly problem: PlanningProblem;
  /** Ids of crops of the file that are taken as cleared, as the last plan had it. */
  readonly cleared: readonly string[];
  readonly issues: readonly Issue[];
}

export function planAgain(
  garden: Garden,
  problem: PlanningProblem,
  last: PlanReport,
  begun: BegunSowings,
): PlannedAgain {
  const clearDays = new Map(last.sowings.map((sowing) => [sowing.id, dayOf(sowing.clear)]));
  const since = { ...problem, standing: clearedCrops(garden, problem, clearDays, last.cleared ?? []) };
  const { crops, withoutRoom } = begunCrops(garden, since, begun.begun);
  return {
    problem: {
      ...problem,
      standing: cutToBenches(
        problem.benches,
        [...since.standing, ...crops],
        problem.fromWeek,
        problem.weekCount,
      ),
      lastPlan: {
        sowings: begun.drafts.flatMap((sowing) => lastSowingOf(garden, problem, sowing)),
        clearDays,
      },
    },
    cleared: problem.standing
      .filter((crop) => !since.standing.some((other) => other.plan.id === crop.plan.id))
      .map((crop) => crop.plan.id),
    issues: withoutRoom.map((sowing) =>
      workflowIssue('begun-without-room', `sowing ${sowing.number}`, {
        kind: sowing.kindName,
        place: sowing.beds[0]?.placeName ?? '',
        sow: sowing.sow,
      }),
    ),
  };
}
