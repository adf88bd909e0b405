/** The gardener's own demands as a list, and the garden with some of them only. */
import { type Day, isoFromDay } from '@twelvemonth/basis';
import type { Garden, Wish } from '@twelvemonth/garden';
import { kindOf } from '../kinds/garden-kinds.ts';
import type { ReportDemand } from '../report/conflict-report.ts';

export type Demand =
  | { readonly demand: 'wish'; readonly wish: Wish }
  | { readonly demand: 'yearly'; readonly kind: string; readonly count: number }
  | { readonly demand: 'hours' };

/** Wishes that ask for something; the others only forbid. Neither list alone can be impossible. */
const wants = (demand: Demand): boolean =>
  demand.demand === 'yearly' ||
  (demand.demand === 'wish' && (demand.wish.wish === 'at-least' || demand.wish.wish === 'firm'));

/** What forbids first: what is left of a clash is then told by the fewest of them. */
export function demandsOf(garden: Garden): { readonly all: Demand[]; readonly wanted: Demand[] } {
  const wishes = garden.wishes.map((wish): Demand => ({ demand: 'wish', wish }));
  const yearly = garden.household.yearly
    .filter(({ count }) => count > 0)
    .map(({ kind, count }): Demand => ({ demand: 'yearly', kind, count }));
  const limited = garden.hoursPerWeekByMonth.some((hours) => hours !== null);
  const every: Demand[] = [...(limited ? [{ demand: 'hours' as const }] : []), ...wishes, ...yearly];
  const wanted = every.filter(wants);
  return { all: [...every.filter((demand) => !wants(demand)), ...wanted], wanted };
}

export function gardenWith(garden: Garden, demands: readonly Demand[]): Garden {
  const wishes = demands.flatMap((demand) => (demand.demand === 'wish' ? [demand.wish] : []));
  const yearly = demands.flatMap((demand) =>
    demand.demand === 'yearly' ? [{ kind: demand.kind, count: demand.count }] : [],
  );
  const limited = demands.some((demand) => demand.demand === 'hours');
  return {
    ...garden,
    wishes,
    household: { ...garden.household, yearly },
    hoursPerWeekByMonth: limited ? garden.hoursPerWeekByMonth : garden.hoursPerWeekByMonth.map(() => null),
  };
}

const iso = (day: Day | null): string | null => (day === null ? null : isoFromDay(day));

export function reportDemand(garden: Garden, demand: Demand): ReportDemand {
  const none = {
    id: null,
    kind: null,
    kindName: '',
    plants: null,
    place: null,
    placeName: '',
    from: null,
    to: null,
  };
  const named = (kind: string) => ({ kind, kindName: kindOf(garden, kind)?.name ?? kind });
  const placed = (place: string) => ({
    place,
    placeName: garden.places.find(({ id }) => id === place)?.name ?? place,
  });
  if (demand.demand === 'hours') return { ...none, demand: 'hours' };
  if (demand.demand === 'yearly')
    return { ...none, demand: 'yearly', ...named(demand.kind), plants: demand.count };
  const { wish } = demand;
  switch (wish.wish) {
    case 'forbid':
      return { ...none, demand: 'forbid', ...named(wish.kind) };
    case 'at-least':
    case 'at-most':
      return { ...none, demand: wish.wish, ...named(wish.kind), plants: wish.plantsCount };
    case 'firm':
      return {
        ...none,
        demand: 'firm',
        id: wish.id,
        ...named(wish.kind),
        ...placed(wish.place),
        plants: wish.plantsCount,
        from: iso(wish.sowDay),
      };
    case 'rest':
      return {
        ...none,
        demand: 'rest',
        ...placed(wish.place),
        from: iso(wish.fromDay),
        to: iso(wish.toDay),
      };
    case 'no-planting':
      return { ...none, demand: 'no-planting', from: iso(wish.fromDay), to: iso(wish.toDay) };
  }
}
