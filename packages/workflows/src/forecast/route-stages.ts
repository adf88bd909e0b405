import { type Day, isoFromDay } from '@twelvemonth/basis';
import { NEVER, type SowingRun } from '@twelvemonth/growing';
import type { ReportStage } from '../report/plan-report.ts';
import type { GrowingPlace } from './choose-place.ts';
import type { ChosenRoute } from './choose-route.ts';

/** The engine's stay in the frame before planting out. */
const hardeningDays = 10;

/** Lower middle; members in which it never comes count as later than any day. */
export function middleDay(days: readonly Day[]): Day {
  const sorted = [...days].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)]!;
}

/** Middle days on which it stands on each bench, then in its place. What it never reaches in most members is left out. */
export function routeStages(
  sowDay: Day,
  route: ChosenRoute,
  { place, ground }: GrowingPlace,
  runs: readonly SowingRun[],
): ReportStage[] {
  const emergence = middleDay(runs.map((run) => run.emergenceDay));
  const planted = middleDay(runs.map((run) => run.groundDay));
  const clear = middleDay(runs.map((run) => run.clearDay));
  const ends = Array.from(route.benches, (_, i): Day => {
    const next = route.benches[i + 1];
    if (next === undefined) return planted;
    if (next.stage === 'frame')
      return planted >= NEVER ? NEVER : Math.max(emergence, planted - hardeningDays);
    return emergence;
  });
  const stages: ReportStage[] = [];
  let from = sowDay;
  route.benches.forEach((bench, i) => {
    if (from >= NEVER) return;
    const to = ends[i]!;
    stages.push({
      stage: bench.stage,
      place: bench.place,
      placeName: bench.placeName,
      from: isoFromDay(from),
      to: isoFromDay(to >= NEVER ? clear : to),
    });
    from = to;
  });
  const groundFrom = route.benches.length === 0 ? sowDay : planted;
  if (groundFrom < NEVER)
    stages.push({
      stage: ground.bench !== null ? 'tray' : ground.growsIn === 'tub' ? 'tub' : 'bed',
      place: place.id,
      placeName: place.name,
      from: isoFromDay(groundFrom),
      to: isoFromDay(Math.max(groundFrom, clear)),
    });
  return stages;
}
