/**
 * Real beds: each sowing gets strips of half a metre for its weeks. First in the order in which they begin: strips of a
 * class are alike and no week asks for more than there are, so room is always found, if need be in pieces. Then every
 * sowing is taken up once more and put where it is cheapest between what stands before and after it, and one whose rest
 * is broken changes places with another where both gain, until nothing moves. Each placing is exact (`chooseStrips`).
 */
import type { Bed, GroundClass } from '../problem.ts';
import { chooseStrips, type OfferedStrip, otherBedPrice, otherPiecePrice } from './choose-strips.ts';
import { isClosed } from './closed-beds.ts';
import {
  type Booking,
  type BrokenRest,
  backwardPricePerM2,
  type Placement,
  placementsOf,
  restsOf,
  type Strip,
} from './held-strips.ts';
import { type Occupant, stripPricePerM2 } from './strip-prices.ts';

export type { Booking, BrokenRest, Placement } from './held-strips.ts';

export interface StripPlan {
  readonly placements: Placement[];
  readonly rests: BrokenRest[];
  /** Strips that were not to be had, by booking. */
  readonly lacking: ReadonlyMap<string, number>;
  readonly unplaced: string[];
}

const mostRounds = 5;
/** What stands keeps its bed, and its place before all: weighted servings a strip. */
const otherPlacePrice = 100;
const otherNumberPrice = 10;

/** Tubs and trays are filled anew: nothing rests in them. */
export const restsIn = (ground: GroundClass): boolean => ground.bench === null && ground.growsIn !== 'tub';

function stripsOfGround(ground: GroundClass): Strip[] {
  return ground.beds.flatMap((bed) => {
    const past = (ground.past ?? [])
      .filter((p) => p.place === bed.place && (p.placeNumber ?? bed.number) === bed.number)
      .map(
        ({ family, year }): Occupant => ({
          id: '',
          family,
          fromWeek: Number.NEGATIVE_INFINITY,
          toWeek: Number.NEGATIVE_INFINITY,
          year,
          compostLPerM2: 0,
          spoiltByFresh: false,
        }),
      );
    return Array.from({ length: bed.stripCount }, (_, index) => ({ bed, index, past, held: new Set() }));
  });
}

const occupantOf = (booking: Booking): Occupant => ({
  year: 0,
  compostLPerM2: 0,
  spoiltByFresh: false,
  ...booking,
});

function awayPrice(bed: Bed, booking: Booking): number {
  const away = booking.place !== null && bed.place !== booking.place ? otherPlacePrice : 0;
  return away + (booking.placeNumber !== null && bed.number !== booking.placeNumber ? otherNumberPrice : 0);
}

function place(
  strips: readonly Strip[],
  booking: Booking,
  occupant: Occupant,
  ground: GroundClass,
  recorded: ReadonlySet<string>,
): Strip[] {
  const offered = strips.map((strip): OfferedStrip => {
    let free = !isClosed(ground, strip.bed, occupant);
    for (const other of strip.held)
      if (other.fromWeek < occupant.toWeek && occupant.fromWeek < other.toWeek) free = false;
    const others = free ? [...strip.past, ...strip.held] : [];
    const price = free && restsIn(ground) ? stripPricePerM2(occupant, others, recorded) * ground.stripM2 : 0;
    return { bed: strip.bed, index: strip.index, free, price: price + awayPrice(strip.bed, booking) };
  });
  return chooseStrips(offered, booking.stripsCount).map((s) => strips[s]!);
}

interface Placed {
  readonly booking: Booking;
  readonly occupant: Occupant;
  strips: readonly Strip[];
}

function put(placed: Placed, where: readonly Strip[]): void {
  for (const strip of placed.strips) strip.held.delete(placed.occupant);
  placed.strips = where;
  for (const strip of where) strip.held.add(placed.occupant);
}

