/**
 * Guests between hosts: what follows a crop that is being cleared bit by bit goes into the strips released already, some
 * weeks before the rest is free. Plants that wait in pots go out as soon as they are fit; otherwise the whole sowing is
 * begun earlier. Taken only where the forecast loses nothing (or gains, for a change of date) and is over no sooner, and
 * where the second count finds nothing against it.
 */
import { meanOf, mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import { NEVER, runSowing, type SowingPlan, type SowingRun } from '@twelvemonth/growing';
import {
  type GuestPlanting,
  independentCheck,
  interplant,
  minutesByAct,
  type PlanningProblem,
} from '@twelvemonth/planning';
import type { ChosenSowing } from './chosen-sowing.ts';

/** No host takes a guest for longer than this. */
const mostWeeks = 8;

function middle(days: readonly number[]): number {
  const sorted = [...days].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NEVER;
}

const runsOf = (problem: PlanningProblem, plan: SowingPlan): SowingRun[] =>
  problem.context.members.map((member) => runSowing(problem.context, member, plan, problem.stores));

const servingsOf = (runs: readonly SowingRun[]): number =>
  meanOf(runs.map((run) => run.lots.reduce((sum, lot) => sum + lot.servings, 0)));

/** Mean week in which the last of it is past. */
const lastWeekOf = (runs: readonly SowingRun[]): number =>
  meanOf(runs.map((run) => run.lots.reduce((last, lot) => Math.max(last, lot.toWeek), 0)));

/** What an earlier sowing must gain to be worth a change of date, and how much sooner it may be over. Judged. */
const leastGainShare = 0.03;
const soonerOverWeeks = 1;

const isMovable = ({ plan, state }: ChosenSowing): boolean =>
  state === 'draft' &&
  plan.kind.startsAs === 'seed' &&
  plan.kind.harvests.every(({ habit }) => habit !== 'once');

const isRaised = ({ plan }: ChosenSowing): boolean => plan.stages.length > 0 && plan.plantDay !== null;

/** First week worth a look: what waits in pots may go out at any time, what is sown anew be begun earlier. */
function readyWeekOf(problem: PlanningProblem, sowing: ChosenSowing): Week {
  const { plan, groundFromWeek, ground } = sowing;
  if (problem.ground[ground]!.bench !== null || !isMovable(sowing)) return groundFromWeek;
  if (isRaised(sowing)) return Math.max(problem.fromWeek, groundFromWeek - mostWeeks);
  const spare = weekOfDay(plan.startDay) - problem.fromWeek - 1;
  return groundFromWeek - Math.max(0, Math.min(mostWeeks, spare));
}

const earlierBy = (sowing: ChosenSowing, weeks: number): ChosenSowing => ({
  ...sowing,
  plan: {
    ...sowing.plan,
    startDay: sowing.plan.startDay - weeks * 7,
    plantDay: sowing.plan.plantDay === null ? null : sowing.plan.plantDay - weeks * 7,
  },
  bench: sowing.bench.map((use) => ({ ...use, fromWeek: use.fromWeek - weeks, toWeek: use.toWeek - weeks })),
});

/** The plants wait less in pots: they go out as soon as they are fit, and the bench is free again. */
function outOfPots(sowing: ChosenSowing, fromWeek: Week): ChosenSowing {
  const bench = sowing.bench
    .filter((use) => use.fromWeek < fromWeek)
    .map((use) => ({ ...use, toWeek: Math.min(use.toWeek, fromWeek) }));
  return { ...sowing, plan: { ...sowing.plan, plantDay: mondayOf(fromWeek) }, bench };
}

/** What the second count finds, servings aside: benches, hours, closed beds and days, strips, kit. */
const findings = (problem: PlanningProblem, sowings: readonly ChosenSowing[]): number =>
  independentCheck(
    problem,
    sowings.map(({ runs: _, ...sowing }) => sowing),
  ).length;

/** Work as the earlier dates make it, where the sowing has its work counted. */
function workOf(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  runs: readonly SowingRun[],
): Pick<ChosenSowing, 'minutesByAct'> {
  if (sowing.minutesByAct === undefined) return {};
  const outcomes = runs.map(({ lots }) => ({ prob: 1 / runs.length, lots }));
  return { minutesByAct: minutesByAct(problem, sowing, outcomes) };
}

/** The better of its two ways of going out earlier; null where neither is worth it. */
function asGuest(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
  planting: GuestPlanting,
): ChosenSowing | null {
  const weeks = sowing.groundFromWeek - planting.fromWeek;
  const raised = isRaised(sowing);
  const early = earlierBy(sowing, weeks);
  const ways = [
    ...(raised ? [{ way: outOfPots(sowing, planting.fromWeek), factor: 1 }] : []),
    ...(early.plan.startDay >= problem.fromDay ? [{ way: early, factor: 1 + leastGainShare }] : []),
  ];
  const [servings, last] = [servingsOf(sowing.runs), lastWeekOf(sowing.runs)];
  for (const { way, factor } of ways) {
    const runs = runsOf(problem, way.plan);
    const outInTime = !raised || middle(runs.map((run) => run.groundDay)) < mondayOf(planting.fromWeek + 1);
    const isWorth = servingsOf(runs) >= servings * factor && lastWeekOf(runs) >= last - soonerOverWeeks;
    if (!outInTime || !isWorth) continue;
    const guest = { ...way, runs, guestOf: planting, ...workOf(problem, way, runs) };
    const changed = sowings.map((s) => (s === sowing ? guest : s));
    if (findings(problem, changed) <= findings(problem, sowings)) return guest;
  }
  return null;
}

export function plantGuests(problem: PlanningProblem, chosen: readonly ChosenSowing[]): ChosenSowing[] {
  const found = interplant(
    chosen.map((sowing) => ({
      id: sowing.id,
      kind: sowing.plan.kind,
      groundFromWeek: sowing.groundFromWeek,
      groundToWeek: sowing.groundToWeek,
      placements: sowing.placements,
      firstHarvestWeek: weekOfDay(
        middle(sowing.runs.map((run) => Math.min(...run.harvests.map((harvest) => harvest.firstDay)))),
      ),
      readyWeek: readyWeekOf(problem, sowing),
    })),
  );
  let sowings = [...chosen];
  for (const [id, planting] of found) {
    const sowing = sowings.find((s) => s.id === id)!;
    const ends = planting.hosts.map(({ host }) => sowings.find((s) => s.id === host)!.groundToWeek);
    for (let fromWeek = planting.fromWeek; fromWeek < Math.min(...ends); fromWeek++) {
      const guest = asGuest(problem, sowings, sowing, { ...planting, fromWeek });
      if (guest === null) continue;
      sowings = sowings.map((s) => (s === sowing ? guest : s));
      break;
    }
  }
  return sowings;
}
