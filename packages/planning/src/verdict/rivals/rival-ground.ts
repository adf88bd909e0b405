/** The rivals' ground: strips, benches and plants counted by week; what stands is kept, or cleared when it may be. */

import { type Day, type Week, weekOfDay } from '@twelvemonth/basis';
import type { SowingPlan } from '@twelvemonth/growing';
import { careOf } from '../../candidates/place-care.ts';
import { plantsPerStrip, type RouteChoice, routeChoice } from '../../candidates/routes.ts';
import type { BenchUse, Candidate, PlanningProblem, StandingCrop } from '../../problem.ts';
import { groundLedger } from '../../solve/ground-ledger.ts';
import { candidateWork } from '../../work/minutes-by-week.ts';
import type { PlacedSowing } from '../measure.ts';
import { type CalendarWindow, groundDays } from './calendar-windows.ts';

const matWeeks = 3;
const hardeningWeeks = 2;

export interface RivalPlan {
  /** New sowings and what stands. */
  readonly plans: readonly SowingPlan[];
  readonly placed: readonly PlacedSowing[];
  readonly stripWeeks: number;
  readonly sowings: number;
  readonly minutes: number;
}

export interface RivalGround {
  /** Strips of a class that a sowing of that day could have from planting to the end of its harvest window. */
  room(window: CalendarWindow, startDay: Day, ground: number): number;
  take(window: CalendarWindow, startDay: Day, ground: number, strips: number): void;
  freeStrips(ground: number, week: Week): number;
  plan(): RivalPlan;
}

function benchUses(
  problem: PlanningProblem,
  choice: RouteChoice,
  window: CalendarWindow,
  ground: number,
  startWeek: Week,
  groundFromWeek: Week,
  groundToWeek: Week,
): BenchUse[] {
  const own = problem.ground[ground]!;
  if (own.bench !== null)
    return [{ bench: own.bench, fromWeek: groundFromWeek, toWeek: groundToWeek, m2: own.stripM2 }];
  const m2 = plantsPerStrip(window.kind, own) * window.kind.moduleM2PerPlant;
  const leavesMat = Math.min(groundFromWeek, startWeek + matWeeks);
  const entersFrame = Math.max(startWeek, groundFromWeek - hardeningWeeks);
  let from = startWeek;
  return choice.benches.flatMap((bench, i) => {
    const last = i === choice.benches.length - 1;
    const nextIsFrame = !last && problem.benches[choice.benches[i + 1]!]!.stage === 'frame';
    const to = last ? groundFromWeek : nextIsFrame ? entersFrame : Math.min(leavesMat, entersFrame);
    const use = { bench, fromWeek: from, toWeek: to, m2 };
    from = Math.max(from, to);
    return use.fromWeek < use.toWeek ? [use] : [];
  });
}

function candidateFor(
  problem: PlanningProblem,
  rival: string,
  window: CalendarWindow,
  startDay: Day,
  ground: number,
): Candidate {
  const { kind, row } = window;
  const own = problem.ground[ground]!;
  const choice = routeChoice(problem, row.route)!;
  const days = groundDays(window, startDay);
  const groundFromWeek = weekOfDay(days.from);
  const groundToWeek = weekOfDay(days.to) + 1;
  const startWeek = weekOfDay(startDay);
  return {
    plan: {
      id: `${rival}/${kind.id}/${row.route}/${row.growsIn}/${startDay}/${ground}`,
      kind,
      route: row.route,
      startDay,
      startSpreadDays: 0,
      stages: choice.stages,
      exposure: own.exposure,
      plantDay: choice.stages.length > 0 ? days.from : null,
      clearDay: days.to,
      plantsCount: plantsPerStrip(kind, own),
      protection: problem.protection,
      keepsSeed: problem.savesSeedOf.has(kind.id),
      care: careOf(own),
    },
    ground,
    stripsPerBatch: 1,
    groundFromWeek,
    groundToWeek,
    bench: benchUses(problem, choice, window, ground, startWeek, groundFromWeek, groundToWeek),
    startWeek,
    minutes: 0,
    work: [],
    mostBatches: own.stripCount,
    group: null,
    lots: [],
  };
}

