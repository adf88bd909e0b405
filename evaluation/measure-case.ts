/** One case: planned, lived through in unseen members beside both rivals, and counted again by the independent check. */
import { createHighsSolver } from '../adapters/solver-highs/src/index.ts';
import { leastCountedServings } from '../packages/growing/src/index.ts';
import {
  calendarGardener,
  independentCheck,
  type PlacedSowing,
  type PlanningProblem,
  practisedGardener,
  scorePlaced,
  strawManBelowKgPerM2Year,
} from '../packages/planning/src/index.ts';
import { choosePlan, type PlanProgress } from '../packages/workflows/src/index.ts';
import { chooseAndLay } from '../packages/workflows/src/plan/choose-and-lay.ts';
import { buildProblem, contextOf } from '../packages/workflows/src/problem/build-problem.ts';
import { evaluationCases, readCaseGarden } from './cases.ts';
import {
  comparedRoleWeeks,
  endOfCountedWeeks,
  fareIn,
  firstCountedWeek,
  missingInBound,
} from './compared-weeks.ts';
import type { CaseFigures, CaseTask, Measured, Ratios, RivalMeasured } from './figures.ts';

const weeks = 78;
const seed = 1;

const ratio = (own: number, other: number): number | null => (other > 0 ? own / other : null);

const ratiosOf = (plan: Measured, rival: Measured): Ratios => ({
  leanWeeks: ratio(plan.leanWeeks, rival.leanWeeks),
  servingsMissing: ratio(plan.servingsMissing, rival.servingsMissing),
  wasted: ratio(plan.wasted, rival.wasted),
});

function groundM2(problem: PlanningProblem): number {
  return problem.ground.reduce(
    (sum, own) => sum + (own.bench === null ? own.stripCount * own.stripM2 : 0),
    0,
  );
}

function leftOut(problem: PlanningProblem, compared: readonly (readonly boolean[])[]): number {
  let count = 0;
  problem.appetite.garden.forEach((wants, role) => {
    for (let week = firstCountedWeek; week < endOfCountedWeeks; week++)
      if (wants[week]! >= leastCountedServings && !compared[role]![week]) count++;
  });
  return count;
}

export async function measureCase(
  task: CaseTask,
  progress: (progress: PlanProgress) => void,
): Promise<CaseFigures> {
  const { name, effort, memberCount, checkMemberCount } = task;
  const own = evaluationCases.find((each) => each.name === name);
  if (own === undefined) throw new Error(`evaluation/cases.ts has no case "${name}"`);
  const begun = performance.now();
  const elapsedSeconds = (): number => (performance.now() - begun) / 1000;
  const { garden, fromDay } = readCaseGarden(name);
  const size = { fromDay, weeks, memberCount, seed };
  const context = contextOf(garden, null, 'plan', size);
  const check = contextOf(garden, null, 'check', { ...size, memberCount: checkMemberCount });
  if (context === null || check === null) throw new Error(`${name} has no climate`);
  const problem = buildProblem(garden, context, size);
  const solver = task.solver ? await createHighsSolver() : null;
  const options = { ...size, checkMemberCount, effort, timeLimitSeconds: null };
  const ports = { solver, progress, stopRequested: () => false, elapsedSeconds };
  const { chosen, sowings } = await chooseAndLay(
    problem,
    (asked) => choosePlan(asked, options, ports),
    () => progress({ step: 'beds', doneShare: null, bestGapShare: null }),
  ).finally(() => solver?.dispose());
  const seconds = elapsedSeconds();

  progress({ step: 'check', doneShare: null, bestGapShare: chosen.gapShare });
  const relaxedShare = chosen.relaxedEatenShare ?? null;
  const compared = comparedRoleWeeks(problem.appetite, relaxedShare);
  const all = comparedRoleWeeks(problem.appetite, null);
  const measure = (placed: readonly PlacedSowing[]): Measured => {
    const found = scorePlaced(problem, check, placed, firstCountedWeek, endOfCountedWeeks);
    const inAll = fareIn(problem.appetite, found.eaten, all);
    return {
      ...found.score,
      ...fareIn(problem.appetite, found.eaten, compared),
      leanWeeksAll: inAll.leanWeeks,
      servingsMissingAll: inAll.servingsMissing,
      kgPerM2Year: found.kgPerM2Year,
    };
  };
  const measureRival = (rival: typeof calendarGardener): RivalMeasured => {
    const measured = measure(rival(problem).placed);
    const little = measured.kgPerM2Year < strawManBelowKgPerM2Year;
    return { ...measured, strawMan: little && !own.shortOfGround };
  };
  const plan = measure(sowings.map((s) => ({ ...s, minutes: 0, standing: s.standing !== null })));
  const calendar = measureRival(calendarGardener);
  const practised = measureRival(practisedGardener);
  return {
    name,
    groundM2: groundM2(problem),
    shortOfGround: own.shortOfGround,
    plan,
    calendar,
    practised,
    ratios: { calendar: ratiosOf(plan, calendar), practised: ratiosOf(plan, practised) },
    leftOutRoleWeeks: relaxedShare === null ? null : leftOut(problem, compared),
    boundServingsMissing: missingInBound(problem.appetite, relaxedShare, compared),
    gapShare: chosen.gapShare,
    stoppedBecause: chosen.stoppedBecause,
    candidates: chosen.candidates.length,
    seconds,
    violations: independentCheck(problem, sowings),
  };
}
