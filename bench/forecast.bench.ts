/** Forecast budgets: one moved sowing over all members, and many candidates against the naive day loop. */
import { type Member, runSowing } from '../packages/growing/src/index.ts';
import type { Demo } from './demo-problem.ts';
import { engineFirstDays } from './engine-growth.ts';
import { naiveFirstDays } from './naive-growth.ts';
import { randomSowings } from './random-sowings.ts';
import { medianOf, timesMs } from './reference-loop.ts';

export interface ForecastFigures {
  readonly members: number;
  /** One sowing moved by a day: whole answer (days, shares, lots) in all members. */
  readonly movedMs: number;
  readonly candidates: number;
  /** Whole answers, the first time (with the sums that they make) and again. */
  readonly wholeColdMs: number;
  readonly wholeMs: number;
  /** First harvest days alone: engine from fresh sums, engine with sums made, naive day loop. */
  readonly engineColdMs: number;
  readonly engineMs: number;
  readonly naiveMs: number;
  readonly comparedDays: number;
  /** Days on which both do not name the same day: rounding of sums may move a day by one, never more. */
  readonly differByOne: number;
  readonly differByMore: number;
}

export function forecastFigures(demo: Demo, candidates: number, memberCount: number): ForecastFigures {
  const context = demo.context('check', memberCount);
  const sowings = randomSowings(demo.problem, candidates);
  const exposures = [...context.exposures.keys()];
  const { members } = context;
  for (const member of members) for (const exposure of exposures) member.clockOf(exposure);

  const all = (answer: (member: Member, s: number) => void): void => {
    for (let s = 0; s < sowings.length; s++) for (const member of members) answer(member, s);
  };
  const timed = (work: () => void): number => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  };
  const engine: number[][] = [];
  const naive: number[][] = [];
  const engineColdMs = timed(() => all((m, s) => engine.push(engineFirstDays(context, m, sowings[s]!))));
  const engineMs = medianOf(timesMs(3, () => all((m, s) => engineFirstDays(context, m, sowings[s]!))));
  const naiveMs = timed(() => all((m, s) => naive.push(naiveFirstDays(m, sowings[s]!))));
  const whole = (): void => all((m, s) => runSowing(context, m, sowings[s]!, demo.problem.stores));
  const wholeColdMs = timed(whole);
  const wholeMs = timed(whole);

  let [comparedDays, differByOne, differByMore] = [0, 0, 0];
  engine.forEach((days, i) => {
    days.forEach((day, h) => {
      const other = naive[i]![h]!;
      comparedDays++;
      if (Math.abs(day - other) === 1) differByOne++;
      else if (day !== other) differByMore++;
    });
  });

  let moved = 0;
  const movedMs = medianOf(
    timesMs(200, () => {
      const plan = sowings[moved % sowings.length]!;
      moved++;
      for (const member of members)
        runSowing(context, member, { ...plan, startDay: plan.startDay + 1 }, demo.problem.stores);
    }),
  );
  return {
    members: members.length,
    movedMs,
    candidates,
    wholeColdMs,
    wholeMs,
    engineColdMs,
    engineMs,
    naiveMs,
    comparedDays,
    differByOne,
    differByMore,
  };
}
