/** The main job: a garden in, a plan with its year of food, its reasons and its proof out. */
import { cannot, done, type Issue, isoFromDay, isoOfWeek, meanOf, type Outcome } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import {
  allRoles,
  type DailyWeather,
  type Eaten,
  eat,
  eatAgain,
  eatMarked,
  type ForecastContext,
  runSowing,
  scoreOf,
} from '@twelvemonth/growing';
import {
  type ChosenPlan,
  groundLedger,
  independentCheck,
  type PlacedSowing,
  type PlanningProblem,
  planSowings,
  rivalScores,
  type SimulatedMember,
  scorePlaced,
  shortagesOf,
  simulate,
  type TryAdding,
} from '@twelvemonth/planning';
import { countedUntil } from './argue/try-out.ts';
import { frostDays } from './climate/frost-days.ts';
import { openTin } from './forecast/seed-tin.ts';
import { chooseAndLay } from './plan/choose-and-lay.ts';
import type { ChosenSowing } from './plan/chosen-sowings.ts';
import { fleeceNights } from './plan/fleece-nights.ts';
import { withDecisions } from './plan/make-or-break.ts';
import { problemOfPlan } from './plan/problem-of-plan.ts';
import { reasonForNothing } from './plan/reason-for-nothing.ts';
import { reportBenches } from './plan/report-benches.ts';
import { reportGround } from './plan/report-ground.ts';
import { reportHours } from './plan/report-hours.ts';
import { reportJobs } from './plan/report-jobs.ts';
import { reportMaterials } from './plan/report-materials.ts';
import { reportSowing } from './plan/report-sowings.ts';
import { reportStock, reportWeeks } from './plan/report-weeks.ts';
import { scenarioCount } from './plan/scenario-count.ts';
import { standstills } from './plan/site-year.ts';
import type { PlanOptions, PlanPorts } from './ports.ts';
import type { Measured, PlanReport, ReportProof } from './report/plan-report.ts';

export type PlanRefusal = 'no-climate' | 'no-ground' | 'no-appetite';

/** Weeks that count in the comparison: a season after the start, one year long. */
const countedFrom = 13;
const countedTo = 65;
const goodGapShare = 0.02;
const iterationsPerEffort = 2000;
/** Members in which a sowing is left out to see what it is worth. */
const leftOutMembers = 6;
/** Named in every plan: plans of other tables are made anew. */
export const tablesVersion = '2026-11';

/** The search for the sowings alone, with the limits that every plan is made with. */
export function choosePlan(
  problem: PlanningProblem,
  options: PlanOptions,
  ports: PlanPorts,
): Promise<ChosenPlan> {
  return planSowings(
    problem,
    ports.solver,
    {
      scenarioCount,
      gapShare: goodGapShare,
      lpIterations: options.effort * iterationsPerEffort,
      timeLimitSeconds: options.timeLimitSeconds,
    },
    {
      progress: (step, doneShare, bestGapShare) => ports.progress({ step, doneShare, bestGapShare }),
      stopRequested: ports.stopRequested,
      elapsedSeconds: ports.elapsedSeconds,
    },
  );
}

function ledgerOf(problem: PlanningProblem, chosen: ChosenPlan): ReturnType<typeof groundLedger> {
  const ledger = groundLedger(problem);
  for (const { candidate, batches } of chosen.choices) ledger.take(candidate, batches);
  return ledger;
}

/** Servings missing without each sowing, by the kitchen rule in a few members. */
function missingWithout(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  simulated: readonly SimulatedMember[],
): number[] {
  const { stock, appetite, roles } = problem;
  const kitchens = simulated
    .slice(0, leftOutMembers)
    .map(({ runs }) => eatMarked([stock, ...runs.map((run) => run.lots)], appetite, roles));
  const missing = (eaten: Eaten, last: number): number => scoreOf(eaten, appetite, 0, last).missingServings;
  return sowings.map((_, i) => {
    const without = kitchens.map((kitchen) => eatAgain(kitchen, i + 1, []).eaten);
    const missedUntil = (last: number): number =>
      meanOf(kitchens.map((kitchen, m) => missing(without[m]!, last) - missing(kitchen.eaten, last)));
    return Math.max(0, missedUntil(countedUntil(problem, missedUntil)));
  });
}

/** What a remedy would fill, by the kitchen rule in a few check members with its lots added. */
function tryAdding(
  problem: PlanningProblem,
  check: ForecastContext,
  simulated: readonly SimulatedMember[],
): TryAdding {
  return (candidate, batches, role, fromWeek, toWeek) => {
    const plan = { ...candidate.plan, plantsCount: candidate.plan.plantsCount * batches };
    const [first, last] = [fromWeek - problem.fromWeek, toWeek - problem.fromWeek];
    const filled = simulated.slice(0, leftOutMembers).map((member, m) => {
      const more = runSowing(check, check.members[m]!, plan, problem.stores).lots;
      const lots = [...problem.stock, ...member.runs.flatMap((run) => run.lots), ...more];
      const after = eat(lots, problem.appetite, problem.roles).eaten[role]!;
      let sum = 0;
      for (let w = first; w <= last; w++) sum += after[w]! - member.eaten.eaten[role]![w]!;
      return sum;
    });
    return Math.max(0, filled.reduce((sum, v) => sum + v, 0) / Math.max(1, filled.length));
  };
}

