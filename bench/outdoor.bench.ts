/** The engine against the day loop from outdoor weather: times, and whether both give the same answer. */
import { type Member, NEVER, placeWeather, runSowing } from '../packages/growing/src/index.ts';
import type { Demo } from './demo-problem.ts';
import { engineFirstDays } from './engine-growth.ts';
import { lifeOf, naiveFromOutdoor, sliceOf } from './naive-from-outdoor.ts';
import { randomSowings } from './random-sowings.ts';

export interface OutdoorFigures {
  readonly candidates: number;
  readonly members: number;
  /** Whole answers of the engine from outdoor weather: place weather, running sums and all. */
  readonly engineMs: number;
  /** The same again, with place weather and sums at hand. */
  readonly engineAgainMs: number;
  /** The day loop, charged with the sun of no more days than it lives: placeWeather makes that of a whole year a call. */
  readonly naiveMs: number;
  /** What was taken off for that. */
  readonly sparedSunMs: number;
  readonly comparedDays: number;
  /** Days not the same: a bed that stayed wet for more than the year of warm-up. */
  readonly differing: number;
  /** Those that still differ when the loop follows the place from the first day of the weather. */
  readonly unexplained: number;
  /** Largest differences of growth and cold units over the time in the bed, °C·d. */
  readonly grownGapCDays: number;
  readonly coldGapCDays: number;
}

const timed = (work: () => void): number => {
  const begun = performance.now();
  work();
  return performance.now() - begun;
};

/** Milliseconds that a call of placeWeather takes before its first day, all but none of them for the sun of a year. */
function placeSetUpMs(demo: Demo): number {
  const context = demo.context('check', 1);
  const exposures = [...context.exposures.values()];
  const outdoor = sliceOf(context.members[0]!.outdoor, context.startDay, context.startDay + 1);
  const rounds = 300;
  const all = (): void => {
    for (let k = 0; k < rounds; k++)
      for (const exposure of exposures) placeWeather(context.site, outdoor, exposure, 0);
  };
  all();
  return timed(all) / (rounds * exposures.length);
}

export function outdoorFigures(
  demo: Demo,
  candidates: number,
  memberCount: number,
  every = 1,
): OutdoorFigures {
  const { problem, seed } = demo;
  const sowings = randomSowings(problem, candidates);
  const setUpMs = placeSetUpMs(demo);
  const context = demo.context('check', memberCount);
  const members = context.members.filter((_, m) => m % every === 0);
  const all = <T>(answer: (member: Member, s: number) => T): T[] =>
    sowings.flatMap((_, s) => members.map((member) => answer(member, s)));
  const whole = (m: Member, s: number) => runSowing(context, m, sowings[s]!, problem.stores);

  // The code is warm before either is timed; the weather and the sums of the timed members are not.
  const practice = demo.context('plan', 2);
  for (const member of practice.members)
    for (const plan of sowings.slice(0, 100)) {
      const run = runSowing(practice, member, plan, problem.stores);
      naiveFromOutdoor(practice, member, plan, lifeOf(run), seed);
    }

  let lives: ReturnType<typeof lifeOf>[] = [];
  const engineMs = timed(() => {
    lives = all((m, s) => lifeOf(whole(m, s)));
  });
  const engineAgainMs = timed(() => {
    all((m, s) => lifeOf(whole(m, s)));
  });
  let naive: ReturnType<typeof naiveFromOutdoor>[] = [];
  let n = 0;
  const naiveAllMs = timed(() => {
    naive = all((m, s) => naiveFromOutdoor(context, m, sowings[s]!, lives[n++]!, seed));
  });

  let [comparedDays, differing, unexplained, sparedShares, grownGapCDays, coldGapCDays] = [0, 0, 0, 0, 0, 0];
  n = 0;
  all((member, s) => {
    const plan = sowings[s]!;
    const [life, answer] = [lives[n]!, naive[n]!];
    n++;
    for (const days of answer.derivedDays) sparedShares += Math.max(0, 1 - days / 365);
    const known = (days: readonly number[]): number[] =>
      days.map((day) => (day <= life.clearDay ? day : NEVER));
    const expected = known(engineFirstDays(context, member, plan));
    const differ = (days: readonly number[]): number =>
      known(days).filter((day, h) => day !== expected[h]).length;
    comparedDays += expected.length;
    const here = differ(answer.firstDays);
    differing += here;
    if (here > 0) {
      const whole = naiveFromOutdoor(context, member, plan, life, seed, plan.startDay - context.startDay);
      unexplained += differ(whole.firstDays);
    }
    if (life.groundDay >= NEVER) return;
    const bed = member.clockOf(plan.exposure);
    const [from, to] = [life.groundDay - bed.startDay, life.clearDay - bed.startDay];
    const growth = bed.growth(plan.kind);
    grownGapCDays = Math.max(grownGapCDays, Math.abs(growth[to]! - growth[from]! - answer.grownCDays));
    const cold = bed.cold(plan.kind).sum;
    coldGapCDays = Math.max(coldGapCDays, Math.abs(cold[to]! - cold[from]! - answer.coldCDays));
  });
  const sparedSunMs = sparedShares * setUpMs;
  return {
    candidates,
    members: members.length,
    engineMs,
    engineAgainMs,
    naiveMs: naiveAllMs - sparedSunMs,
    sparedSunMs,
    comparedDays,
    differing,
    unexplained,
    grownGapCDays,
    coldGapCDays,
  };
}
