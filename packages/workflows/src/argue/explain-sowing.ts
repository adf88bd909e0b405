/** Why a sowing is in the plan: found by living the plan without it, later, and with something else in its place. */
import { type Day, isoFromDay, mondayOf } from '@twelvemonth/basis';
import { type Eaten, NEVER } from '@twelvemonth/growing';
import { type Candidate, fillGreedily, gainOf } from '@twelvemonth/planning';
import { dayBandOf } from '../forecast/day-band.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import type { Delay, Neighbour, SowingReasons } from '../report/argue-report.ts';
import { canBeHad, delayed, lastSafeOf, meanServings, neededFromWeek, neighboursOf } from './delay.ts';
import type { OpenPlan } from './open-plan.ts';
import { candidatesIn, describe, fewScenarios, inBatches, stateOf } from './other-sowings.ts';
import { countedUntil, eatenBecause, eatenWith, type Gap, gapOf, runsOf, triedMembers } from './try-out.ts';

const delayWeeks = [1, 2, 3] as const;
/** Kinds that are lived through to find the runner-up, and what may fill the ground again. */
const triedKinds = 6;
const mostRefills = 4;

function delaysOf(open: OpenPlan, sowing: ChosenSowing, base: Gap, last: number): Delay[] {
  if (sowing.state === 'done') return [];
  const { problem, sowings } = open;
  const nextWeek = neededFromWeek(sowings, sowing);
  const servings = meanServings(problem, sowing.runs.slice(0, triedMembers));
  return delayWeeks.flatMap((weeks) => {
    const plan = delayed(sowing.plan, weeks, nextWeek);
    if (!canBeHad(problem, plan)) return [];
    const runs = runsOf(problem, plan, triedMembers);
    const firsts = runs.map((run) => Math.min(...run.harvests.map((h) => h.firstDay)));
    return {
      weeks,
      servingsChange: meanServings(problem, runs) - servings,
      missingChange:
        gapOf(problem, eatenWith(open, new Set([sowing.id]), [runs]), last).missing - base.missing,
      first: dayBandOf(
        firsts,
        runs.map((run) => run.harvests.find((h) => h.firstDay >= NEVER)?.reason ?? null),
      ),
    };
  });
}

function instead(
  open: OpenPlan,
  sowing: ChosenSowing,
  base: Gap,
  last: number,
  without: readonly Eaten[],
  today: Day,
): Pick<SowingReasons, 'refill' | 'runnerUp'> {
  const { problem, sowings } = open;
  const scenarios = fewScenarios(problem);
  const others = sowings.filter((other) => other !== sowing);
  const [full, freed] = [stateOf(problem, sowings, scenarios), stateOf(problem, others, scenarios)];
  const roomOf = (c: Candidate): number => Math.min(sowing.stripsCount, freed.ledger.room(c));
  const wanting = candidatesIn(problem, scenarios, sowing.ground).filter(
    (c) => c.plan.startDay >= today && full.ledger.room(c) < 1 && roomOf(c) >= 1,
  );
  const bestOfKind = new Map<string, { candidate: Candidate; batches: number; gain: number }>();
  for (const candidate of wanting) {
    const { kind } = candidate.plan;
    if (kind === sowing.plan.kind) continue;
    const batches = roomOf(candidate);
    const gain = gainOf(freed, scenarios, candidate, batches);
    if (gain > (bestOfKind.get(kind.id)?.gain ?? 0)) bestOfKind.set(kind.id, { candidate, batches, gain });
  }
  const lost = new Set([sowing.id]);
  const tried = [...bestOfKind.values()]
    .sort((a, b) => b.gain - a.gain)
    .slice(0, triedKinds)
    .map(({ candidate, batches }) => {
      const eaten = eatenWith(open, lost, [runsOf(problem, inBatches(candidate, batches), triedMembers)]);
      const { missing: more, cost } = gapOf(problem, eaten, last);
      return { candidate, batches, eaten, cost, missing: more - base.missing };
    })
    .sort((a, b) => a.cost - b.cost);
  const best = tried[0];
  fillGreedily(problem, scenarios, wanting, freed, () => false);
  const refills = [...freed.batches].filter(([candidate]) => wanting.includes(candidate));
  const refilled = eatenWith(
    open,
    lost,
    refills.map(([candidate, n]) => runsOf(problem, inBatches(candidate, n), triedMembers)),
  );
  return {
    refill:
      refills.length === 0
        ? null
        : {
            sowings: refills
              .sort((a, b) => b[1] - a[1])
              .slice(0, mostRefills)
              .map(([candidate, n]) => describe(problem, candidate, n)),
            missing: gapOf(problem, refilled, last).missing - base.missing,
            asGood: gapOf(problem, refilled, last).cost <= base.cost,
          },
    runnerUp:
      best === undefined
        ? null
        : {
            sowing: describe(problem, best.candidate, best.batches),
            missing: best.missing,
            asGood: best.cost <= base.cost,
            eats: eatenBecause(problem, best.eaten, without),
          },
  };
}

const neighbour = (other: ChosenSowing, day: Day): Neighbour => ({
  id: other.id,
  number: other.number,
  kindName: other.plan.kind.name,
  day: isoFromDay(day),
});

/** Null when the plan has no such sowing. */
export function explainSowing(open: OpenPlan, id: string, today: Day): SowingReasons | null {
  const { problem, sowings, report } = open;
  const sowing = sowings.find((s) => s.id === id);
  const reported = report?.sowings.find((s) => s.id === id);
  if (sowing === undefined || reported === undefined || report === null) return null;
  const base = open.eaten.slice(0, triedMembers);
  const without = eatenWith(open, new Set([id]), []);
  const last = countedUntil(
    problem,
    (week) => gapOf(problem, without, week).missing - gapOf(problem, base, week).missing,
  );
  const before = gapOf(problem, base, last);
  const gap = gapOf(problem, without, last);
  const safe = lastSafeOf(problem, sowings, sowing);
  const beside = neighboursOf(sowings, sowing);
  return {
    schemaVersion: 1,
    about: 'sowing',
    today: isoFromDay(today),
    sowing: reported,
    roleNames: report.roleNames,
    members: base.length,
    servings: meanServings(problem, sowing.runs),
    eats: eatenBecause(problem, base, without),
    missingWithout: Math.max(0, gap.missing - before.missing),
    leanWithout: gap.lean - before.lean,
    ...instead(open, sowing, before, last, without, today),
    delays: delaysOf(open, sowing, before, last),
    lastSafe:
      safe === null ? null : { day: isoFromDay(safe.day), afterwards: safe.afterwards, weeks: safe.weeks },
    before: beside.before
      .filter((other) => other.groundToWeek >= (beside.before[0]?.groundToWeek ?? 0) - 4)
      .map((other) => neighbour(other, other.plan.clearDay ?? mondayOf(other.groundToWeek))),
    after: beside.after
      .filter((other) => other.groundFromWeek <= (beside.after[0]?.groundFromWeek ?? 0) + 4)
      .map((other) => neighbour(other, mondayOf(other.groundFromWeek))),
    likeIt: sowings
      .filter((other) => other !== sowing && other.plan.kind.id === sowing.plan.kind.id)
      .map((other) => other.number)
      .sort((a, b) => a - b),
  };
}
