/**
 * What of the last plan is in the ground (or in trays) by now. A sowing whose day has passed is taken as begun as
 * planned, unless somebody says it was not, or the garden file has the crop itself: what the file says goes.
 */
import type { Day } from '@twelvemonth/basis';
import type { Garden, StandingSowing, VagueDay } from '@twelvemonth/garden';
import { sameSowingWithinDays, sowDayOf } from '../compare/match-sowings.ts';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { dayOf } from '../sheets/sheet-days.ts';

export interface BegunSowings {
  /** Taken as begun as planned. */
  readonly begun: readonly ReportSowing[];
  /** Their day has passed, but the garden file has the crop itself: sowing and id in the file. */
  readonly inFile: readonly { readonly sowing: ReportSowing; readonly standing: string }[];
  /** Still to be begun, of drafts. */
  readonly drafts: readonly ReportSowing[];
}

const placesOf = (sowing: ReportSowing): readonly string[] => [
  ...sowing.beds.map((bed) => bed.place),
  ...sowing.route.map((stage) => stage.place),
];

/** How many days a crop in the file is from a sowing of the plan; null when it is another. */
function daysApart(standing: StandingSowing, sowing: ReportSowing): number | null {
  if (standing.id === sowing.id) return -1;
  const places = placesOf(sowing);
  const here = places.includes(standing.place) || places.includes(standing.plantInto ?? '');
  if (standing.kind !== sowing.kind || !here) return null;
  const apart = (said: VagueDay | null, day: Day | null): number | null =>
    said === null || day === null ? null : Math.max(0, said.fromDay - day, day - said.toDay);
  const out = sowing.plantOut === null ? sowDayOf(sowing) : dayOf(sowing.route.at(-1)!.from);
  const days = apart(standing.sown, sowDayOf(sowing)) ?? apart(standing.planted, out) ?? 0;
  return days <= sameSowingWithinDays ? days : null;
}

/** A crop that came into the file since is one sowing of the plan at most: the nearest. */
function inFileOf(
  standingNow: readonly StandingSowing[],
  sowings: readonly ReportSowing[],
): Map<ReportSowing, string> {
  const known = new Set<string>();
  const pairs = standingNow
    .flatMap((standing) => sowings.map((sowing) => ({ standing, sowing, days: daysApart(standing, sowing) })))
    .filter((pair): pair is typeof pair & { days: number } => pair.days !== null)
    .sort((a, b) => a.days - b.days || a.sowing.number - b.sowing.number);
  const found = new Map<ReportSowing, string>();
  for (const { standing, sowing } of pairs) {
    if (known.has(standing.id) || found.has(sowing)) continue;
    known.add(standing.id);
    found.set(sowing, standing.id);
  }
  return found;
}

export function begunSowings(
  last: PlanReport,
  garden: Garden,
  fromDay: Day,
  notBegun: readonly string[],
): BegunSowings {
  const ofPlan = last.sowings.filter((sowing) => sowing.state !== 'done' || sowing.begun !== undefined);
  const due = ofPlan.filter((sowing) => sowDayOf(sowing) < fromDay && !notBegun.includes(sowing.id));
  const stoodBefore = new Set(last.sowings.filter((s) => !ofPlan.includes(s)).map(({ id }) => id));
  const written = garden.standing.filter(({ id }) => !stoodBefore.has(id));
  const inFile = inFileOf(written, due);
  return {
    begun: due.filter((sowing) => !inFile.has(sowing)),
    inFile: [...inFile].map(([sowing, standing]) => ({ sowing, standing })),
    drafts: ofPlan.filter((sowing) => sowing.state === 'draft' && sowDayOf(sowing) >= fromDay),
  };
}
