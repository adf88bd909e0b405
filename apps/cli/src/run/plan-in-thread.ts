import { Worker } from 'node:worker_threads';
import type { Outcome } from '@twelvemonth/basis';
import type { PlanReport } from '@twelvemonth/workflows';
import { progressText } from '../words/plan-words.ts';
import { CliFailure } from './cli-failure.ts';
import type { PlanMessage, PlanTask } from './plan-messages.ts';
import type { Terminal } from './terminal.ts';

function openThread(task: PlanTask): Worker {
  const name = import.meta.url.endsWith('.ts') ? './plan-thread-source.mjs' : './plan-thread.mjs';
  return new Worker(new URL(name, import.meta.url), { workerData: task });
}

/** First Ctrl-C: stop and give the best so far. Second: give up. */
function listenForStop(stop: () => void, giveUp: () => void, terminal: Terminal): () => void {
  let asked = false;
  const onInterrupt = (): void => {
    if (asked) giveUp();
    else {
      stop();
      terminal.say('Stopping: the best plan so far is being finished. Ctrl-C again gives up.');
    }
    asked = true;
  };
  process.on('SIGINT', onInterrupt);
  return () => process.off('SIGINT', onInterrupt);
}

export interface ProgressWish {
  readonly terminal: Terminal;
  /** Also when the output is not a terminal: one line a step. */
  readonly always: boolean;
}

export async function planInThread(
  task: Omit<PlanTask, 'stopBuffer'>,
  { terminal, always }: ProgressWish,
): Promise<Outcome<PlanReport>> {
  const stopBuffer = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const thread = openThread({ ...task, stopBuffer });
  let step = '';
  const show = (message: PlanMessage & { kind: 'progress' }): void => {
    const text = progressText(message.progress, message.seconds);
    if (terminal.sayIsTty) terminal.status(text);
    else if (always && message.progress.step !== step) terminal.say(text);
    step = message.progress.step;
  };
  let endListening = (): void => {};
  try {
    return await new Promise((resolve, reject) => {
      endListening = listenForStop(
        () => Atomics.store(new Int32Array(stopBuffer), 0, 1),
        () => reject(new CliFailure('Given up: nothing was written.')),
        terminal,
      );
      thread.on('message', (message: PlanMessage) => {
        if (message.kind === 'progress') return show(message);
        if (message.kind === 'answer') return resolve(message.outcome);
        if (process.env.TWELVEMONTH_DEBUG !== undefined) terminal.say(message.stack);
        reject(new CliFailure(message.sentence));
      });
      thread.on('error', (error) => reject(error));
      thread.on('exit', (code) =>
        reject(new CliFailure(`The planner ended early (code ${code}), perhaps for want of memory.`)),
      );
    });
  } finally {
    endListening();
    terminal.status(null);
    await thread.terminate();
  }
}