/** Work of a sowing as chosen, minutes. */
function placedOf(sowings: readonly ChosenSowing[]): PlacedSowing[] {
  return sowings.map((sowing) => ({ ...sowing, minutes: 0, standing: sowing.standing !== null }));
}

function proofOf(
  problem: PlanningProblem,
  check: ForecastContext,
  chosen: ChosenPlan,
  sowings: readonly ChosenSowing[],
  options: PlanOptions,
  ports: PlanPorts,
): ReportProof {
  const own: Measured = scorePlaced(problem, check, placedOf(sowings), countedFrom, countedTo).score;
  const { calendar, practised } = rivalScores(problem, check, countedFrom, countedTo);
  return {
    gapShare: chosen.gapShare,
    gapServingsPerYear: chosen.gapServings === null ? null : (chosen.gapServings * 52) / problem.weekCount,
    effort: options.effort,
    seconds: Math.round(ports.elapsedSeconds() * 10) / 10,
    reproducible: chosen.reproducible,
    stoppedBecause: chosen.stoppedBecause,
    candidates: chosen.candidates.length,
    scenarios: chosen.scenarios.length,
    leanWeeksCheck: own.leanWeeks,
    servingsMissingCheck: own.servingsMissing,
    wastedCheck: own.wasted,
    countedWeeks: countedTo - countedFrom,
    check: own,
    rivals: { calendar, practised },
    violations: independentCheck(problem, sowings),
  };
}

export async function planGarden(
  file: Garden,
  options: PlanOptions,
  ports: PlanPorts,
  daily: DailyWeather | null,
  issues: readonly Issue[] = [],
): Promise<Outcome<PlanReport, PlanRefusal>> {
  ports.progress({ step: 'weather', doneShare: 0, bestGapShare: null });
  const from = await problemOfPlan(file, options, daily, ports.solver);
  if (from === null) return cannot('no-climate');
  const { garden, context, check, problem, cleared } = from;
  const canGrow = problem.ground.length > 0 && problem.appetite.roles.length > 0;

  const { chosen, sowings, unplaced } = await chooseAndLay(
    problem,
    (asked) => choosePlan(asked, options, canGrow ? ports : { ...ports, solver: null }),
    ({ gapShare }) => ports.progress({ step: 'beds', doneShare: null, bestGapShare: gapShare }),
    options.last?.report.sowings,
  );
  ports.progress({ step: 'check', doneShare: null, bestGapShare: chosen.gapShare });
  const { stock, appetite, roles, stores } = problem;
  const simulated = simulate({
    context: check,
    plans: sowings.map((s) => s.plan),
    stock,
    appetite,
    roles,
    stores,
  });
  const eaten = simulated.map((s) => s.eaten);
  const proof = proofOf(problem, check, chosen, sowings, options, ports);

  ports.progress({ step: 'explain', doneShare: null, bestGapShare: chosen.gapShare });
  const worth = missingWithout(problem, sowings, simulated);
  const tin = openTin(garden.seeds);
  const reported = sowings.map((sowing, i) => reportSowing(problem, sowings, sowing, worth[i]!, tin));
  const ground = reportGround(problem, sowings, reported, unplaced);
  const ledger = ledgerOf(problem, chosen);
  const { candidates, scenarios } = chosen;
  const risked = { problem, check, candidates, scenarios, freeBench: ledger.freeBench };
  const shortages = shortagesOf(
    {
      problem,
      scenarios: chosen.scenarios,
      candidates: chosen.candidates,
      ledger,
      tryAdding: tryAdding(problem, check, simulated),
      fromDay: problem.fromDay,
    },
    eaten,
  );
  return done({
    schemaVersion: 1,
    garden: {
      household: garden.household.name,
      site: garden.site.name,
      invented: garden.invented,
      eaters: garden.household.people.length,
    },
    from: isoFromDay(options.fromDay),
    weeksShown: options.weeks,
    members: options.memberCount,
    seed: options.seed,
    tables: tablesVersion,
    weatherFrom: isoFromDay(context.startDay),
    standstill: standstills(context, options.fromDay, options.weeks),
    frost: frostDays(context, options.fromDay),
    roleNames: Object.fromEntries(allRoles().map((role) => [role.id, role.name])),
    ...(cleared.length === 0 ? {} : { cleared }),
    nothing: reasonForNothing(problem, reported),
    conflicts: from.conflicts,
    sowings: withDecisions(risked, sowings, reported),
    weeks: reportWeeks(problem, eaten),
    shortages: shortages.map(({ fromWeek, toWeek, remedy, ...rest }) => ({
      ...rest,
      from: isoOfWeek(fromWeek),
      to: isoOfWeek(toWeek),
      remedy:
        remedy === null
          ? null
          : {
              code: remedy.code,
              kind: remedy.kind,
              m2: remedy.m2,
              filled: remedy.filled,
              by: remedy.byDay === null ? null : isoFromDay(remedy.byDay),
            },
    })),
    stock: reportStock(garden, problem, eaten),
    jobs: reportJobs(reported, options.fromDay, fleeceNights(problem, sowings, options.fromDay), ground),
    ...ground,
    hours: reportHours(garden, problem, sowings),
    benches: reportBenches(problem, sowings),
    materials: reportMaterials(problem, sowings),
    proof: { ...proof, seconds: Math.round(ports.elapsedSeconds() * 10) / 10 },
    issues: [...issues, ...from.issues],
  });
}
