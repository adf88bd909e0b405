/** Published sowing calendars against the forecast: sown in the middle of the window, when does the first harvest come? */
import { dayFromCivil, isoFromDay, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { tables } from '../../packages/growing/src/generated/catalogue.ts';
import {
  type CalendarRow,
  type CropType,
  calendarRows,
  kindById,
  NEVER,
  runSowing,
  sourceById,
} from '../../packages/growing/src/index.ts';
import { contextAt, firstDay, noStores, sowingPlan } from '../garden-under-test.ts';
import { type Split, splitOf } from '../split.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

export const tradeStations = ['wattisham', 'dublin'] as const;
const toleranceDays = 21;

export const calendarId = (row: CalendarRow): string => `${row.kind}/${row.route}/${row.growsIn}`;

/** The id that a published window is held out by. */
export const figureOf = (row: CalendarRow): string => `calendar: ${calendarId(row)}`;

/** Perennials stand for years: their calendar has no sowing that a forecast could be made for. */
export const yearlyCalendarRows = (split: Split): readonly CalendarRow[] =>
  calendarRows().filter((row) => kindById(row.kind)?.perennial === false && splitOf(figureOf(row)) === split);

/** What a calendar means by harvest: the heaviest one that does not follow another. */
export function mainHarvestIndex(kind: CropType): number {
  const weights = kind.harvests.map((harvest) => (harvest.after === null ? harvest.yieldGPerPlant : 0));
  return weights.indexOf(Math.max(...weights));
}

export function sourceOf(row: CalendarRow): string {
  const packed = tables.rowsBySubject[`calendar:${calendarId(row)}`]?.[0];
  const [source, basis] = [packed?.[5] ?? '', packed?.[7] ?? ''];
  const title = sourceById(source)?.title ?? source;
  return title === '' ? `*common practice* (${basis})` : title;
}

/** Days before (−) or after (+) a window; nothing inside it. The window lies in the year that is nearest. */
function daysOutside(day: number, fromDayOfYear: number, toDayOfYear: number): number {
  const length = spanDays(fromDayOfYear, toDayOfYear);
  let best = Number.POSITIVE_INFINITY;
  for (const year of [2025, 2026, 2027, 2028]) {
    const from = dayFromCivil(year, 1, 1) + fromDayOfYear - 1;
    const outside = day < from ? day - from : Math.max(0, day - from - length);
    if (Math.abs(outside) < Math.abs(best)) best = outside;
  }
  return best;
}

export const spanDays = (fromDayOfYear: number, toDayOfYear: number): number =>
  (toDayOfYear - fromDayOfYear + 365) % 365;

/** The sowing window opens in 2026. */
export const firstSowingDay = (row: CalendarRow): number => firstDay + row.sowFromDayOfYear - 1;

export const middleOfSowing = (row: CalendarRow): number =>
  firstSowingDay(row) + Math.round(spanDays(row.sowFromDayOfYear, row.sowToDayOfYear) / 2);

function calendarRowAt(row: CalendarRow, station: string): TruthRow {
  const kind = kindById(row.kind)!;
  const exposure = row.growsIn === 'tub' ? 'open' : row.growsIn;
  const plan = sowingPlan(kind, row.route, exposure, middleOfSowing(row));
  const context = contextAt(station);
  const index = mainHarvestIndex(kind);
  const runs = context.members.map((member) => runSowing(context, member, plan, noStores));
  const days = Float64Array.from(runs, (run) => run.harvests[index]!.firstDay).sort();
  const median = quantileOfSorted(days, 0.5);
  const comes = median < NEVER / 2;
  const shown = comes ? isoFromDay(Math.round(median)) : `never (${runs[0]!.harvests[index]!.reason})`;
  const outside = comes
    ? Math.round(daysOutside(median, row.harvestFromDayOfYear, row.harvestToDayOfYear))
    : Number.POSITIVE_INFINITY;
  const truth = truthRows('first harvest outside its published window', 'd', sourceOf(row))(
    `${calendarId(row)} at ${station}`,
    0,
    outside,
    toleranceDays,
    `sown ${isoFromDay(plan.startDay)}, ${kind.harvests[index]!.id} from ${shown}`,
  );
  return { ...truth, figure: figureOf(row) };
}

/** One row for each published window of the split and each station. */
export const calendarTruthRows = (split: Split): TruthRow[] =>
  yearlyCalendarRows(split).flatMap((row) => tradeStations.map((station) => calendarRowAt(row, station)));
