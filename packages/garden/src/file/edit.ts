import { cannot, type Day, done, isoFromDay, type Outcome } from '@twelvemonth/basis';
import { applyEdits, type JSONPath, modify } from 'jsonc-parser';
import type { StandingSowing, Wish } from '../records/garden.ts';
import { appendToList, removeFromList } from './edit-list.ts';
import { readText } from './read-text.ts';
import type { WrittenStanding, WrittenWish } from './schema.ts';
import { textOfAmount, textOfVagueDay } from './write-vague.ts';

/** Edits in the text people wrote: their comments, order and spacing stay; only what is said changes. */
export type EditedText = Outcome<string, 'not-a-garden-file' | 'not-in-file'>;

const formattingOptions = { insertSpaces: true, tabSize: 2 };

function editable(text: string): string | null {
  const read = readText(text);
  return 'refused' in read || read.root.type !== 'object' ? null : text.replace(/^\uFEFF/, '');
}

/** Sets the value at a path; `undefined` takes the key out. Comments inside a replaced value go with it. */
export function setValue(text: string, path: JSONPath, value: unknown): EditedText {
  const whole = editable(text);
  if (whole === null) return cannot('not-a-garden-file');
  if (path.length === 0) return cannot('not-in-file');
  try {
    const edits = modify(whole, [...path], value, { formattingOptions });
    return done(applyEdits(whole, edits));
  } catch {
    // jsonc-parser throws where a path goes through a plain value or past a list's end.
    return cannot('not-in-file');
  }
}

function append(text: string, list: 'standing' | 'wishes', value: unknown): EditedText {
  const whole = editable(text);
  if (whole === null) return cannot('not-a-garden-file');
  const added = appendToList(whole, [list], value);
  if (added !== null) return done(added);
  const withList = setValue(whole, [list], []);
  if (withList.kind === 'cannot') return withList;
  const then = appendToList(withList.value, [list], value);
  return then === null ? cannot('not-in-file') : done(then);
}

/** A standing sowing as the file says it; what is usual is left out. */
export function writtenStandingOf(sowing: StandingSowing): WrittenStanding {
  return {
    id: sowing.id,
    kind: sowing.kind,
    place: sowing.place,
    ...(sowing.placeNumber === null ? {} : { number: sowing.placeNumber }),
    count: textOfAmount(sowing.count),
    ...(sowing.sown === null ? {} : { sown: textOfVagueDay(sowing.sown) }),
    ...(sowing.planted === null ? {} : { planted: textOfVagueDay(sowing.planted) }),
    ...(sowing.groundM2 === null ? {} : { groundM2: sowing.groundM2 }),
    ...(sowing.mayClearFrom === null ? {} : { mayClearFrom: isoFromDay(sowing.mayClearFrom) }),
    ...(sowing.plantInto === null ? {} : { plantInto: sowing.plantInto }),
    ...(sowing.note === '' ? {} : { note: sowing.note }),
  };
}

export function writtenWishOf(wish: Wish): WrittenWish {
  switch (wish.wish) {
    case 'forbid':
      return { kind: wish.kind, never: true };
    case 'at-least':
      return { kind: wish.kind, atLeast: wish.plantsCount };
    case 'at-most':
      return { kind: wish.kind, atMost: wish.plantsCount };
    case 'firm': {
      const route = wish.route === null ? {} : { route: wish.route };
      return {
        id: wish.id,
        kind: wish.kind,
        sow: isoFromDay(wish.sowDay),
        place: wish.place,
        plants: wish.plantsCount,
        ...route,
      };
    }
    case 'rest':
      return {
        rest: true,
        place: wish.place,
        ...(wish.placeNumber === null ? {} : { number: wish.placeNumber }),
        from: isoFromDay(wish.fromDay),
        ...(wish.toDay === null ? {} : { to: isoFromDay(wish.toDay) }),
      };
    case 'no-planting':
      return { noPlanting: true, from: isoFromDay(wish.fromDay), to: isoFromDay(wish.toDay) };
  }
}

export const addStanding = (text: string, sowing: StandingSowing): EditedText =>
  append(text, 'standing', writtenStandingOf(sowing));

export const addWish = (text: string, wish: Wish): EditedText => append(text, 'wishes', writtenWishOf(wish));

/** Takes out the first wish of the file that says the same (a firm one: with the same id). */
export function removeWish(text: string, wish: Wish): EditedText {
  const read = readText(text);
  const whole = editable(text);
  if (whole === null || 'refused' in read) return cannot('not-a-garden-file');
  const index = read.plainList('wishes').findIndex((each) => saysTheSame(each, wish));
  const removed = index < 0 ? null : removeFromList(whole, ['wishes'], index);
  return removed === null ? cannot('not-in-file') : done(removed);
}

function saysTheSame(written: unknown, wish: Wish): boolean {
  if (typeof written !== 'object' || written === null) return false;
  const said = written as Readonly<Record<string, unknown>>;
  const wanted: Readonly<Record<string, unknown>> =
    wish.wish === 'firm' ? { id: wish.id } : { ...writtenWishOf(wish) };
  return Object.entries(wanted).every(([key, value]) => said[key] === value);
}

export const setPlanFrom = (text: string, day: Day | null): EditedText =>
  setValue(text, ['planFrom'], day === null ? undefined : isoFromDay(day));
