/** One sowing over all members, in three numbers and week by week. */
import { type Band, bandOf, isoOfWeek, type Week } from '@twelvemonth/basis';
import { type CropType, NEVER, type SowingRun } from '@twelvemonth/growing';
import type { ForecastReport } from '../report/forecast-report.ts';
import { dayBandOf } from './day-band.ts';

export type SummedRuns = Pick<
  ForecastReport,
  | 'emergence'
  | 'germinatingShare'
  | 'plantingOut'
  | 'firstHarvest'
  | 'lastHarvest'
  | 'harvests'
  | 'boltedShare'
  | 'frostedShare'
  | 'lostShare'
  | 'nitrogenLeft'
  | 'servingsPerPlant'
  | 'weeks'
>;

/** Less than this in a week is nothing on the table. */
const leastServings = 0.01;

function weeksOf(runs: readonly SowingRun[]): ForecastReport['weeks'] {
  const lots = runs.flatMap((run) => run.lots.filter((lot) => lot.servings > 0));
  if (lots.length === 0) return [];
  const first: Week = lots.reduce((least, lot) => Math.min(least, lot.fromWeek), Number.POSITIVE_INFINITY);
  const last: Week = lots.reduce((most, lot) => Math.max(most, lot.fromWeek), 0);
  const ready = runs.map((run) => {
    const weeks = new Float64Array(last - first + 1);
    for (const lot of run.lots)
      if (lot.servings > 0) weeks[lot.fromWeek - first] = weeks[lot.fromWeek - first]! + lot.servings;
    return weeks;
  });
  const soFar = new Float64Array(runs.length);
  return Array.from({ length: last - first + 1 }, (_, w) => {
    let sum = 0;
    let any = 0;
    ready.forEach((weeks, m) => {
      sum += weeks[w]!;
      if (weeks[w]! >= leastServings) any++;
      soFar[m] = soFar[m]! + weeks[w]!;
    });
    return {
      weekOf: isoOfWeek(first + w),
      meanServings: sum / runs.length,
      chanceAny: any / runs.length,
      cumulative: bandOf(soFar),
    };
  });
}

/** Days of a harvest count only in members in which it gives something. */
const dayIf = (gives: boolean, day: number): number => (gives ? day : NEVER);

export function sumUpRuns(
  kind: CropType,
  runs: readonly SowingRun[],
  plantsCount: number,
  raised: boolean,
): SummedRuns {
  const harvests: Record<string, ForecastReport['harvests'][string]> = {};
  kind.harvests.forEach((harvest, i) => {
    const own = runs.map((run) => run.harvests[i]!);
    const reasons = own.map((run) => run.reason);
    harvests[harvest.id] = {
      first: dayBandOf(
        own.map((run) => dayIf(run.reason === null, run.firstDay)),
        reasons,
      ),
      last: dayBandOf(
        own.map((run) => dayIf(run.reason === null, run.lastDay)),
        reasons,
      ),
      servings: bandOf(own.map((run) => run.servings)),
    };
  });
  const giving = runs.map((run) => run.harvests.filter((h) => h.reason === null));
  const why = runs.map((run, m) => (giving[m]!.length > 0 ? null : (run.harvests.at(-1)?.reason ?? null)));
  const never = runs.map((): string => 'never-emerges');
  const share = (of: (run: SowingRun) => number): Band => bandOf(runs.map(of));
  return {
    emergence: dayBandOf(
      runs.map((run) => run.emergenceDay),
      never,
    ),
    germinatingShare: share((run) => run.germinatingShare),
    nitrogenLeft:
      kind.nitrogenAtFlowerGPerM2 === 0
        ? null
        : {
            atFirstFlowerGPerM2: kind.nitrogenAtFlowerGPerM2,
            atItsEndGPerM2: share((run) => run.nitrogenLeftGPerM2),
          },
    plantingOut: raised
      ? dayBandOf(
          runs.map((run) => run.groundDay),
          runs.map((run) => (run.emergenceDay >= NEVER ? 'never-emerges' : 'not-ready-in-time')),
        )
      : null,
    firstHarvest: dayBandOf(
      giving.map((all) => Math.min(NEVER, ...all.map((h) => h.firstDay))),
      why,
    ),
    lastHarvest: dayBandOf(
      giving.map((all) => (all.length === 0 ? NEVER : Math.max(...all.map((h) => h.lastDay)))),
      why,
    ),
    harvests,
    boltedShare: share((run) => run.boltedShare),
    frostedShare: share((run) => run.frostedShare),
    lostShare: share((run) => run.lostShare),
    servingsPerPlant: share((run) => run.lots.reduce((sum, lot) => sum + lot.servings, 0) / plantsCount),
    weeks: weeksOf(runs),
  };
}
