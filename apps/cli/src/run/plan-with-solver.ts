import type { Outcome } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather } from '@twelvemonth/growing';
import type { PlanOptions, PlanProgress, PlanReport } from '@twelvemonth/workflows';
import { workflowFunction } from './workflow-functions.ts';

export interface PlanListener {
  progress(progress: PlanProgress, seconds: number): void;
  stopRequested(): boolean;
}

/** One plan with a solver of its own, which is given back when the plan is made. */
export async function planWithSolver(
  garden: Garden,
  daily: DailyWeather | null,
  options: PlanOptions,
  listener: PlanListener,
): Promise<Outcome<PlanReport>> {
  const began = performance.now();
  const seconds = (): number => (performance.now() - began) / 1000;
  const { createHighsSolver } = await import('@twelvemonth/solver-highs');
  const planGarden = await workflowFunction('planGarden');
  const solver = await createHighsSolver();
  try {
    const ports = {
      solver,
      progress: (progress: PlanProgress) => listener.progress(progress, seconds()),
      stopRequested: () => listener.stopRequested(),
      elapsedSeconds: seconds,
    };
    return await planGarden(garden, options, ports, daily);
  } finally {
    await solver.dispose();
  }
}

/** A failure in one sentence, and where it came from for those who look. */
export function failureOf(error: unknown, isSentence: boolean): { sentence: string; stack: string } {
  const text = error instanceof Error ? error.message : String(error);
  return {
    sentence: isSentence ? text : `The planner broke down: ${text.split('\n')[0]}`,
    stack: error instanceof Error ? (error.stack ?? '') : '',
  };
}
