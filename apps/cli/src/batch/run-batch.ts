/** All gardens of a folder over a pool of threads: finished ones are passed over, a bad one never stops the rest. */
import { Piscina } from 'piscina';
import { failureOf } from '../run/plan-with-solver.ts';
import { stoppedSentence } from '../words/batch-words.ts';
import { finishedRow, type GardenFile } from './batch-folder.ts';
import { type BatchOptions, type BatchRow, type BatchTask, unfinished } from './batch-records.ts';

export interface BatchRequest {
  readonly gardens: readonly GardenFile[];
  readonly outFolder: string;
  readonly options: BatchOptions;
  readonly workers: number;
  /** Called once a garden, in the order in which they end. */
  readonly ended: (row: BatchRow, endedCount: number) => void;
}

export interface RunningBatch {
  /** In the order of the gardens. */
  readonly rows: Promise<readonly BatchRow[]>;
  /** What waits is left, what is under way is ended with its thread; finished plans stay. */
  readonly stop: () => void;
}

const threadFile = (): string => {
  const name = import.meta.url.endsWith('.ts') ? './batch-thread-source.mjs' : './batch-thread.mjs';
  return new URL(name, import.meta.url).href;
};

export function startBatch(request: BatchRequest): RunningBatch {
  const { gardens, outFolder, options, workers, ended } = request;
  const stopping = new AbortController();
  const pool = new Piscina<BatchTask, BatchRow>({
    filename: threadFile(),
    minThreads: 1,
    maxThreads: workers,
    concurrentTasksPerWorker: 1,
    atomics: 'disabled',
  });
  let endedCount = 0;
  const end = (row: BatchRow): BatchRow => {
    ended(row, ++endedCount);
    return row;
  };
  const rowOf = async (garden: GardenFile): Promise<BatchRow> => {
    const finished = finishedRow(outFolder, garden, options);
    if (finished !== null) return end(finished);
    const { path: gardenPath, folderName, name } = garden;
    const task = { gardenPath, folderName, outFolder, options };
    try {
      return end(await pool.run(task, { signal: stopping.signal }));
    } catch (error) {
      if (stopping.signal.aborted) return end(unfinished(name, 'stopped', stoppedSentence, 0));
      return end(unfinished(name, 'failed', failureOf(error, false).sentence, 0));
    }
  };
  return {
    rows: Promise.all(gardens.map(rowOf)).finally(() => pool.destroy()),
    stop: () => stopping.abort(),
  };
}
