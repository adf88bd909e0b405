/**
 * Benches that are taken already: by plants of the file that wait there for their ground, and by firm sowings while they
 * are raised. Never more than there is: what people have squeezed in somehow does not make a plan impossible. Rounded to
 * the grain of the program, downwards for the same reason.
 */
import { type Week, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type Bench, type BenchUse, benchUses, type StandingCrop } from '@twelvemonth/planning';

/** A firm sowing is taken to be up so long after it was sown. */
const upAfterWeeks = 2;

function wantedBy(garden: Garden, benches: readonly Bench[], crop: StandingCrop, fromWeek: Week): BenchUse[] {
  const { plan, groundFromWeek } = crop;
  const place = garden.standing.find(({ id }) => id === plan.id)?.place;
  const here = benches.findIndex((bench) => bench.place === place);
  if (here >= 0) {
    const m2 = plan.plantsCount * plan.kind.moduleM2PerPlant;
    return [{ bench: here, fromWeek, toWeek: groundFromWeek, m2 }];
  }
  if (crop.state !== 'firm') return [];
  const path = plan.stages.map(({ stage, exposure }) =>
    benches.findIndex((bench) => bench.stage === stage && bench.exposure === exposure),
  );
  const startWeek = weekOfDay(plan.startDay);
  if (path.includes(-1) || groundFromWeek <= startWeek) return [];
  return benchUses(benches, { route: plan.route, benches: path }, plan.kind, plan.plantsCount, {
    startWeek,
    emergedWeek: startWeek + upAfterWeeks,
    readyWeek: groundFromWeek,
    heldWeeks: 0,
  });
}

/** Crops with the bench space that they hold, cut where it is more than there is. */
export function cutToBenches(
  benches: readonly Bench[],
  standing: readonly StandingCrop[],
  fromWeek: Week,
  weekCount: number,
): StandingCrop[] {
  const free = benches.map(({ capacityM2 }) => new Float64Array(weekCount).fill(capacityM2));
  return standing.map((crop) => {
    const bench = crop.bench.flatMap((use): BenchUse[] => {
      const weeks = free[use.bench]!.subarray(
        Math.max(0, use.fromWeek - fromWeek),
        Math.min(weekCount, use.toWeek - fromWeek),
      );
      const m2 = Math.floor(Math.min(use.m2, ...weeks) * 1024) / 1024;
      if (weeks.length === 0 || m2 <= 0) return [];
      weeks.forEach((left, w) => {
        weeks[w] = left - m2;
      });
      return [{ ...use, m2 }];
    });
    return { ...crop, bench };
  });
}

export function withBenches(
  garden: Garden,
  benches: readonly Bench[],
  standing: readonly StandingCrop[],
  fromWeek: Week,
  weekCount: number,
): StandingCrop[] {
  const asking = standing.map((crop) => ({ ...crop, bench: wantedBy(garden, benches, crop, fromWeek) }));
  return cutToBenches(benches, asking, fromWeek, weekCount);
}
