import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { overdueAfterMs, watchForStop } from './stop-watch.ts';

function deafThread() {
  const heard = { asked: 0, closed: 0 };
  const thread = {
    askToStop: () => {
      heard.asked++;
    },
    close: () => {
      heard.closed++;
      return Promise.resolve();
    },
  };
  return { heard, thread };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('asks once, and ends a thread that does not hear', () => {
  const { heard, thread } = deafThread();
  let wanted = false;
  const watch = watchForStop(() => wanted, null, thread);
  vi.advanceTimersByTime(60_000);
  expect(heard).toEqual({ asked: 0, closed: 0 });
  wanted = true;
  vi.advanceTimersByTime(1_000);
  expect(heard).toEqual({ asked: 1, closed: 0 });
  expect(watch.ended()).toBeNull();
  vi.advanceTimersByTime(5_000);
  expect(heard).toEqual({ asked: 1, closed: 1 });
  expect(watch.ended()).toBe('stopped');
});

it('ends a thread that does not keep its time limit', () => {
  const { heard, thread } = deafThread();
  const watch = watchForStop(() => false, overdueAfterMs(10), thread);
  vi.advanceTimersByTime(12_000);
  expect(heard.closed).toBe(0);
  vi.advanceTimersByTime(10_000);
  expect(heard.closed).toBe(1);
  expect(watch.ended()).toBe('time');
});

it('does nothing once closed', () => {
  const { heard, thread } = deafThread();
  watchForStop(() => true, 1, thread).close();
  vi.advanceTimersByTime(60_000);
  expect(heard).toEqual({ asked: 0, closed: 0 });
});
