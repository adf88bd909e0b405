/**
 * The middle of the forecast harvest against the middle of the published one. Sown in the middle of the published sowing
 * window; the forecast runs from the first week in which there is something to pick to the last.
 */
import {
  dayFromCivil,
  isoFromDay,
  mondayOf,
  quantileOfSorted,
  type Week,
} from '../../packages/basis/src/index.ts';
import {
  type CalendarRow,
  type CropType,
  kindById,
  type Lot,
  runSowing,
  type SowingRun,
} from '../../packages/growing/src/index.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';
import type { Split } from '../split.ts';
import { middleGroup } from '../targets.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';
import {
  calendarId,
  figureOf,
  firstSowingDay,
  middleOfSowing,
  sourceOf,
  spanDays,
  tradeStations,
  yearlyCalendarRows,
} from './calendar.ts';

/** What is asked: 18 days of the rows that a fit may see, 10 of those that are held out. */
export const toleranceDays: Readonly<Record<Split, number>> = { calibration: 18, 'held-out': 10 };
/** A window as long as this has no middle to speak of. */
const allYearDays = 350;
/** A week that offers less than this share of the best one does not count as harvest. */
const realWeekShare = 0.1;

interface Window {
  readonly from: number;
  readonly to: number;
}

const median = (days: readonly number[]): number => quantileOfSorted(Float64Array.from(days).sort(), 0.5);

/** Servings by the week in which they can be picked; what stands is spread over the weeks in which it does. */
function offeredByWeek(lots: readonly Lot[]): Map<Week, number> {
  const offered = new Map<Week, number>();
  for (const lot of lots) {
    const lastWeek = lot.form === 'standing' ? Math.max(lot.fromWeek, lot.toWeek - 1) : lot.fromWeek;
    const share = lot.servings / (lastWeek - lot.fromWeek + 1);
    for (let week = lot.fromWeek; week <= lastWeek; week++)
      offered.set(week, (offered.get(week) ?? 0) + share);
  }
  return offered;
}

/** From the first to the last week of harvest of one member; none when it harvests nothing. */
function windowOf(kind: CropType, run: SowingRun): Window[] {
  const offered = offeredByWeek(run.lots);
  const best = Math.max(0, ...offered.values());
  if (best === 0) return [];
  const weeks = [...offered].filter(([, servings]) => servings >= realWeekShare * best).map(([week]) => week);
  const picked = { from: mondayOf(Math.min(...weeks)), to: mondayOf(Math.max(...weeks)) + 6 };
  // What is lifted at once may be lifted on any day of its window.
  const all = run.harvests.reduce((sum, harvest) => sum + harvest.servings, 0);
  const lifted = run.harvests.filter(
    (harvest, i) => kind.harvests[i]!.habit === 'once' && harvest.servings >= realWeekShare * all,
  );
  return [
    {
      from: Math.min(picked.from, ...lifted.map((harvest) => harvest.firstDay)),
      to: Math.max(picked.to, ...lifted.map((harvest) => harvest.lastDay)),
    },
  ];
}

/** From the first to the last week of harvest, medians of the members; null when most of them harvest nothing. */
function forecastOf(kind: CropType, row: CalendarRow, station: string): Window | null {
  const context = contextAt(station);
  const exposure = row.growsIn === 'tub' ? 'open' : row.growsIn;
  const plan = sowingPlan(kind, row.route, exposure, middleOfSowing(row));
  const windows = context.members.flatMap((member): Window[] =>
    windowOf(kind, runSowing(context, member, plan, noStores)),
  );
  if (2 * windows.length < context.members.length) return null;
  return { from: median(windows.map((w) => w.from)), to: median(windows.map((w) => w.to)) };
}

/** Days by which a middle lies after (+) or before (−) the published one, in the year that is nearest. */
function daysAfter(middle: number, row: CalendarRow): number {
  const published =
    firstSowingDay(row) -
    row.sowFromDayOfYear +
    row.harvestFromDayOfYear +
    spanDays(row.harvestFromDayOfYear, row.harvestToDayOfYear) / 2;
  const days = middle - published;
  return days - 365 * Math.round(days / 365);
}

/** Month and day of a day of a common year. */
const monthAndDay = (dayOfYear: number): string =>
  isoFromDay(dayFromCivil(2025, 1, 1) + dayOfYear - 1).slice(5);

/** Days by which the middle of a kind's harvest lies after the published one, the stations' mean; infinite where it does not come. */
export function daysAfterMiddle(
  kind: CropType,
  row: CalendarRow,
): { days: number; windows: readonly Window[] } {
  const windows = tradeStations.map((station) => forecastOf(kind, row, station));
  const comes = windows.filter((window) => window !== null);
  const off = comes.map((w) => daysAfter((w.from + w.to) / 2, row));
  const days =
    comes.length < windows.length ? Number.POSITIVE_INFINITY : off.reduce((a, b) => a + b, 0) / off.length;
  return { days, windows: comes };
}

function middleRow(row: CalendarRow, split: Split): TruthRow {
  const { days: got, windows: comes } = daysAfterMiddle(kindById(row.kind)!, row);
  const said = comes
    .map((w) => `${isoFromDay(Math.round(w.from))} to ${isoFromDay(Math.round(w.to))}`)
    .join(', ');
  const truth = truthRows(middleGroup, 'd', sourceOf(row))(
    calendarId(row),
    0,
    Math.round(got),
    toleranceDays[split],
    `${said}; published ${monthAndDay(row.harvestFromDayOfYear)} to ${monthAndDay(row.harvestToDayOfYear)}`,
  );
  return { ...truth, figure: figureOf(row) };
}

/** One row for each published window of the split that has a middle; the two stations' middles are averaged. */
export const harvestMiddleRows = (split: Split): TruthRow[] =>
  rowsWithMiddle(split).map((row) => middleRow(row, split));

export const rowsWithMiddle = (split: Split): CalendarRow[] =>
  yearlyCalendarRows(split).filter(
    (row) => spanDays(row.harvestFromDayOfYear, row.harvestToDayOfYear) < allYearDays,
  );
