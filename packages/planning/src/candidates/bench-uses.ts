/**
 * What a raised sowing takes of its benches, stage by stage: sown on the first (on a mat and then pricked out, only the
 * room of a seed tray), moved on when it is up, hardened off in a frame for the last fortnight, and kept in larger pots
 * on the last bench while it waits for its ground.
 */
import type { Week } from '@twelvemonth/basis';
import { type CropType, hardeningDays, seedlingOfModuleShare } from '@twelvemonth/growing';
import type { Bench, BenchUse } from '../problem.ts';
import { benchGrain } from '../program/bench-grain.ts';
import type { RouteChoice } from './routes.ts';

const hardeningWeeks = Math.ceil(hardeningDays / 7);

export interface RaisingWeeks {
  readonly startWeek: Week;
  /** By then most of it is up. */
  readonly emergedWeek: Week;
  /** Fit to be set out. */
  readonly readyWeek: Week;
  /** So many weeks more in pots. */
  readonly heldWeeks: number;
}

export function benchUses(
  benches: readonly Pick<Bench, 'stage'>[],
  choice: Pick<RouteChoice, 'route' | 'benches'>,
  kind: Pick<CropType, 'moduleM2PerPlant' | 'potM2PerPlant'>,
  plantsCount: number,
  weeks: RaisingWeeks,
): BenchUse[] {
  if (choice.benches.length === 0) return [];
  const { startWeek, heldWeeks } = weeks;
  const readyWeek = Math.max(startWeek + 1, weeks.readyWeek);
  const emergedWeek = Math.min(readyWeek, Math.max(startWeek + 1, weeks.emergedWeek));
  const last = choice.benches.length - 1;
  const begins = choice.benches.map((bench, i) => {
    if (i === 0) return startWeek;
    return benches[bench]!.stage === 'frame'
      ? Math.max(emergedWeek, readyWeek - hardeningWeeks)
      : emergedWeek;
  });
  const modulesM2 = plantsCount * kind.moduleM2PerPlant;
  const isSeedTray = (i: number): boolean =>
    i === 0 && last > 0 && choice.route === 'warm' && benches[choice.benches[0]!]!.stage === 'mat';
  const uses = choice.benches.flatMap((bench, i): BenchUse[] => {
    const fromWeek = begins[i]!;
    const toWeek = i === last ? readyWeek : Math.min(readyWeek, begins[i + 1]!);
    const m2 = benchGrain(isSeedTray(i) ? modulesM2 * seedlingOfModuleShare : modulesM2);
    return fromWeek < toWeek ? [{ bench, fromWeek, toWeek, m2 }] : [];
  });
  if (heldWeeks > 0)
    uses.push({
      bench: choice.benches[last]!,
      fromWeek: readyWeek,
      toWeek: readyWeek + heldWeeks,
      m2: benchGrain(plantsCount * kind.potM2PerPlant),
    });
  return uses;
}
