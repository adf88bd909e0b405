import { isoFromDay, mondayOf, weekOfDay } from '@twelvemonth/basis';
import type { Wish } from '../records/garden.ts';
import { type FilePath, shown } from './issue-codes.ts';
import { idMaker, nextTime, type Reading } from './reading.ts';
import type { WrittenGarden } from './schema.ts';

type WrittenWish = WrittenGarden['wishes'][number];

function missing(reading: Reading, path: FilePath, key: string): [] {
  reading.report('value-missing', [...path, key], { key });
  return [];
}

function firmWish(wish: WrittenWish, kind: string, id: string, path: FilePath, reading: Reading): Wish[] {
  for (const key of ['place', 'plants'] as const) if (wish[key] === undefined) missing(reading, path, key);
  const sow = nextTime(reading, wish.sow ?? '', [...path, 'sow']);
  if (sow === null || wish.place === undefined || wish.plants === undefined) return [];
  if (sow.fromDay !== sow.toDay) {
    reading.report('date-not-exact', [...path, 'sow'], { found: shown(wish.sow) });
    return [];
  }
  const { place, plants, route = null } = wish;
  return [{ wish: 'firm', id, kind, place, sowDay: sow.fromDay, plantsCount: plants, route }];
}

interface Stretch {
  readonly fromDay: number;
  readonly toDay: number | null;
  /** `from` named one day. */
  readonly isOneDay: boolean;
}

/** From and to as the file has them; `to` left out: null. Null when they cannot be read or are reversed. */
function stretchOf(wish: WrittenWish, path: FilePath, reading: Reading): Stretch | null {
  const start =
    wish.from === undefined
      ? { fromDay: reading.reference, toDay: reading.reference }
      : nextTime(reading, wish.from, [...path, 'from']);
  if (start === null) return null;
  const isOneDay = start.fromDay === start.toDay;
  if (wish.to === undefined) return { fromDay: start.fromDay, toDay: null, isOneDay };
  const end = nextTime(reading, wish.to, [...path, 'to'], start.fromDay);
  if (end === null) return null;
  if (end.toDay < start.fromDay) {
    reading.report('dates-reversed', path, {
      from: isoFromDay(start.fromDay),
      to: isoFromDay(end.toDay),
    });
    return null;
  }
  return { fromDay: start.fromDay, toDay: end.toDay, isOneDay };
}

function restWish(wish: WrittenWish, path: FilePath, reading: Reading): Wish[] {
  if (wish.place === undefined) return missing(reading, path, 'place');
  const stretch = stretchOf(wish, path, reading);
  if (stretch === null) return [];
  const { fromDay, toDay } = stretch;
  return [{ wish: 'rest', place: wish.place, placeNumber: wish.number ?? null, fromDay, toDay }];
}

/** One day alone stands for its week, Monday to Sunday; "August" for all of August. */
function noPlantingWish(wish: WrittenWish, path: FilePath, reading: Reading): Wish[] {
  if (wish.from === undefined) return missing(reading, path, 'from');
  const stretch = stretchOf(wish, path, reading);
  if (stretch === null) return [];
  if (stretch.toDay !== null)
    return [{ wish: 'no-planting', fromDay: stretch.fromDay, toDay: stretch.toDay }];
  if (stretch.isOneDay) {
    const monday = mondayOf(weekOfDay(stretch.fromDay));
    return [{ wish: 'no-planting', fromDay: monday, toDay: monday + 6 }];
  }
  const said = nextTime(reading, wish.from, [...path, 'from']);
  return said === null ? [] : [{ wish: 'no-planting', fromDay: said.fromDay, toDay: said.toDay }];
}

const kindWishes = ['never', 'atLeast', 'atMost', 'sow'] as const;
const groundWishes = ['rest', 'noPlanting'] as const;

export function readWishes(written: WrittenGarden, reading: Reading): readonly Wish[] {
  const idFor = idMaker(written.wishes.map((each) => each.id));
  return written.wishes.flatMap((wish, index): Wish[] => {
    const path = ['wishes', index];
    const said = [...kindWishes, ...groundWishes].filter((key) => wish[key] !== undefined);
    const { kind, atLeast, atMost } = wish;
    const limits = said.length > 0 && said.every((key) => key === 'atLeast' || key === 'atMost');
    const ofGround = wish.rest === true || wish.noPlanting === true;
    if ((!limits && said.length !== 1) || (ofGround && kind !== undefined)) {
      const found = [...said, ...(ofGround && kind !== undefined ? ['kind'] : [])].join(', ');
      reading.report('wish-unclear', path, { kind: kind ?? '', found });
      return [];
    }
    if (wish.rest === true) return restWish(wish, path, reading);
    if (wish.noPlanting === true) return noPlantingWish(wish, path, reading);
    if (kind === undefined) return missing(reading, path, 'kind');
    if (wish.never) return [{ wish: 'forbid', kind }];
    if (wish.sow !== undefined) return firmWish(wish, kind, wish.id ?? idFor(`firm-${kind}`), path, reading);
    const wishes: Wish[] = [];
    if (atLeast !== undefined) wishes.push({ wish: 'at-least', kind, plantsCount: atLeast });
    if (atMost !== undefined) wishes.push({ wish: 'at-most', kind, plantsCount: atMost });
    if (atLeast !== undefined && atMost !== undefined && atLeast > atMost) {
      reading.report('wishes-disagree', path, { kind, least: atLeast, most: atMost });
    }
    return wishes;
  });
}
