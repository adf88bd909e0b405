import { type Day, dayFromIso, invariant, isoFromDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type CropType, worthSowing } from '@twelvemonth/growing';
import { leftShareOf } from './forecast/seed-tin.ts';
import { kindOf } from './kinds/garden-kinds.ts';
import type { SeedListLine } from './report/forecast-report.ts';
import type { PlanReport } from './report/plan-report.ts';

/** Time for an order to come. */
const orderAheadDays = 21;

interface Need {
  count: number;
  bought: number;
  first: string;
}

/** Seed in the tin that is still worth sowing at its first use. */
const inTin = (garden: Garden, kind: CropType, firstDay: Day): number =>
  garden.seeds
    .filter((packet) => packet.kind === kind.id && worthSowing(leftShareOf(packet, kind, firstDay)))
    .reduce((sum, packet) => sum + packet.seedsCount, 0);

/** What the plan's sowings need beyond what they draw from the tin, in whole packets; nothing for what already stands. */
export function seedListOf(report: PlanReport, garden: Garden): SeedListLine[] {
  const needs = new Map<string, Need>();
  for (const sowing of report.sowings) {
    if (sowing.state === 'done') continue;
    const need = needs.get(sowing.kind);
    const { sow: count, fromTin } = sowing.count;
    if (need === undefined) needs.set(sowing.kind, { count, bought: count - fromTin, first: sowing.sow });
    else {
      need.count += count;
      need.bought += count - fromTin;
      if (sowing.sow < need.first) need.first = sowing.sow;
    }
  }
  const fromDay = dayFromIso(report.from);
  invariant(fromDay !== null, 'a report begins on a day', { from: report.from });
  return [...needs].flatMap(([id, need]): SeedListLine[] => {
    const kind = kindOf(garden, id);
    const firstDay = dayFromIso(need.first);
    if (kind === undefined || firstDay === null) return [];
    const isOwn = garden.savesSeedOf.includes(id);
    const packetCount = Math.max(1, kind.packetSeedsCount);
    return [
      {
        kind: id,
        kindName: kind.name,
        startsAs: kind.startsAs,
        needCount: need.count,
        inTinCount: inTin(garden, kind, firstDay),
        packets: isOwn ? 0 : Math.ceil(need.bought / packetCount),
        isOwn,
        packetCount,
        orderBy: isoFromDay(Math.max(fromDay, firstDay - orderAheadDays)),
        firstUse: need.first,
      },
    ];
  });
}
