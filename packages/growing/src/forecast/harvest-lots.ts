/**
 * What one harvest offers, as lots of servings that can be eaten between two weeks. Fresh lots must be eaten soon;
 * standing lots wait in the ground to the end of the harvest (and beyond it where they are lifted into a store);
 * store lots lie from the lifting on and lose a share each week.
 */
import { type Day, type Week, weekOfDay } from '@twelvemonth/basis';
import type { Harvest, StoreId } from '../crops/crop-type.ts';
import type { Growing } from '../growth/growing.ts';
import { dayOfSum, sumBetween } from '../growth/place-clock.ts';
import { keptGPerServing, longestKeeping, putByOf } from './keeping.ts';
import type { Lot } from './sowing-plan.ts';

export interface LotMaker {
  readonly source: string;
  readonly kind: string;
  readonly growing: Growing;
  readonly harvest: Harvest;
  /** Servings of the whole yield (first cut for cuts) of all plants set out, before survival and size. */
  readonly fullServings: number;
  readonly firstDay: Day;
  readonly lastDay: Day;
  survivalAt(day: Day): number;
  readonly stores: ReadonlySet<StoreId>;
}

function lot(maker: LotMaker, fromWeek: Week, toWeek: Week, servings: number, form: Lot['form']): Lot {
  const { source, kind, harvest, stores } = maker;
  return {
    source,
    kind,
    role: harvest.role,
    fromWeek,
    toWeek: Math.max(fromWeek, toWeek),
    servings,
    lossPerWeekShare: 0,
    form,
    store: null,
    storeFromWeek: null,
    keptGPerServing: keptGPerServing(harvest),
    putBy: putByOf(harvest, stores),
    bolted: false,
  };
}

/** Size on a day, share of full. */
function sizeAt(maker: LotMaker, day: Day): number {
  const { growing, harvest } = maker;
  return Math.min(1, growing.raised.growthAt(day) / Math.max(1, growing.sumOf(harvest.fullDays)));
}

function onceLots(maker: LotMaker): Lot[] {
  const { harvest, firstDay, lastDay } = maker;
  const servings = maker.fullServings * sizeAt(maker, firstDay) * maker.survivalAt(firstDay);
  const week = weekOfDay(firstDay);
  const keeping = longestKeeping(harvest, maker.stores);
  if (keeping === null) {
    const eatenBy = week + Math.max(1, harvest.eatWithinWeeks) - 1;
    const standsTo = harvest.standingDays === null ? week : weekOfDay(lastDay);
    return [lot(maker, week, Math.max(eatenBy, standsTo), servings, 'fresh')];
  }
  const curedWeek = weekOfDay(firstDay + keeping.cureDays);
  return [
    {
      ...lot(maker, week, curedWeek + keeping.lifeWeeks, servings, 'store'),
      lossPerWeekShare: keeping.lossPerWeekShare,
      store: keeping.store,
      storeFromWeek: week,
    },
  ];
}

const standingStepWeeks = 4;

function standingLots(maker: LotMaker): Lot[] {
  const { firstDay, lastDay, fullServings } = maker;
  const lots: Lot[] = [];
  const lastWeek = weekOfDay(lastDay);
  const keeping = longestKeeping(maker.harvest, maker.stores);
  const endWeek = keeping === null ? lastWeek + 1 : lastWeek + keeping.lifeWeeks;
  const survivalFirst = maker.survivalAt(firstDay);
  const weeks = Math.max(1, lastWeek - weekOfDay(firstDay));
  let size = 0;
  for (let day = firstDay; day <= lastDay && size < 1; day += standingStepWeeks * 7) {
    const now = sizeAt(maker, day);
    const grown = now - size;
    size = now;
    if (grown * fullServings * survivalFirst < 0.01) continue;
    lots.push(lot(maker, weekOfDay(day), endWeek, fullServings * grown * survivalFirst, 'standing'));
  }
  const survivalLast = maker.survivalAt(lastDay);
  const standingLoss = 1 - (Math.max(1e-6, survivalLast) / Math.max(1e-6, survivalFirst)) ** (1 / weeks);
  const loss = Math.max(keeping?.lossPerWeekShare ?? 0, Math.min(0.9, Math.max(0, standingLoss)));
  const storeFromWeek = keeping === null ? null : lastWeek + 1;
  return lots.map((l) => ({ ...l, lossPerWeekShare: loss, store: keeping?.store ?? null, storeFromWeek }));
}

/** Picks: each week in proportion to growth, until the whole yield is taken. */
function pickLots(maker: LotMaker): Lot[] {
  const { growing, harvest, firstDay, lastDay, fullServings } = maker;
  const { bed, growth } = growing.raised;
  const fullSum = Math.max(1, growing.sumOf(harvest.fullDays));
  const lots: Lot[] = [];
  let taken = 0;
  const lastWeek = weekOfDay(lastDay);
  for (let week = weekOfDay(firstDay); week <= lastWeek && taken < 1; week++) {
    const from = Math.max(firstDay, week * 7 - 3);
    const to = Math.min(lastDay, week * 7 + 4);
    const share = Math.min(1 - taken, sumBetween(bed, growth, from, to) / fullSum);
    taken += share;
    const servings = fullServings * share * maker.survivalAt(to);
    if (servings > 0.005)
      lots.push(lot(maker, week, week + Math.max(1, harvest.eatWithinWeeks) - 1, servings, 'fresh'));
  }
  return lots;
}

/**
 * Cuts and tips: a cut whenever it has grown back, each smaller than the one before. A household cuts what it eats: the
 * rest stays on the plants until it has grown back, some weeks at most.
 */
function cutLots(maker: LotMaker): Lot[] {
  const { growing, harvest, firstDay, lastDay, fullServings } = maker;
  const { bed, growth } = growing.raised;
  const regrowth = growing.sumOf(harvest.cutDays);
  const lots: Lot[] = [];
  let day = firstDay;
  let size = 1;
  for (let cut = 0; cut < harvest.cutsCount && day <= lastDay; cut++) {
    const servings = fullServings * size * maker.survivalAt(day);
    const week = weekOfDay(day);
    size *= harvest.cutDecayShare;
    day = dayOfSum(bed, growth, day, regrowth);
    const uncutTo = Math.min(weekOfDay(Math.min(day, lastDay + 7)) - 1, week + growing.kind.uncutWeeks);
    const toWeek = Math.max(week + Math.max(1, harvest.eatWithinWeeks) - 1, uncutTo);
    if (servings > 0.005) lots.push(lot(maker, week, toWeek, servings, 'fresh'));
  }
  return lots;
}

function thinningLots(maker: LotMaker): Lot[] {
  const { harvest, firstDay, lastDay } = maker;
  const servings = maker.fullServings * harvest.thinShare * maker.survivalAt(firstDay);
  return [
    lot(
      maker,
      weekOfDay(firstDay),
      weekOfDay(lastDay) + Math.max(0, harvest.eatWithinWeeks - 1),
      servings,
      'standing',
    ),
  ];
}

export function lotsOf(maker: LotMaker): Lot[] {
  switch (maker.harvest.habit) {
    case 'once':
      return onceLots(maker);
    case 'stands':
      return standingLots(maker);
    case 'picks':
      return pickLots(maker);
    case 'cuts':
    case 'tips':
      return cutLots(maker);
    case 'thinnings':
      return thinningLots(maker);
  }
}
