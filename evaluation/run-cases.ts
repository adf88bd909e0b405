/** Cases over a pool of threads; what is finished when somebody stops is given. */
import { join } from 'node:path';
import { MessageChannel } from 'node:worker_threads';
import { Piscina } from 'piscina';
import type { PlanProgress } from '../packages/workflows/src/index.ts';
import type { CaseFigures, CaseSettings } from './figures.ts';

export interface RunReport {
  readonly cases: readonly CaseFigures[];
  /** Name and reason. */
  readonly failed: readonly { readonly name: string; readonly reason: string }[];
  readonly stopped: boolean;
}

export interface RunListener {
  readonly step: (name: string, progress: PlanProgress) => void;
  readonly finished: (name: string, seconds: number) => void;
}

export async function runCases(
  names: readonly string[],
  settings: CaseSettings,
  atOnce: number,
  listener: RunListener,
  stop: AbortSignal,
): Promise<RunReport> {
  const pool = new Piscina<unknown, CaseFigures>({
    filename: join(import.meta.dirname, 'case-worker.mjs'),
    minThreads: 1,
    maxThreads: Math.min(atOnce, names.length),
  });
  const failed: { name: string; reason: string }[] = [];
  const runOne = async (name: string): Promise<CaseFigures | null> => {
    const { port1, port2 } = new MessageChannel();
    port2.on('message', (progress: PlanProgress) => listener.step(name, progress));
    try {
      const task = { name, ...settings, port: port1 };
      const figures = await pool.run(task, { transferList: [port1], signal: stop });
      listener.finished(name, figures.seconds);
      return figures;
    } catch (error) {
      if (!stop.aborted)
        failed.push({ name, reason: error instanceof Error ? error.message : String(error) });
      return null;
    } finally {
      port2.close();
    }
  };
  try {
    const cases = (await Promise.all(names.map(runOne))).filter((figures) => figures !== null);
    return { cases, failed, stopped: stop.aborted };
  } finally {
    await pool.destroy();
  }
}
