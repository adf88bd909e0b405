import { isoFromDay } from '@twelvemonth/basis';
import type {
  GardenCover,
  GardenPlace,
  OwnKindEntry,
  SeedEntry,
  StandingSowing,
  StockEntry,
} from '../records/garden.ts';
import type { FilePath } from './issue-codes.ts';
import { idMaker, nextTime, pastTime, plantsOf, type Reading, weightOf } from './reading.ts';
import type { WrittenGarden } from './schema.ts';

export const readCovers = (written: WrittenGarden): readonly GardenCover[] =>
  written.covers.map((cover) => ({ ...cover, name: cover.name ?? cover.id }));

export function readPlaces(written: WrittenGarden, reading: Reading): readonly GardenPlace[] {
  return written.places.map(({ trays, ...place }, index) => {
    const sized = place.lengthM !== null && place.widthM !== null;
    const needs =
      place.use === 'tub'
        ? place.litres === null && 'litres'
        : place.use === 'bench'
          ? trays === null && !sized && 'trays'
          : !sized && 'lengthM, widthM';
    if (needs !== false) reading.report('place-without-size', ['places', index], { place: place.id, needs });
    return { ...place, name: place.name ?? place.id, traysCount: trays };
  });
}

export function readStanding(written: WrittenGarden, reading: Reading): readonly StandingSowing[] {
  const idFor = idMaker(written.standing.map((each) => each.id));
  return written.standing.map((each, index) => {
    const at = (key: string): FilePath => ['standing', index, key];
    const planted = pastTime(reading, each.planted, at('planted'));
    const sown = pastTime(reading, each.sown, at('sown'), planted?.toDay);
    if (planted !== null && sown !== null && planted.toDay < sown.fromDay) {
      const detail = { sown: isoFromDay(sown.fromDay), planted: isoFromDay(planted.toDay) };
      reading.report('planted-before-sown', at('planted'), detail);
    }
    const clear =
      each.mayClearFrom === null ? null : nextTime(reading, each.mayClearFrom, at('mayClearFrom'));
    return {
      id: each.id ?? idFor(`${each.kind}-${each.place}`),
      kind: each.kind,
      place: each.place,
      placeNumber: each.number,
      count: plantsOf(reading, each.count, at('count')),
      sown,
      planted,
      groundM2: each.groundM2,
      mayClearFrom: clear?.fromDay ?? null,
      note: each.note,
      plantInto: each.plantInto,
    };
  });
}

export function readStock(written: WrittenGarden, reading: Reading): readonly StockEntry[] {
  const idFor = idMaker(written.stock.map((each) => each.id));
  return written.stock.map((each, index) => ({
    id: each.id ?? idFor(`${each.kind}-${each.store}`),
    kind: each.kind,
    amountG: weightOf(reading, each.amount, each.kind, ['stock', index, 'amount']),
    store: each.store,
    keepBackG:
      each.keepBack === null
        ? 0
        : weightOf(reading, each.keepBack, each.kind, ['stock', index, 'keepBack']).middle,
    since: pastTime(reading, each.since, ['stock', index, 'since']),
    note: each.note,
  }));
}

export const readSeeds = (written: WrittenGarden, reading: Reading): readonly SeedEntry[] =>
  written.seeds.map(({ kind, seeds, packed }, index) => ({
    kind,
    seedsCount: Math.round(plantsOf(reading, seeds, ['seeds', index, 'seeds']).middle),
    packedYear: packed,
  }));

export function readOwnKinds(written: WrittenGarden, reading: Reading): readonly OwnKindEntry[] {
  return written.ownKinds.map(({ daysToHarvest, weeksToHarvest, ...own }, index) => {
    if (daysToHarvest !== null && weeksToHarvest !== null)
      reading.report('packet-time-twice', ['ownKinds', index], {
        days: daysToHarvest,
        weeks: weeksToHarvest,
      });
    const packetDays = daysToHarvest ?? (weeksToHarvest === null ? null : weeksToHarvest * 7);
    return { ...own, packetDays };
  });
}
