import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import fc from 'fast-check';
import { createScanner, parse } from 'jsonc-parser';
import { describe, expect, test } from 'vitest';
import type { StandingSowing, Wish } from '../records/garden.ts';
import { addStanding, addWish, type EditedText, removeWish, setPlanFrom, setValue } from './edit.ts';
import { token } from './jsonc-tokens.ts';
import { parseGarden } from './parse.ts';

const context = { today: dayFromIso('2026-08-25')! };
const example = (name: string): string =>
  readFileSync(new URL(`../../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
const marram = example('marram-end');
const saidIn = (text: string) => parse(text, [], { allowTrailingComma: true }) as Record<string, unknown>;

function commentsOf(text: string): string[] {
  const scanner = createScanner(text, false);
  const comments: string[] = [];
  for (let kind: number = scanner.scan(); kind !== token.end; kind = scanner.scan()) {
    if (kind === token.lineComment || kind === token.blockComment)
      comments.push(scanner.getTokenValue().trim());
  }
  return comments;
}

function textFrom(edited: EditedText): string {
  if (edited.kind === 'cannot') throw new Error(edited.reason);
  return edited.value;
}

const day = (iso: string) => dayFromIso(iso)!;
const leeks: StandingSowing = {
  id: 'leek-late-k3f9q2',
  kind: 'leek',
  place: 'plot-upper',
  placeNumber: 7,
  count: { low: 30, middle: 38, high: 50 },
  sown: { fromDay: day('2026-05-11'), toDay: day('2026-05-20') },
  planted: { fromDay: day('2026-07-04'), toDay: day('2026-07-04') },
  groundM2: 2,
  mayClearFrom: day('2027-03-01'),
  note: 'the late ones',
  plantInto: null,
};
const wishes: readonly Wish[] = [
  { wish: 'forbid', kind: 'kale' },
  { wish: 'at-least', kind: 'leek', plantsCount: 60 },
  { wish: 'at-most', kind: 'chard', plantsCount: 9 },
  { wish: 'no-planting', fromDay: dayFromIso('2027-08-09')!, toDay: dayFromIso('2027-08-15')! },
  {
    wish: 'firm',
    id: 'garlic-x',
    kind: 'garlic-bulb',
    place: 'plot-ridge',
    sowDay: day('2026-10-20'),
    plantsCount: 100,
    route: null,
  },
];

test('a standing sowing reads back as it was given, and nothing else moves', () => {
  const text = textFrom(addStanding(marram, leeks));
  const before = parseGarden(marram, context).garden!;
  const { garden, issues } = parseGarden(text, context);
  expect(issues).toEqual([]);
  expect(garden!.standing.at(-1)).toEqual(leeks);
  expect({ ...garden!, standing: garden!.standing.slice(0, -1) }).toEqual(before);
  expect(commentsOf(text)).toEqual(commentsOf(marram));
});

test('planFrom is set in place and taken out', () => {
  const later = textFrom(setPlanFrom(marram, day('2026-09-03')));
  expect(later).toBe(marram.replace('"planFrom": "2026-08-20"', '"planFrom": "2026-09-03"'));
  expect(saidIn(textFrom(setPlanFrom(marram, null)))).not.toHaveProperty('planFrom');
});

describe.each(['marram-end', 'sill-and-balcony', 'southern-plot'])('wishes in %s', (name) => {
  const text = example(name);
  const before = parseGarden(text, context).garden!;
  test.each(wishes.map((wish) => [wish.wish, wish] as const))(
    '%s is added and taken out again',
    (_, wish) => {
      const place = before.places[0]!.id;
      const own: Wish = 'place' in wish ? { ...wish, place } : wish;
      const added = textFrom(addWish(text, own));
      expect(parseGarden(added, context).garden!.wishes).toEqual([...before.wishes, own]);
      const removed = textFrom(removeWish(added, own));
      expect(saidIn(removed)).toEqual(saidIn(text));
      expect(commentsOf(removed)).toEqual(commentsOf(text));
    },
  );
});

test('lists of any shape keep their comments', () => {
  const wish = wishes[1]!;
  const shapes = [
    '{ "wishes": [] }',
    '{ "wishes": [ /* none yet */ ] }',
    '{\n  "wishes": [\n    // none yet\n  ]\n}',
    '{ "name": "no list" // here\n}',
    '{ "wishes": [{ "kind": "kale", "never": true }] }',
    '{\n  "wishes": [\n    { "kind": "kale", "never": true } // not again\n    // last\n  ]\n}',
    '{\r\n  "wishes": [\r\n    { "kind": "kale", "never": true }, // trailing comma\r\n  ],\r\n}',
    '{ "wishes": [{ "kind": "kale", "never": true } /* a */ , /* b */ ] }',
  ];
  for (const shape of shapes) {
    const added = textFrom(addWish(shape, wish));
    const errors: unknown[] = [];
    parse(added, errors as never[], { allowTrailingComma: true });
    expect(errors, added).toEqual([]);
    const list = saidIn(added).wishes as unknown[];
    expect(list.at(-1), added).toEqual({ kind: 'leek', atLeast: 60 });
    expect(commentsOf(added), added).toEqual(commentsOf(shape));
    const removed = textFrom(removeWish(added, wish));
    expect(commentsOf(removed), removed).toEqual(commentsOf(shape));
    expect(saidIn(removed), removed).toEqual({ wishes: [], ...saidIn(shape) });
  }
});

test('setting any plain value keeps all comments and every other value', () => {
  const paths: (string | number)[][] = [];
  const walk = (value: unknown, path: (string | number)[]): void => {
    if (Array.isArray(value)) value.forEach((each, index) => void walk(each, [...path, index]));
    else if (typeof value === 'object' && value !== null) {
      for (const [key, each] of Object.entries(value)) walk(each, [...path, key]);
    } else paths.push(path);
  };
  walk(saidIn(marram), []);
  const value = fc.oneof(
    fc.string(),
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    fc.constantFrom('// no', '/* no */'),
  );
  fc.assert(
    fc.property(fc.constantFrom(...paths), value, (path, next) => {
      const text = textFrom(setValue(marram, path, next));
      expect(commentsOf(text)).toEqual(commentsOf(marram));
      const wanted = saidIn(marram);
      let at = wanted as Record<string | number, unknown>;
      for (const part of path.slice(0, -1)) at = at[part] as Record<string | number, unknown>;
      at[path.at(-1)!] = next;
      expect(saidIn(text)).toEqual(wanted);
    }),
    { numRuns: 60 },
  );
});

test('what cannot be edited says so', () => {
  expect(setValue('{ "a": ', ['a'], 1)).toMatchObject({ kind: 'cannot', reason: 'not-a-garden-file' });
  expect(addWish('[]', wishes[0]!)).toMatchObject({ kind: 'cannot', reason: 'not-a-garden-file' });
  expect(setValue('{ "a": 1 }', ['a', 'b', 'c'], 1)).toMatchObject({ kind: 'cannot', reason: 'not-in-file' });
  expect(setValue('{ "a": 1 }', [], 1)).toMatchObject({ kind: 'cannot', reason: 'not-in-file' });
  expect(removeWish(marram, { wish: 'forbid', kind: 'leek' })).toMatchObject({
    kind: 'cannot',
    reason: 'not-in-file',
  });
  expect(addWish('{ "wishes": 3 }', wishes[0]!).kind).toBe('done');
});
