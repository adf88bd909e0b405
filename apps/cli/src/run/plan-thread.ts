import { parentPort, workerData } from 'node:worker_threads';
import { CliFailure } from './cli-failure.ts';
import type { PlanMessage, PlanTask } from './plan-messages.ts';
import { workflowFunction } from './workflow-functions.ts';

/** Planning off the main thread, so that Ctrl-C and the progress line are never kept waiting. */

const post = (message: PlanMessage): void => parentPort?.postMessage(message);

async function plan(task: PlanTask): Promise<void> {
  const began = performance.now();
  const seconds = (): number => (performance.now() - began) / 1000;
  const stopFlag = new Int32Array(task.stopBuffer);
  const { createHighsSolver } = await import('@twelvemonth/solver-highs');
  const planGarden = await workflowFunction('planGarden');
  const solver = await createHighsSolver();
  try {
    const ports = {
      solver,
      progress: (progress: Parameters<Parameters<typeof planGarden>[2]['progress']>[0]) =>
        post({ kind: 'progress', progress, seconds: seconds() }),
      stopRequested: () => Atomics.load(stopFlag, 0) !== 0,
      elapsedSeconds: seconds,
    };
    post({ kind: 'answer', outcome: await planGarden(task.garden, task.options, ports, task.daily) });
  } finally {
    await solver.dispose();
  }
}

plan(workerData as PlanTask).catch((error: unknown) => {
  const sentence =
    error instanceof CliFailure
      ? error.message
      : `The planner broke down: ${(error instanceof Error ? error.message : String(error)).split('\n')[0]}`;
  post({ kind: 'failed', sentence, stack: error instanceof Error ? (error.stack ?? '') : '' });
});
