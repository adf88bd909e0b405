import type { VagueAmount } from '../records/garden.ts';
import { measureFor } from '../tables/household-measures.ts';

/**
 * Amounts as people say them: 40, "about 40 leeks", "30-50", "a dozen", "two thirds of a net", "3 kg". "About" is a
 * fifth either way.
 */
export const aboutShare = 0.2;

type AmountProblem = 'count-negative' | 'amount-not-understood' | 'amount-needs-a-unit';
export type ReadAmount = VagueAmount | AmountProblem;

const exactly = (value: number): VagueAmount => ({ low: value, middle: value, high: value });
const times = (amount: VagueAmount, by: VagueAmount): VagueAmount => ({
  low: amount.low * by.low,
  middle: amount.middle * by.middle,
  high: amount.high * by.high,
});

const numberWords: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  eighty: 80,
  a: 1,
  an: 1,
};
const looseWords: readonly (readonly [RegExp, VagueAmount])[] = [
  [/^(?:a )?couple(?: of)?\b/, { low: 2, middle: 2, high: 3 }],
  [/^(?:a )?few\b/, { low: 3, middle: 4, high: 6 }],
  [/^several\b/, { low: 4, middle: 6, high: 9 }],
  [/^(?:a )?handful(?: of)?\b/, { low: 3, middle: 5, high: 8 }],
];
const fractionSigns: Readonly<Record<string, string>> = {
  '½': ' 1/2',
  '⅓': ' 1/3',
  '⅔': ' 2/3',
  '¼': ' 1/4',
  '¾': ' 3/4',
};
const partNames: Readonly<Record<string, number>> = { half: 2, halve: 2, third: 3, quarter: 4 };
const aboutPattern =
  /^(?:about|around|roughly|approximately|approx\.?|circa|ca?\.|some|say|maybe|perhaps|nearly|almost|~)\s*/;
const digits = String.raw`\d+(?:[.,]\d+)?`;
const numeralPattern = new RegExp(String.raw`^(?:(\d+) )?(\d+)\/(\d+)|^(${digits})`);

interface Start<T> {
  readonly value: T;
  readonly rest: string;
}

function numeral(text: string): Start<number> | null {
  const match = numeralPattern.exec(text);
  if (match === null) return null;
  const rest = text.slice(match[0].length);
  if (match[4] !== undefined) {
    const plain = /^\d{1,3},\d{3}$/.test(match[4]) ? match[4].replace(',', '') : match[4].replace(',', '.');
    return { value: Number(plain), rest };
  }
  const below = Number(match[3]);
  return below === 0 ? null : { value: Number(match[1] ?? 0) + Number(match[2]) / below, rest };
}

function partWords(text: string): Start<number> | null {
  const match = /^(?:(a|one|two|three) )?(half|halve|third|quarter)s?\b(?: of)?(?: (?:an?|the)\b)?/.exec(
    text,
  );
  if (match === null) return null;
  const [whole, over = 'one', name = ''] = match;
  return { value: (numberWords[over] ?? 1) / (partNames[name] ?? 1), rest: text.slice(whole.length) };
}

function numberStart(text: string): Start<number> | null {
  const plain = numeral(text) ?? partWords(text);
  if (plain !== null) return plain;
  const word = /^[a-z]+/.exec(text)?.[0] ?? '';
  if (!Object.hasOwn(numberWords, word)) return null;
  return { value: numberWords[word] ?? 0, rest: text.slice(word.length) };
}

function multiplied(start: Start<VagueAmount>): Start<VagueAmount> {
  const match = /^ ?(dozen|hundred)s?\b(?: of)?/.exec(start.rest);
  if (match === null) return start;
  return {
    value: times(start.value, exactly(match[1] === 'dozen' ? 12 : 100)),
    rest: start.rest.slice(match[0].length),
  };
}

function quantityStart(text: string): Start<VagueAmount> | null {
  for (const [pattern, value] of looseWords) {
    const match = pattern.exec(text);
    if (match !== null) return { value, rest: text.slice(match[0].length) };
  }
  if (/^(?:dozen|hundred)/.test(text)) return multiplied({ value: exactly(1), rest: ` ${text}` });
  const first = numberStart(text);
  if (first === null) return null;
  const link = /^ ?(?:-|–|to|or) ?(?=\d|[a-z])/.exec(first.rest);
  const second = link === null ? null : numberStart(first.rest.slice(link[0].length));
  if (second === null) return multiplied({ value: exactly(first.value), rest: first.rest });
  const [low, high] = [first.value, second.value];
  if (high < low) return null;
  const likely = /^,? (?:likely|probably|best) (\d+(?:\.\d+)?)/.exec(second.rest);
  const middle = likely === null ? (low + high) / 2 : Number(likely[1]);
  if (middle < low || middle > high) return null;
  const rest = likely === null ? second.rest : second.rest.slice(likely[0].length);
  return multiplied({ value: { low, middle, high }, rest });
}

function readQuantity(written: string): Start<VagueAmount> | AmountProblem {
  let text = written.toLowerCase().trim().slice(0, 120);
  for (const [sign, plain] of Object.entries(fractionSigns)) text = text.replaceAll(sign, plain);
  text = text.replace(/\s+/g, ' ').trim();
  if (/^(?:about |around |~)?[-−]\s*\d/.test(text)) return 'count-negative';
  const about = aboutPattern.exec(text);
  const start = quantityStart(about === null ? text : text.slice(about[0].length));
  if (start === null) return 'amount-not-understood';
  const { value, rest } = start;
  if (!Number.isFinite(value.high) || value.high > 1e7) return 'amount-not-understood';
  const spread = { low: 1 - aboutShare, middle: 1, high: 1 + aboutShare };
  return { value: about === null ? value : times(value, spread), rest: rest.trim() };
}

const notAPlantCount = /^(?:rows?|m|metres?|meters?|cm|kg|kilos?|g|grams?|beds?|trays?|packets?)\b|\d/;

/** How many plants: words after the number ("leeks, thumb-thick") are for people. */
export function readCount(written: number | string): ReadAmount {
  if (typeof written === 'number') {
    if (written < 0) return 'count-negative';
    return Number.isFinite(written) ? exactly(written) : 'amount-not-understood';
  }
  const quantity = readQuantity(written);
  if (typeof quantity === 'string') return quantity;
  const { value, rest } = quantity;
  return rest === '' || (/^[a-z,(]/.test(rest) && !notAPlantCount.test(rest))
    ? value
    : 'amount-not-understood';
}

/** Grams in store of a kind. A bare number is pieces, for kinds that are counted in pieces. */
export function readWeightG(written: number | string, kind: string): ReadAmount {
  if (typeof written === 'number' && written < 0) return 'count-negative';
  const quantity = readQuantity(String(written));
  if (typeof quantity === 'string') return quantity;
  const word = /^(?:of )?(?:an? )?([a-z]+)/.exec(quantity.rest)?.[1];
  if (word === undefined && quantity.rest !== '') return 'amount-not-understood';
  const measure = measureFor(word ?? 'piece', kind);
  if (measure === null) return 'amount-needs-a-unit';
  return times(quantity.value, { low: measure.lowG, middle: measure.middleG, high: measure.highG });
}
