/**
 * What people store vegetables in, and what one piece weighs, in grams as stored. All values are judged: no source
 * weighs a household's nets. `kinds` are beginnings of kind ids; an empty text fits every kind; the first row that
 * fits counts.
 */
export interface HouseholdMeasure {
  readonly measure: string;
  readonly kinds: string;
  readonly lowG: number;
  readonly middleG: number;
  readonly highG: number;
  readonly basis: 'judged';
  readonly note: string;
}

const row = (
  measure: string,
  kinds: string,
  lowG: number,
  middleG: number,
  highG: number,
  note: string,
): HouseholdMeasure => ({ measure, kinds, lowG, middleG, highG, basis: 'judged', note });

export const householdMeasures: readonly HouseholdMeasure[] = [
  row('net', 'onion', 4000, 5000, 6000, 'household net, about 40 kitchen bulbs'),
  row('net', 'shallot', 2000, 3000, 5000, 'household net'),
  row('net', 'garlic', 800, 1000, 1500, 'small net, about 20 bulbs'),
  row('net', '', 4000, 5000, 8000, 'household net'),
  row('sack', 'potato', 20000, 25000, 26000, 'paper sack as sold, filled'),
  row('sack', '', 15000, 20000, 25000, 'paper sack, filled'),
  row('string', 'garlic', 500, 750, 1000, 'about 15 bulbs'),
  row('string', 'shallot', 700, 1000, 1500, 'as long as an arm'),
  row('string', '', 1200, 1500, 2500, 'as long as an arm, 10 to 14 onions'),
  row('box', 'squash', 8000, 12000, 16000, 'fruit box, 8 to 10 fruits'),
  row('box', '', 6000, 10000, 14000, 'fruit box, one layer deep in sand or two loose'),
  row('bucket', '', 5000, 7000, 9000, 'ten litres, heaped roots or tubers'),
  row('bag', 'potato', 2000, 2500, 5000, 'kitchen bag'),
  row('bag', '', 300, 500, 1000, 'freezer or kitchen bag'),
  row('tray', '', 3000, 5000, 7000, 'one layer'),
  row('jar', '', 300, 400, 500, 'half-litre jar, drained weight'),
  row('tub', '', 400, 500, 1000, 'freezer tub'),
  row('bunch', 'garlic', 400, 600, 800, 'about 12 bulbs'),
  row('bunch', '', 200, 400, 600, 'as pulled, tops off'),
  row('piece', 'garlic', 35, 50, 70, 'dried bulb'),
  row('piece', 'shallot', 15, 25, 40, 'dried bulb'),
  row('piece', 'onion', 90, 130, 200, 'kitchen bulb'),
  row('piece', 'potato-first', 50, 80, 120, 'new potato'),
  row('piece', 'potato', 90, 130, 200, 'tuber'),
  row('piece', 'squash', 900, 1400, 2200, 'one fruit'),
  row('piece', 'cabbage', 700, 1100, 1800, 'trimmed head'),
  row('piece', 'cauliflower', 500, 800, 1200, 'trimmed head'),
  row('piece', 'calabrese', 250, 400, 600, 'head'),
  row('piece', 'celeriac', 350, 550, 900, 'trimmed'),
  row('piece', 'carrot', 50, 90, 150, 'topped'),
  row('piece', 'beetroot', 80, 130, 200, 'topped'),
  row('piece', 'parsnip', 100, 180, 300, 'topped'),
  row('piece', 'leek', 100, 170, 300, 'trimmed to 15 cm of green'),
  row('piece', 'courgette', 150, 220, 350, 'fruit'),
  row('piece', 'cucumber', 200, 320, 450, 'fruit'),
  row('piece', 'tomato', 50, 80, 120, 'fruit'),
  row('kg', '', 1000, 1000, 1000, 'as weighed'),
  row('g', '', 1, 1, 1, 'as weighed'),
];

/** Other words for a measure. */
export const measureWords: Readonly<Record<string, string>> = {
  kilo: 'kg',
  kilogram: 'kg',
  kgs: 'kg',
  gram: 'g',
  gramme: 'g',
  crate: 'box',
  case: 'box',
  plait: 'string',
  braid: 'string',
  rope: 'string',
  pail: 'bucket',
  bulb: 'piece',
  head: 'piece',
  root: 'piece',
  fruit: 'piece',
  tuber: 'piece',
  onion: 'piece',
  shallot: 'piece',
  potato: 'piece',
  squash: 'piece',
  cabbage: 'piece',
};

export function measureFor(word: string, kind: string): HouseholdMeasure | null {
  const singular = word.endsWith('ies')
    ? `${word.slice(0, -3)}y`
    : /(?:x|sh|ch|to)es$/.test(word)
      ? word.slice(0, -2)
      : word.length > 2 && word.endsWith('s')
        ? word.slice(0, -1)
        : word;
  const alias = Object.hasOwn(measureWords, singular) ? measureWords[singular] : undefined;
  const measure = alias ?? singular;
  return householdMeasures.find((each) => each.measure === measure && kind.startsWith(each.kinds)) ?? null;
}
