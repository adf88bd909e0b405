import type { CoverWish } from '../records/garden.ts';

/**
 * What an adult eats in a week when the file does not say, in adult servings (80 g edible; salad leaves 40 g,
 * potatoes 175 g, garlic and herbs 3 g), twelve months of the northern half, January first. Judged: the plate is kept
 * near fifteen servings of the 80 g and 40 g roles in every month, roles turn with the season. Check: reference figures of
 * 400 g fruit and vegetables a day (WHO; UK 5 A DAY) leave room for fruit.
 */
export interface DefaultAppetite {
  readonly role: string;
  readonly servingsPerWeekByMonth: readonly number[];
  readonly cover: CoverWish;
  readonly boughtShare: number;
  readonly basis: 'judged';
}

const row = (
  role: string,
  servingsPerWeekByMonth: readonly number[],
  cover: CoverWish = 'all',
  boughtShare = 0,
): DefaultAppetite => ({ role, servingsPerWeekByMonth, cover, boughtShare, basis: 'judged' });

export const defaultAppetite: readonly DefaultAppetite[] = [
  row('cooked-greens', [3, 3, 3, 3, 2.5, 2, 1.5, 1.5, 2, 2.5, 3, 3]),
  row('salad-leaves', [1.5, 1.5, 2, 2.5, 3.5, 4, 4, 3.5, 3, 2, 1.5, 1.5]),
  row('onions', [2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5]),
  row('garlic', [5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5]),
  row('leeks', [1.5, 1.5, 1.5, 1.25, 0.75, 0.5, 0.5, 0.5, 0.75, 1, 1.5, 1.5]),
  row('broccoli', [1, 1, 1.5, 1.75, 1.5, 1.25, 0.75, 0.75, 0.75, 1, 1, 1]),
  row('cabbages', [1.5, 1.5, 1.25, 1.25, 1.25, 1, 0.75, 0.5, 0.75, 1, 1.5, 1.5]),
  row('sweet-roots', [3.5, 3.5, 3, 2.5, 1.5, 1.5, 1.75, 1.75, 2, 3, 3.5, 3.5]),
  row('potatoes', [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4], 'some', 0.5),
  row('beans-peas', [0.25, 0.25, 0.25, 0.25, 0.5, 1.5, 2, 2, 1.5, 0.75, 0.25, 0.25]),
  row('summer-fruits', [0, 0, 0, 0, 0.5, 1, 2.5, 3, 3, 1.5, 0.25, 0]),
  row('herbs', [3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3]),
  row('stalks', [0, 0, 0.25, 1, 1, 0.75, 0.25, 0, 0, 0, 0, 0]),
];

/** Words for how much of an adult's helping somebody eats. Judged; a child's portion is its palm (UK 5 A DAY). */
export const eaterShareByWord = { adult: 1, child: 0.6, toddler: 0.35 } as const;

/** What is left of a helping of a role that somebody eats little of. Judged, 0.2–0.5. */
export const littleShare = 0.3;

/** Words for the share that is bought on purpose. Judged. */
export const boughtShareByWord = { all: 1, most: 0.8, half: 0.5, some: 0.25 } as const;
