/** The calendar gardener (bench/rivals/RULES.md): every window once, in its middle, all in equal areas. */
import { civilFromDay, type Day } from '@twelvemonth/basis';
import type { PlanningProblem } from '../../problem.ts';
import {
  type CalendarWindow,
  groundDays,
  groundFor,
  middleDay,
  windowsInHorizon,
} from './calendar-windows.ts';
import { type RivalPlan, rivalGround } from './rival-ground.ts';

interface Wanted {
  readonly window: CalendarWindow;
  readonly startDay: Day;
  readonly groundDay: Day;
  readonly ground: readonly number[];
}

/** Half-years: April to September, October to March. */
function seasonOf(day: Day): string {
  const { year, month } = civilFromDay(day);
  if (month >= 4 && month <= 9) return `${year}/summer`;
  return `${month >= 10 ? year : year - 1}/winter`;
}

export function calendarGardener(problem: PlanningProblem): RivalPlan {
  const ground = rivalGround(problem, 'calendar');
  const wanted = windowsInHorizon(problem)
    .flatMap((window): Wanted[] => {
      const startDay = middleDay(problem, window);
      if (startDay === null) return [];
      const groundDay = groundDays(window, startDay).from;
      return [{ window, startDay, groundDay, ground: groundFor(problem, window.kind, window.row) }];
    })
    .sort((a, b) => a.groundDay - b.groundDay || (a.window.kind.id < b.window.kind.id ? -1 : 1));
  const waiting = new Map<string, number>();
  const key = (g: number, day: Day): string => `${g}/${seasonOf(day)}`;
  for (const sowing of wanted)
    for (const g of sowing.ground) {
      const k = key(g, sowing.groundDay);
      waiting.set(k, (waiting.get(k) ?? 0) + 1);
    }
  const carried = new Map<string, number>();
  for (const { window, startDay, groundDay, ground: classes } of wanted)
    for (const g of classes) {
      const k = key(g, groundDay);
      const left = waiting.get(k)!;
      waiting.set(k, left - 1);
      const free = ground.room(window, startDay, g);
      // Equal shares in whole strips: what rounding leaves goes to the next in turn.
      const share = free / left + (carried.get(k) ?? 0);
      const strips = Math.min(free, Math.floor(share + 1e-9));
      carried.set(k, Math.min(1, share - strips));
      ground.take(window, startDay, g, strips);
    }
  return ground.plan();
}