function priceOfAll(ground: GroundClass, all: readonly Placed[], recorded: ReadonlySet<string>): number {
  let price = 0;
  for (const { booking, occupant, strips } of all) {
    const beds = new Set<Bed>();
    strips.forEach((strip, i) => {
      const before = strips[i - 1];
      const joins = before !== undefined && before.bed === strip.bed && before.index + 1 === strip.index;
      if (!joins) price += beds.has(strip.bed) ? otherPiecePrice : otherBedPrice;
      beds.add(strip.bed);
      price += awayPrice(strip.bed, booking);
      if (restsIn(ground)) price += backwardPricePerM2(occupant, strip, recorded) * ground.stripM2;
    });
  }
  return price;
}

/** A sowing with a broken rest changes its strips with another that stands at the same time, if both together gain. */
function swapBroken(
  ground: GroundClass,
  strips: readonly Strip[],
  all: readonly Placed[],
  recorded: ReadonlySet<string>,
): boolean {
  let swapped = false;
  let best = priceOfAll(ground, all, recorded);
  for (const one of all) {
    for (const other of all) {
      if (restsOf(one.occupant, one.strips, recorded).length === 0) break;
      const meets =
        other.occupant.fromWeek < one.occupant.toWeek && one.occupant.fromWeek < other.occupant.toWeek;
      if (other === one || !meets) continue;
      const was = [one.strips, other.strips] as const;
      put(one, []);
      put(other, []);
      put(one, place(strips, one.booking, one.occupant, ground, recorded));
      put(other, place(strips, other.booking, other.occupant, ground, recorded));
      const isWhole = one.strips.length === was[0].length && other.strips.length === was[1].length;
      const price = isWhole ? priceOfAll(ground, all, recorded) : Number.POSITIVE_INFINITY;
      if (price < best - 1e-9) {
        best = price;
        swapped = true;
        continue;
      }
      put(one, []);
      put(other, was[1]);
      put(one, was[0]);
    }
  }
  return swapped;
}

/** One by one to their cheapest strips; true when anything moved. */
function settle(
  ground: GroundClass,
  strips: readonly Strip[],
  all: readonly Placed[],
  recorded: ReadonlySet<string>,
): boolean {
  let moved = false;
  for (const placed of all) {
    const was = placed.strips;
    put(placed, []);
    put(placed, place(strips, placed.booking, placed.occupant, ground, recorded));
    moved ||= placed.strips.length !== was.length || placed.strips.some((strip, i) => strip !== was[i]);
  }
  return moved;
}

export function placeInStrips(ground: GroundClass, bookings: readonly Booking[]): StripPlan {
  const strips = stripsOfGround(ground);
  const recorded = new Set(ground.recordedFamilies ?? []);
  const all = bookings
    .filter((b) => b.stripsCount > 0 && b.toWeek > b.fromWeek)
    .sort(
      (a, b) =>
        a.fromWeek - b.fromWeek ||
        Number(b.place !== null) - Number(a.place !== null) ||
        b.stripsCount - a.stripsCount ||
        (a.id < b.id ? -1 : 1),
    )
    .map((booking): Placed => ({ booking, occupant: occupantOf(booking), strips: [] }));
  for (const placed of all) put(placed, place(strips, placed.booking, placed.occupant, ground, recorded));
  for (let round = 0; round < mostRounds; round++) {
    const moved = settle(ground, strips, all, recorded);
    const swapped = restsIn(ground) && swapBroken(ground, strips, all, recorded);
    if (!moved && !swapped) break;
  }
  const short = all.filter(({ booking, strips: own }) => own.length < booking.stripsCount);
  return {
    placements: all.flatMap(({ occupant, strips: own }) => placementsOf(occupant, own)),
    rests: restsIn(ground)
      ? all.flatMap(({ occupant, strips: own }) => restsOf(occupant, own, recorded))
      : [],
    lacking: new Map(short.map(({ booking, strips: own }) => [booking.id, booking.stripsCount - own.length])),
    unplaced: short.map(({ booking }) => booking.id),
  };
}
