/** Published windows laid on real days: what both rivals read, instead of simulated weather. */
import { civilFromDay, type Day, dayFromCivil, mondayOf } from '@twelvemonth/basis';
import {
  type CalendarRow,
  type CropType,
  calendarRows,
  fullServingsOf,
  type Harvest,
  type KitchenRole,
  southernShiftDays,
} from '@twelvemonth/growing';
import { canGrowIn, plantsPerStrip, routeChoice } from '../../candidates/routes.ts';
import type { GroundClass, PlanningProblem } from '../../problem.ts';

/** Days-of-year of a calendar run over 365; southern sites are half a year later. */
const yearDays = 365;
/** A gardener's plants stand on the bench this much longer than their reference days. Judged. */
const usualRaisingFactor = 1.5;

export interface CalendarWindow {
  readonly kind: CropType;
  readonly row: CalendarRow;
  readonly year: number;
  readonly sowFromDay: Day;
  readonly sowToDay: Day;
  readonly harvestFromDay: Day;
  /** Last day of the published harvest window: the ground is free the week after. */
  readonly harvestToDay: Day;
}

const spanDays = (from: number, to: number): number => (to - from + yearDays) % yearDays;

export function daysToFirstHarvest(row: CalendarRow): number {
  return spanDays(row.sowFromDayOfYear, row.harvestFromDayOfYear);
}

function longestHarvestDays(kind: CropType): number {
  return kind.harvests.reduce((most, harvest) => Math.max(most, harvest.windowDays), 0);
}

function windowOf(kind: CropType, row: CalendarRow, year: number, southern: boolean): CalendarWindow {
  const shift = southern ? southernShiftDays : 0;
  const sowFromDay = dayFromCivil(year, 1, 1) + row.sowFromDayOfYear - 1 + shift;
  const harvestFromDay = sowFromDay + daysToFirstHarvest(row);
  return {
    kind,
    row,
    year,
    sowFromDay,
    sowToDay: sowFromDay + spanDays(row.sowFromDayOfYear, row.sowToDayOfYear),
    harvestFromDay,
    harvestToDay: harvestFromDay + spanDays(row.harvestFromDayOfYear, row.harvestToDayOfYear),
  };
}

/** A row for open ground serves tubs too: the published calendar knows no tubs. */
export function groundFor(problem: PlanningProblem, kind: CropType, row: CalendarRow): number[] {
  const fits = (ground: GroundClass): boolean =>
    (ground.growsIn === row.growsIn || (row.growsIn === 'open' && ground.growsIn === 'tub')) &&
    canGrowIn(kind, ground) &&
    plantsPerStrip(kind, ground) > 0;
  return problem.ground.flatMap((ground, g) => (fits(ground) ? [g] : []));
}

/** Every window that is open on some day of the weeks shown, of kinds on offer that the places can carry. */
export function windowsInHorizon(problem: PlanningProblem): CalendarWindow[] {
  const endDay = mondayOf(problem.fromWeek + problem.shownWeeks);
  const southern = problem.context.site.latitudeDeg < 0;
  const firstYear = civilFromDay(problem.fromDay).year - 1;
  const lastYear = civilFromDay(endDay).year;
  const windows: CalendarWindow[] = [];
  for (const row of calendarRows()) {
    const kind = problem.kinds.find((k) => k.id === row.kind);
    if (kind === undefined || kind.perennial) continue;
    if (groundFor(problem, kind, row).length === 0 || routeChoice(problem, row.route) === null) continue;
    for (let year = firstYear; year <= lastYear; year++) {
      const window = windowOf(kind, row, year, southern);
      if (window.sowToDay >= problem.fromDay && window.sowFromDay < endDay) windows.push(window);
    }
  }
  return windows;
}

/** The middle of the window; today when that has passed and the window is still open; null beyond the horizon. */
export function middleDay(problem: PlanningProblem, window: CalendarWindow): Day | null {
  const middle = Math.floor((window.sowFromDay + window.sowToDay) / 2);
  const day = Math.max(problem.fromDay, middle);
  return day < mondayOf(problem.fromWeek + problem.shownWeeks) ? day : null;
}

/** When a sowing of a day stands in its ground. A window that never closes ends after the kind's own harvest time. */
export function groundDays(window: CalendarWindow, startDay: Day): { readonly from: Day; readonly to: Day } {
  const { kind, row } = window;
  const raised = row.route === 'module' || row.route === 'warm';
  const from = raised ? startDay + Math.round(kind.raisingDays * usualRaisingFactor) : startDay;
  const allYear = spanDays(row.harvestFromDayOfYear, row.harvestToDayOfYear) >= yearDays - 1;
  const to = allYear
    ? startDay + Math.round(kind.raisingDays * usualRaisingFactor) + longestHarvestDays(kind)
    : window.harvestToDay;
  return { from, to: Math.max(from + 7, to) };
}

function wholeServings(harvest: Harvest): number {
  let cuts = 1;
  if (harvest.habit === 'cuts' || harvest.habit === 'tips') {
    cuts = 0;
    for (let cut = 0, size = 1; cut < harvest.cutsCount; cut++, size *= harvest.cutDecayShare) cuts += size;
  }
  return fullServingsOf(harvest, 1) * cuts * (harvest.habit === 'thinnings' ? harvest.thinShare : 1);
}

/** The role that a kind feeds most, by published yield, and the servings a plant gives to it. */
export function mainRole(kind: CropType): { readonly role: KitchenRole; readonly servingsPerPlant: number } {
  const byRole = new Map<KitchenRole, number>();
  for (const harvest of kind.harvests)
    byRole.set(harvest.role, Math.max(byRole.get(harvest.role) ?? 0, wholeServings(harvest)));
  let best: { role: KitchenRole; servingsPerPlant: number } | null = null;
  for (const [role, servings] of byRole)
    if (best === null || servings > best.servingsPerPlant) best = { role, servingsPerPlant: servings };
  const main = best ?? { role: 'cooked-greens' as const, servingsPerPlant: 0 };
  return { ...main, servingsPerPlant: main.servingsPerPlant * (1 - kind.growingLossShare) };
}