interface Standing {
  readonly crop: StandingCrop;
  clearDay: Day;
  toWeek: Week;
}

function standingCandidate(crop: StandingCrop, fromWeek: Week, toWeek: Week): Candidate {
  return {
    plan: { ...crop.plan, plantsCount: 0 },
    ground: crop.ground,
    stripsPerBatch: crop.stripsCount,
    groundFromWeek: fromWeek,
    groundToWeek: toWeek,
    bench: [],
    startWeek: fromWeek,
    minutes: 0,
    work: [],
    mostBatches: 1,
    group: crop.plan.id,
    lots: [],
  };
}

export function rivalGround(problem: PlanningProblem, rival: string): RivalGround {
  const ledger = groundLedger(problem);
  const endWeek = problem.fromWeek + problem.weekCount;
  const standing: Standing[] = problem.standing.map((crop) => {
    const clearDay = crop.clearDays[crop.clearDays.length - 1]!;
    const toWeek = crop.plan.kind.perennial ? endWeek : Math.min(endWeek, weekOfDay(clearDay) + 1);
    const whole = standingCandidate(crop, crop.groundFromWeek, Math.max(crop.groundFromWeek, toWeek));
    ledger.take({ ...whole, bench: crop.bench }, 1);
    return { crop, clearDay, toWeek };
  });
  const taken: { readonly candidate: Candidate; readonly strips: number }[] = [];

  /** The last day before the week on which each crop of the class may go. */
  const clearFor = (ground: number, week: Week): void => {
    for (const entry of standing) {
      const { crop } = entry;
      if (crop.ground !== ground || crop.plan.kind.perennial || entry.toWeek <= week) continue;
      const day = crop.clearDays.filter((d) => weekOfDay(d) < week).at(-1);
      if (day === undefined || weekOfDay(day) + 1 <= crop.groundFromWeek) continue;
      ledger.take(standingCandidate(crop, weekOfDay(day) + 1, entry.toWeek), -1);
      entry.clearDay = day;
      entry.toWeek = weekOfDay(day) + 1;
    }
  };

  return {
    freeStrips: (ground, week) =>
      ledger.freeStrips(ground, Math.min(problem.weekCount - 1, Math.max(0, week - problem.fromWeek))),
    room: (window, startDay, ground) => {
      const candidate = candidateFor(problem, rival, window, startDay, ground);
      clearFor(ground, candidate.groundFromWeek);
      return ledger.room(candidate);
    },
    take: (window, startDay, ground, strips) => {
      if (strips <= 0) return;
      const candidate = candidateFor(problem, rival, window, startDay, ground);
      ledger.take(candidate, strips);
      taken.push({ candidate, strips });
    },
    plan: () => {
      const grown = taken.map(({ candidate, strips }): PlacedSowing => {
        const sowing = {
          plan: { ...candidate.plan, plantsCount: candidate.plan.plantsCount * strips },
          ground: candidate.ground,
          stripsCount: strips,
          groundFromWeek: candidate.groundFromWeek,
          groundToWeek: candidate.groundToWeek,
          bench: candidate.bench.map((use) => ({ ...use, m2: use.m2 * strips })),
        };
        return { ...sowing, minutes: candidateWork(problem, sowing, []).minutes, standing: false };
      });
      const kept = standing.map(
        ({ crop, clearDay, toWeek }): PlacedSowing => ({
          plan: { ...crop.plan, clearDay },
          ground: crop.ground,
          stripsCount: crop.stripsCount,
          groundFromWeek: crop.groundFromWeek,
          groundToWeek: Math.max(crop.groundFromWeek, toWeek),
          bench: crop.bench,
          minutes: 0,
          standing: true,
        }),
      );
      const placed = [...kept, ...grown];
      const once = new Set(grown.map(({ plan }) => plan.id.slice(0, plan.id.lastIndexOf('/'))));
      return {
        plans: placed.map(({ plan }) => plan),
        placed,
        stripWeeks: grown.reduce((sum, s) => sum + s.stripsCount * (s.groundToWeek - s.groundFromWeek), 0),
        sowings: once.size,
        minutes: grown.reduce((sum, s) => sum + s.minutes, 0),
      };
    },
  };
}
