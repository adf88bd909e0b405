import type { StoreId } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';

const rows = {
  dry: coversTable['keeping-dry'],
  'cool-damp': coversTable['keeping-cool-damp'],
  'frost-free': coversTable['keeping-frost-free'],
  sand: coversTable['keeping-sand'],
  fridge: coversTable['keeping-fridge'],
  freezer: coversTable['keeping-freezer'],
  jar: coversTable['keeping-jar'],
} as const;

export function isStore(store: string): store is StoreId {
  return Object.hasOwn(rows, store);
}

/** How long things keep in a store, and what is lost of them a week, where a kind has no rule of its own. */
export function usualKeeping(store: StoreId): {
  readonly lifeWeeks: number;
  readonly lossPerWeekShare: number;
} {
  return { lifeWeeks: rows[store]['life-weeks'], lossPerWeekShare: rows[store]['loss-per-week-share'] };
}
