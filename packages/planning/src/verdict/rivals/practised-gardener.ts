/** The practised gardener (bench/rivals/RULES.md): quantities the household can use, successions, winter beds first. */
import { civilFromDay, type Day, dayFromCivil, mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import { type CropType, type KitchenRole, seasonDayOfYear, southernShiftDays } from '@twelvemonth/growing';
import { plantsPerStrip } from '../../candidates/routes.ts';
import type { PlanningProblem } from '../../problem.ts';
import {
  type CalendarWindow,
  daysToFirstHarvest,
  groundFor,
  mainRole,
  middleDay,
  windowsInHorizon,
} from './calendar-windows.ts';
import { type RivalGround, type RivalPlan, rivalGround } from './rival-ground.ts';

const quickDays = 84;
const successionWeeks = 3;
const droppedUnderShare = 0.25;
const winterBedsShare = 2 / 3;
const yearWeeks = 52;

interface Wish {
  readonly window: CalendarWindow;
  readonly startDay: Day;
  readonly servings: number;
  /** Year in whose August the bed is counted; null: not for the winter, or not in open ground. */
  readonly winterOf: number | null;
}

function appetiteIn(problem: PlanningProblem, role: KitchenRole, week: Week): number {
  const r = problem.appetite.roles.indexOf(role);
  if (r < 0) return 0;
  let index = week - problem.appetite.fromWeek;
  while (index >= problem.appetite.weekCount) index -= yearWeeks;
  while (index < 0) index += yearWeeks;
  return problem.appetite.garden[r]![Math.min(index, problem.appetite.weekCount - 1)]!;
}

/** For each week: how many kinds serve a role, and on how many rows of its own each kind does. */
interface Serving {
  kinds(role: KitchenRole, week: Week): number;
  rows(kind: CropType, week: Week): number;
}

function servingOf(windows: readonly CalendarWindow[]): Serving {
  const kinds = new Map<string, Set<string>>();
  const rows = new Map<string, number>();
  for (const window of windows) {
    const { role } = mainRole(window.kind);
    for (let w = weekOfDay(window.harvestFromDay); w <= weekOfDay(window.harvestToDay); w++) {
      const key = `${role}/${w}`;
      kinds.set(key, (kinds.get(key) ?? new Set()).add(window.kind.id));
      const own = `${window.kind.id}/${w}`;
      rows.set(own, (rows.get(own) ?? 0) + 1);
    }
  }
  return {
    kinds: (role, week) => Math.max(1, kinds.get(`${role}/${week}`)?.size ?? 1),
    rows: (kind, week) => Math.max(1, rows.get(`${kind.id}/${week}`) ?? 1),
  };
}

function servingsFor(
  problem: PlanningProblem,
  serving: Serving,
  kind: CropType,
  fromWeek: Week,
  toWeek: Week,
): number {
  const { role } = mainRole(kind);
  let sum = 0;
  for (let w = fromWeek; w <= toWeek; w++)
    sum += appetiteIn(problem, role, w) / serving.kinds(role, w) / serving.rows(kind, w);
  return sum;
}

/** Year of the winter (counted in its August) in which the harvest touches December to April, open ground only. */
function winterOf(window: CalendarWindow, southern: boolean): number | null {
  if (window.row.growsIn !== 'open') return null;
  for (let day = window.harvestFromDay; day <= window.harvestToDay; day += 7) {
    const doy = seasonDayOfYear(day, southern);
    if (doy < 335 && doy > 120) continue;
    const { year } = civilFromDay(day + (southern ? southernShiftDays : 0));
    return doy >= 335 ? year : year - 1;
  }
  return null;
}

function wishesOf(problem: PlanningProblem, windows: readonly CalendarWindow[]): Wish[] {
  const serving = servingOf(windows);
  const southern = problem.context.site.latitudeDeg < 0;
  const endDay = mondayOf(problem.fromWeek + problem.shownWeeks);
  return windows.flatMap((window): Wish[] => {
    const { kind, row } = window;
    const wait = daysToFirstHarvest(row);
    const base = { window, winterOf: winterOf(window, southern) };
    if (wait > quickDays) {
      const startDay = middleDay(problem, window);
      if (startDay === null) return [];
      const [from, to] = [weekOfDay(window.harvestFromDay), weekOfDay(window.harvestToDay)];
      return [{ ...base, startDay, servings: servingsFor(problem, serving, kind, from, to) }];
    }
    const wishes: Wish[] = [];
    const lastDay = Math.min(window.sowToDay, endDay - 1);
    for (let day = window.sowFromDay; day <= lastDay; day += successionWeeks * 7) {
      if (day < problem.fromDay) continue;
      const from = weekOfDay(day + wait);
      const servings = servingsFor(problem, serving, kind, from, from + successionWeeks - 1);
      wishes.push({ ...base, startDay: day, servings });
    }
    return wishes;
  });
}

function augustFree(problem: PlanningProblem, ground: RivalGround, year: number): number {
  const southern = problem.context.site.latitudeDeg < 0;
  const august = dayFromCivil(year, 8, 15) + (southern ? -southernShiftDays : 0);
  const week = Math.max(problem.fromWeek, weekOfDay(august));
  return problem.ground.reduce(
    (sum, own, g) => sum + (own.growsIn === 'open' ? ground.freeStrips(g, week) * own.stripM2 : 0),
    0,
  );
}

/** What the household counts in plants a year ("120 garlic"); slow kinds only, which are sown once in a window. */
function yearlyPlants(problem: PlanningProblem, window: CalendarWindow): number {
  if (daysToFirstHarvest(window.row) <= quickDays) return 0;
  return problem.limits.find((limit) => limit.kind === window.kind.id)?.leastPlants ?? 0;
}

/** Places a wish where most is free, cut to what is free and to `mostM2`; the m² it got, 0 when dropped. */
function place(problem: PlanningProblem, ground: RivalGround, wish: Wish, mostM2: number): number {
  const { window, startDay } = wish;
  const { kind, row } = window;
  const { servingsPerPlant } = mainRole(kind);
  if (wish.servings <= 0 || servingsPerPlant <= 0) return 0;
  const plants = Math.max(wish.servings / servingsPerPlant, yearlyPlants(problem, window));
  const options = groundFor(problem, kind, row)
    .map((g) => {
      const perStrip = plantsPerStrip(kind, problem.ground[g]!);
      return {
        g,
        perStrip,
        room: ground.room(window, startDay, g),
        tub: problem.ground[g]!.growsIn === 'tub',
      };
    })
    .sort((a, b) => Number(a.tub) - Number(b.tub) || b.room * b.perStrip - a.room * a.perStrip);
  let missing = plants;
  let m2Left = mostM2;
  const takes: { g: number; strips: number }[] = [];
  for (const { g, perStrip, room } of options) {
    const { stripM2 } = problem.ground[g]!;
    const asked =
      takes.length === 0 ? Math.max(1, Math.round(missing / perStrip)) : Math.round(missing / perStrip);
    const strips = Math.min(asked, room, Math.floor(m2Left / stripM2 + 1e-9));
    if (strips <= 0) continue;
    takes.push({ g, strips });
    missing -= strips * perStrip;
    m2Left -= strips * stripM2;
  }
  if (takes.length === 0 || plants - missing < droppedUnderShare * plants) return 0;
  for (const { g, strips } of takes) ground.take(window, startDay, g, strips);
  return takes.reduce((sum, { g, strips }) => sum + strips * problem.ground[g]!.stripM2, 0);
}

export function practisedGardener(problem: PlanningProblem): RivalPlan {
  const ground = rivalGround(problem, 'practised');
  const windows = windowsInHorizon(problem);
  const appetite = new Map<KitchenRole, number>();
  problem.appetite.roles.forEach((role, r) => {
    appetite.set(
      role,
      problem.appetite.garden[r]!.reduce((sum, v) => sum + v, 0),
    );
  });
  const rank = (wish: Wish): number => appetite.get(mainRole(wish.window.kind).role) ?? 0;
  const wishes = wishesOf(problem, windows).sort(
    (a, b) =>
      rank(b) - rank(a) ||
      (a.window.kind.id === b.window.kind.id
        ? a.startDay - b.startDay
        : a.window.kind.id < b.window.kind.id
          ? -1
          : 1),
  );
  const allowedM2 = new Map<number, number>();
  const done = new Set<Wish>();
  for (const { winterOf: year } of wishes)
    if (year !== null && !allowedM2.has(year))
      allowedM2.set(year, winterBedsShare * augustFree(problem, ground, year));
  for (const wish of wishes) {
    if (wish.winterOf === null) continue;
    const m2 = place(problem, ground, wish, allowedM2.get(wish.winterOf)!);
    if (m2 <= 0) continue;
    allowedM2.set(wish.winterOf, allowedM2.get(wish.winterOf)! - m2);
    done.add(wish);
  }
  for (const wish of wishes) if (!done.has(wish)) place(problem, ground, wish, Number.POSITIVE_INFINITY);
  return ground.plan();
}
