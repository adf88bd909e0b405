/** Two plans side by side: what was added, moved, dropped, and what that gains and loses at table. */
import { dayFromIso } from '@twelvemonth/basis';
import type {
  ChangedSowing,
  ComparedPlan,
  ComparedSowing,
  PlanComparison,
} from '../report/plan-comparison.ts';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { compareWeeks } from './compare-weeks.ts';
import { type MatchedSowings, matchSowings, sowDayOf } from './match-sowings.ts';

/** Counts are rounded to whole plants: less is no change. */
const leastPlantsChange = 1;
const leastShareChange = 0.02;

const planOf = (report: PlanReport): ComparedPlan => ({
  household: report.garden.household,
  site: report.garden.site,
  from: report.from,
  weeksShown: report.weeksShown,
});

/** As begun: what was eaten since does not make it another sowing. */
const plantsOf = (sowing: ReportSowing): number => Math.round(sowing.begun?.plants ?? sowing.count.plant);

function sowingOf(sowing: ReportSowing): ComparedSowing {
  const home = sowing.beds[0] ?? sowing.route.at(-1);
  return {
    id: sowing.id,
    number: sowing.number,
    kind: sowing.kind,
    kindName: sowing.kindName,
    state: sowing.state,
    sow: sowing.sow,
    place: home?.place ?? '',
    placeName: home?.placeName ?? '',
    plants: plantsOf(sowing),
    groundM2: sowing.groundM2,
  };
}

function changeOf({ before, after, by }: MatchedSowings): ChangedSowing {
  return {
    matchedBy: by,
    before: sowingOf(before),
    after: sowingOf(after),
    movedDays: sowDayOf(after) - sowDayOf(before),
    clearMovedDays: dayFromIso(after.clear)! - dayFromIso(before.clear)!,
    plantsChange: plantsOf(after) - plantsOf(before),
    groundM2Change: Math.round((after.groundM2 - before.groundM2) * 100) / 100,
  };
}

function sizeChange({ before, plantsChange }: ChangedSowing): number {
  const least = Math.max(leastPlantsChange, leastShareChange * before.plants);
  return Math.abs(plantsChange) >= least ? plantsChange : 0;
}

/** The last day on which the earlier plan could have begun anything that it shows. */
const shownUntil = (report: PlanReport): number => dayFromIso(report.from)! + report.weeksShown * 7;

export function comparePlans(before: PlanReport, after: PlanReport): PlanComparison {
  const matches = matchSowings(before.sowings, after.sowings);
  const matchedBefore = new Set(matches.map((match) => match.before));
  const matchedAfter = new Set(matches.map((match) => match.after));
  const fresh = after.sowings.filter((sowing) => !matchedAfter.has(sowing));
  const gone = before.sowings.filter((sowing) => !matchedBefore.has(sowing));
  const reaches = shownUntil(before);
  const begins = dayFromIso(after.from)!;
  const isFurther = (sowing: ReportSowing): boolean => sowDayOf(sowing) >= reaches;
  const isPast = (sowing: ReportSowing): boolean => dayFromIso(sowing.clear)! < begins;
  const changes = matches.map(changeOf);
  const moved = changes.filter((change) => change.movedDays !== 0);
  const grown = changes.filter((change) => sizeChange(change) > 0);
  const shrunk = changes.filter((change) => sizeChange(change) < 0);
  const elsewhere = changes.filter((change) => change.before.place !== change.after.place);
  const touched = new Set([...moved, ...grown, ...shrunk, ...elsewhere]);
  const [hoursBefore, hoursAfter] = [before.proof.check.hours, after.proof.check.hours];
  return {
    schemaVersion: 1,
    before: planOf(before),
    after: planOf(after),
    added: fresh.filter((sowing) => !isFurther(sowing)).map(sowingOf),
    further: fresh.filter(isFurther).map(sowingOf),
    dropped: gone.filter((sowing) => !isPast(sowing)).map(sowingOf),
    past: gone.filter(isPast).map(sowingOf),
    moved,
    grown,
    shrunk,
    elsewhere,
    unchanged: changes.length - touched.size,
    ...compareWeeks(before, after),
    hours: { before: hoursBefore, after: hoursAfter, change: hoursAfter - hoursBefore },
  };
}
