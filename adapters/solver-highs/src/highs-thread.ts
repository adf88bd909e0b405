import { Worker } from 'node:worker_threads';
import type { FinalMessage, ImprovedPoint, WorkerMessage, WorkerTask } from './worker-messages.ts';

interface Listener {
  readonly improved: (point: ImprovedPoint) => void;
  /** Null when the thread ended without an answer. */
  readonly finished: (message: FinalMessage | null) => void;
}

/** One worker thread with HiGHS loaded, doing one task at a time; ended and never reused when it misbehaves. */
export class HighsThread {
  readonly #worker: Worker;
  readonly #stopFlag: Int32Array;
  #listener: Listener | null = null;
  #ended = false;

  private constructor(worker: Worker, stopFlag: Int32Array) {
    this.#worker = worker;
    this.#stopFlag = stopFlag;
    worker.on('message', (message: WorkerMessage) => {
      if (message.kind === 'improved') this.#listener?.improved(message);
      else if (message.kind !== 'ready') this.#finish(message);
    });
    worker.on('error', () => this.#end());
    worker.on('exit', () => this.#end());
    worker.unref();
  }

  static open(): Promise<HighsThread> {
    const stopBuffer = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
    const worker = new Worker(new URL('./highs-worker.mjs', import.meta.url), {
      execArgv: [],
      workerData: { stopBuffer },
    });
    return new Promise((resolve, reject) => {
      worker.once('error', reject);
      worker.once('message', () => {
        worker.off('error', reject);
        resolve(new HighsThread(worker, new Int32Array(stopBuffer)));
      });
    });
  }

  get ended(): boolean {
    return this.#ended;
  }

  /** The final message, or null when the thread ended first. */
  run(task: WorkerTask, improved: (point: ImprovedPoint) => void): Promise<FinalMessage | null> {
    if (this.#ended) return Promise.resolve(null);
    Atomics.store(this.#stopFlag, 0, 0);
    this.#worker.ref();
    return new Promise((finished) => {
      this.#listener = { improved, finished };
      this.#worker.postMessage(task);
    });
  }

  askToStop(): void {
    Atomics.store(this.#stopFlag, 0, 1);
  }

  async close(): Promise<void> {
    this.#end();
    await this.#worker.terminate();
  }

  #finish(message: FinalMessage | null): void {
    const listener = this.#listener;
    this.#listener = null;
    this.#worker.unref();
    listener?.finished(message);
  }

  #end(): void {
    this.#ended = true;
    this.#finish(null);
  }
}
