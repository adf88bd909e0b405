/** The yardstick of every budget: a fixed floating-point loop, timed in the same run on the same machine. */
const steps = 2_000_000;

function loop(): number {
  let x = 1;
  for (let i = 1; i <= steps; i++) x = x * 0.999_999 + Math.sqrt(i) / (x + i);
  return x;
}

export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)]!;
}

/** Milliseconds of each of so many runs, after one that warms up. */
export function timesMs(runs: number, work: () => void): number[] {
  work();
  return Array.from({ length: runs }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
}

export function referenceMs(): number {
  let sink = 0;
  const ms = medianOf(
    timesMs(7, () => {
      sink += loop();
    }),
  );
  if (!Number.isFinite(sink)) throw new Error('the reference loop ran away');
  return ms;
}
