import { invariant } from '@twelvemonth/basis';
import type {
  KeptRelaxation,
  LinearProgram,
  RelaxAnswer,
  SolveLimits,
  SolverAnswer,
  SolverPort,
} from '@twelvemonth/planning';
import { type HighsOptions, measuredOptions } from './highs-options.ts';
import { HighsThread } from './highs-thread.ts';
import { overdueAfterMs, watchForStop } from './stop-watch.ts';
import type { FinalMessage, ImprovedPoint, WorkerTask } from './worker-messages.ts';

/** `lpIterations`: counted LP iterations after which the search stops, the same on every machine. */
export type HighsLimits = SolveLimits;

export interface HighsSolver extends SolverPort {
  solve(
    program: LinearProgram,
    limits: HighsLimits,
    start: Float64Array | null,
    onProgress: Parameters<SolverPort['solve']>[3],
    stopRequested: () => boolean,
  ): Promise<SolverAnswer>;
}

const nothingFound: SolverAnswer = {
  status: 'failed',
  colValue: null,
  objective: null,
  bound: null,
  iterations: 0,
};
const relaxationFailed: RelaxAnswer = {
  status: 'failed',
  colValue: null,
  objective: null,
  rowDual: null,
  iterations: 0,
};

/** HiGHS in a worker thread. Tasks wait for each other; `dispose` ends the thread and gives its memory back. */
export async function createHighsSolver(options: HighsOptions = measuredOptions): Promise<HighsSolver> {
  let thread: HighsThread | null = await HighsThread.open();
  let disposed = false;
  let lastTask: Promise<unknown> = Promise.resolve();

  const liveThread = async (): Promise<HighsThread> => {
    invariant(!disposed, 'the solver was disposed while work was waiting');
    if (thread === null || thread.ended) thread = await HighsThread.open();
    return thread;
  };
  const inTurn = <T>(work: (thread: HighsThread) => Promise<T>): Promise<T> => {
    invariant(!disposed, 'the solver is used after dispose');
    const turn = lastTask.then(liveThread).then(work);
    lastTask = turn.catch(() => null);
    return turn;
  };

  return {
    solve: (program, limits, start, onProgress, stopRequested) =>
      inTurn((live) => solveOn(live, { program, limits, start, options, onProgress, stopRequested })),
    relax: (program, stopRequested) => {
      checkShape(program, null);
      return inTurn((live) => relaxOn(live, { kind: 'relax', program, options }, stopRequested));
    },
    keepRelaxation: async (program) => {
      checkShape(program, null);
      const keeper = await inTurn(async (live) => {
        checkAccepted(await live.run({ kind: 'keep', program, options }, () => {}));
        return live;
      });
      return keptOn(keeper, inTurn);
    },
    dispose: async () => {
      disposed = true;
      await thread?.close();
      thread = null;
    },
  };
}

async function relaxOn(
  thread: HighsThread,
  task: WorkerTask,
  stopRequested: () => boolean,
): Promise<RelaxAnswer> {
  const watch = watchForStop(stopRequested, null, thread);
  try {
    const message = await thread.run(task, () => {});
    checkAccepted(message);
    return message?.kind === 'relaxed' ? message.answer : relaxationFailed;
  } finally {
    watch.close();
  }
}

/** A thread that had to be ended takes what it kept with it: the rest of the calls fail quietly. */
function keptOn(
  keeper: HighsThread,
  inTurn: <T>(work: (thread: HighsThread) => Promise<T>) => Promise<T>,
): KeptRelaxation {
  const run = (task: WorkerTask): Promise<void> =>
    inTurn(async () => checkAccepted(await keeper.run(task, () => {})));
  return {
    grow: (growth) => run({ kind: 'grow', growth }),
    change: (changes) => run({ kind: 'change', changes }),
    relax: (stopRequested) => inTurn(() => relaxOn(keeper, { kind: 'relax-kept' }, stopRequested)),
    close: () => run({ kind: 'drop-kept' }),
  };
}

interface SolveRequest {
  readonly program: LinearProgram;
  readonly limits: HighsLimits;
  readonly start: Float64Array | null;
  readonly options: HighsOptions;
  readonly onProgress: Parameters<SolverPort['solve']>[3];
  readonly stopRequested: () => boolean;
}

async function solveOn(thread: HighsThread, request: SolveRequest): Promise<SolverAnswer> {
  const { program, limits, start, options, onProgress, stopRequested } = request;
  checkShape(program, start);
  let best: ImprovedPoint | null = null;
  const watch = watchForStop(stopRequested, overdueAfterMs(limits.timeLimitSeconds), thread);
  try {
    const message = await thread.run(
      { kind: 'solve', program, limits, lpIterations: limits.lpIterations, start, options },
      (point) => {
        best = point;
        onProgress(point.progress);
      },
    );
    checkAccepted(message);
    return message?.kind === 'solved' ? message.answer : answerWhenEnded(watch.ended(), best);
  } finally {
    watch.close();
  }
}

/** The thread had to be ended: the best point it told of is still true. */
function answerWhenEnded(why: 'stopped' | 'time' | null, best: ImprovedPoint | null): SolverAnswer {
  const status = why ?? 'failed';
  if (best === null) return { ...nothingFound, status };
  const { objective, bound } = best.progress;
  return {
    status,
    colValue: best.colValue,
    objective,
    bound: Number.isFinite(bound) ? bound : null,
    iterations: best.iterations,
  };
}

function checkAccepted(message: FinalMessage | null): void {
  invariant(message?.kind !== 'refused', 'the solver library refused the program', {
    reason: message?.kind === 'refused' ? message.reason : null,
  });
}

function checkShape(program: LinearProgram, start: Float64Array | null): void {
  const colCount = program.colCost.length;
  const lengths = {
    colLower: program.colLower.length,
    colUpper: program.colUpper.length,
    colWhole: program.colWhole.length,
    starts: program.starts.length - 1,
    start: start?.length ?? colCount,
  };
  invariant(
    Object.values(lengths).every((length) => length === colCount),
    'every column array is as long as the costs',
    { colCount, ...lengths },
  );
  invariant(
    program.rowLower.length === program.rowUpper.length &&
      program.indices.length === program.values.length &&
      program.starts[colCount] === program.values.length,
    'rows and entries agree in length',
    { rows: program.rowLower.length, entries: program.values.length, lastStart: program.starts[colCount] },
  );
}
