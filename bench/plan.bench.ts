/** A whole plan: seconds, proven gap, peak memory; and how it stands against both rivals in unseen members. */
import { createHighsSolver } from '../adapters/solver-highs/src/index.ts';
import {
  independentCheck,
  type PlacedSowing,
  type PlanningProblem,
  type PlanScore,
  planSowings,
  type RivalScores,
  rivalScores,
  type SolverPort,
  scorePlaced,
} from '../packages/planning/src/index.ts';
import { chosenSowings } from '../packages/workflows/src/plan/chosen-sowings.ts';
import { demoProblem } from './demo-problem.ts';

const planLimits = { scenarioCount: 4, gapShare: 0.03, lpIterations: 0, timeLimitSeconds: null };
const firstCountedWeek = 13;
const endOfCountedWeeks = 65;

export interface PlanFigures {
  readonly seconds: number;
  readonly gapShare: number | null;
  readonly candidates: number;
  readonly peakMB: number;
  readonly violations: readonly string[];
  readonly plan: PlanScore & { readonly kgPerM2Year: number };
  readonly rivals: RivalScores;
}

function placedOf(
  problem: PlanningProblem,
  chosen: Awaited<ReturnType<typeof planSowings>>,
): {
  readonly placed: PlacedSowing[];
  readonly violations: string[];
} {
  const { sowings } = chosenSowings(problem, chosen.choices, chosen.scenarios);
  const placed = sowings.map((s) => ({ ...s, minutes: 0, standing: s.standing !== null }));
  return { placed, violations: independentCheck(problem, sowings) };
}

/** `lpIterations` 0: relaxation, rounding and the first plan only. Solver off: the first plan alone. */
export async function planFigures(
  example: string,
  useSolver: boolean,
  lpIterations: number,
  memberCount = 30,
): Promise<PlanFigures> {
  const begun = performance.now();
  const elapsedSeconds = (): number => (performance.now() - begun) / 1000;
  const demo = demoProblem(example, memberCount);
  const solver: SolverPort | null = useSolver ? await createHighsSolver() : null;
  try {
    const steps = { progress: () => {}, stopRequested: () => false, elapsedSeconds };
    const chosen = await planSowings(demo.problem, solver, { ...planLimits, lpIterations }, steps);
    const seconds = elapsedSeconds();
    const { placed, violations } = placedOf(demo.problem, chosen);
    const check = demo.context('check', memberCount);
    const [first, last] = [firstCountedWeek, endOfCountedWeeks];
    const { score, kgPerM2Year } = scorePlaced(demo.problem, check, placed, first, last);
    return {
      seconds,
      gapShare: chosen.gapShare,
      candidates: chosen.candidates.length,
      peakMB: process.resourceUsage().maxRSS / 1024,
      violations,
      plan: { ...score, kgPerM2Year },
      rivals: rivalScores(demo.problem, check, first, last),
    };
  } finally {
    await solver?.dispose();
  }
}
