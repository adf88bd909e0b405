import type { PlanWishes } from '../run/make-plan.ts';

/** What was asked of every garden of a batch, as it is kept beside each result. */
export type BatchOptions = Required<Omit<PlanWishes, 'seed' | 'last'>> & {
  readonly seed: number;
  /** First day of all plans; null: each file's own, else the day of the run. */
  readonly fromDay: number | null;
};

/** One garden of a batch as it came out. */
export interface BatchRow {
  /** Name of the garden file. */
  readonly garden: string;
  readonly state: 'planned' | 'skipped' | 'failed' | 'stopped';
  /** Why it failed or was stopped; null where all went well. */
  readonly sentence: string | null;
  /** Folder of its plan, within the batch's own; null where there is none. */
  readonly folder: string | null;
  readonly household: string | null;
  readonly warnings: number;
  readonly leanWeeks: number | null;
  readonly servingsMissing: number | null;
  readonly gapShare: number | null;
  readonly seconds: number;
}

/** Written beside a finished plan, last of all: with what it was made, from what. */
export interface BatchStamp {
  readonly schemaVersion: 1;
  readonly options: BatchOptions;
  readonly tables: string;
  /** Garden file and weather record, as absolute paths. */
  readonly inputs: readonly string[];
  readonly row: BatchRow;
}

export interface BatchTask {
  readonly gardenPath: string;
  readonly folderName: string;
  readonly outFolder: string;
  readonly options: BatchOptions;
}

export interface BatchSummary {
  readonly schemaVersion: 1;
  readonly options: BatchOptions;
  readonly workers: number;
  readonly seconds: number;
  readonly planned: number;
  readonly skipped: number;
  readonly failed: number;
  readonly stopped: number;
  readonly gardens: readonly BatchRow[];
}

export const unfinished = (
  garden: string,
  state: 'failed' | 'stopped',
  sentence: string,
  seconds: number,
): BatchRow => ({
  garden,
  state,
  sentence,
  folder: null,
  household: null,
  warnings: 0,
  leanWeeks: null,
  servingsMissing: null,
  gapShare: null,
  seconds,
});
