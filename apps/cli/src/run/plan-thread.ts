import { parentPort, workerData } from 'node:worker_threads';
import { CliFailure } from './cli-failure.ts';
import type { PlanMessage, PlanTask } from './plan-messages.ts';
import { failureOf, planWithSolver } from './plan-with-solver.ts';

/** Planning off the main thread, so that Ctrl-C and the progress line are never kept waiting. */

const post = (message: PlanMessage): void => parentPort?.postMessage(message);

async function plan({ garden, daily, options, stopBuffer }: PlanTask): Promise<void> {
  const stopFlag = new Int32Array(stopBuffer);
  const outcome = await planWithSolver(garden, daily, options, {
    progress: (progress, seconds) => post({ kind: 'progress', progress, seconds }),
    stopRequested: () => Atomics.load(stopFlag, 0) !== 0,
  });
  post({ kind: 'answer', outcome });
}

plan(workerData as PlanTask).catch((error: unknown) => {
  post({ kind: 'failed', ...failureOf(error, error instanceof CliFailure) });
});
