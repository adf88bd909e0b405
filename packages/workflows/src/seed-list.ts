import { civilFromDay, dayFromIso, invariant, isoFromDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { kindOf } from './kinds/garden-kinds.ts';
import type { SeedListLine } from './report/forecast-report.ts';
import type { PlanReport } from './report/plan-report.ts';

/** Time for an order to come. */
const orderAheadDays = 21;

interface Need {
  count: number;
  first: string;
}

/** Seed in the tin that still comes up in the year of its first use; of unknown year: taken as good. */
function inTin(garden: Garden, kind: string, useYear: number, lifeYears: number): number {
  return garden.seeds
    .filter((seed) => seed.kind === kind)
    .filter((seed) => seed.packedYear === null || useYear - seed.packedYear <= lifeYears)
    .reduce((sum, seed) => sum + seed.seedsCount, 0);
}

/** What the plan's sowings need, against the tin, in whole packets; nothing for what already stands. */
export function seedListOf(report: PlanReport, garden: Garden): SeedListLine[] {
  const needs = new Map<string, Need>();
  for (const sowing of report.sowings) {
    if (sowing.state === 'done') continue;
    const need = needs.get(sowing.kind);
    if (need === undefined) needs.set(sowing.kind, { count: sowing.count.sow, first: sowing.sow });
    else {
      need.count += sowing.count.sow;
      if (sowing.sow < need.first) need.first = sowing.sow;
    }
  }
  const fromDay = dayFromIso(report.from);
  invariant(fromDay !== null, 'a report begins on a day', { from: report.from });
  return [...needs].flatMap(([id, need]): SeedListLine[] => {
    const kind = kindOf(garden, id);
    const firstDay = dayFromIso(need.first);
    if (kind === undefined || firstDay === null) return [];
    const inTinCount = inTin(garden, id, civilFromDay(firstDay).year, kind.seedLifeYears);
    const missing = Math.max(0, need.count - inTinCount);
    const packetCount = Math.max(1, kind.packetSeedsCount);
    return [
      {
        kind: id,
        kindName: kind.name,
        startsAs: kind.startsAs,
        needCount: need.count,
        inTinCount,
        packets: Math.ceil(missing / packetCount),
        packetCount,
        orderBy: isoFromDay(Math.max(fromDay, firstDay - orderAheadDays)),
        firstUse: need.first,
      },
    ];
  });
}
