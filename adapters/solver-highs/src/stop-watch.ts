import type { HighsThread } from './highs-thread.ts';

const pollEveryMs = 40;
/** HiGHS looks at the flag between rounds of work; when it has not looked for this long, the thread is ended. */
const patienceMs = 2_500;
const overdueShare = 1.25;
const overdueExtraMs = 5_000;

export interface StopWatch {
  /** Why the thread was ended, null when it was not. */
  ended(): 'stopped' | 'time' | null;
  close(): void;
}

/** The time limit is HiGHS's own affair; this is when it has plainly not kept it. */
export const overdueAfterMs = (timeLimitSeconds: number | null): number | null =>
  timeLimitSeconds === null ? null : timeLimitSeconds * 1_000 * overdueShare + overdueExtraMs;

/** Hands a wish to stop to the worker thread, and ends the thread when it neither hears nor keeps its time. */
export function watchForStop(
  stopRequested: () => boolean,
  overdueMs: number | null,
  thread: Pick<HighsThread, 'askToStop' | 'close'>,
): StopWatch {
  const begunMs = performance.now();
  let askedMs: number | null = null;
  let ended: 'stopped' | 'time' | null = null;
  const end = (why: 'stopped' | 'time'): void => {
    ended = why;
    clearInterval(timer);
    void thread.close();
  };
  const look = (): void => {
    const nowMs = performance.now();
    if (askedMs === null && stopRequested()) {
      askedMs = nowMs;
      thread.askToStop();
    }
    if (askedMs !== null && nowMs - askedMs > patienceMs) end('stopped');
    else if (overdueMs !== null && nowMs - begunMs > overdueMs) end('time');
  };
  const timer = setInterval(look, pollEveryMs);
  return { ended: () => ended, close: () => clearInterval(timer) };
}
