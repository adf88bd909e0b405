import { readFileSync } from 'node:fs';
import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Garden } from '../records/garden.ts';
import { gardenIssueCodes, isGardenIssueCode } from './issue-codes.ts';
import { parseGarden } from './parse.ts';
import { mostCharacters } from './read-text.ts';

const context = { today: dayFromIso('2026-08-25')! };
const example = (name: string): string =>
  readFileSync(new URL(`../../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
const names = ['marram-end', 'sill-and-balcony', 'southern-plot'];

function gardenFrom(text: string): Garden {
  const { garden, issues } = parseGarden(text, context);
  expect(issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  return garden!;
}
const small = (household: string, latitude = 52): string =>
  `{ "schemaVersion": 1, "household": { "people": [{ "name": "one" }], ${household} },
     "site": { "latitude": ${latitude}, "climate": "dublin" }, "places": [{ "id": "bed", "lengthM": 4, "widthM": 1 }] }`;
const servings = (text: string, role: string): readonly number[] =>
  gardenFrom(text).household.appetite.find((each) => each.role === role)!.servingsPerWeekByMonth;

describe.each(names)('examples/%s', (name) => {
  test('reads without a single issue and says that it is invented', () => {
    const { garden, issues } = parseGarden(example(name), context);
    expect(issues).toEqual([]);
    expect(garden?.invented).toBe(true);
    expect(example(name).split('\n')[0]).toContain('invented');
  });
});

test('marram-end is the household it says it is', () => {
  const garden = gardenFrom(example('marram-end'));
  const beds = garden.places.filter((place) => place.use === 'bed' && place.cover === null);
  expect(beds.reduce((sum, place) => sum + place.count, 0)).toBe(24);
  expect(beds.every((place) => place.lengthM === 6 && place.widthM === 1.2)).toBe(true);
  const tunnel = garden.places.find((place) => place.id === 'tunnel-bed')!;
  expect(tunnel.count * tunnel.lengthM! * tunnel.widthM!).toBeCloseTo(24, 9);
  expect(garden.household.people).toHaveLength(5);
  expect(isoFromDay(garden.planFrom!)).toBe('2026-08-20');
  expect(new Set(garden.standing.map((each) => each.id)).size).toBe(garden.standing.length);
  const leeks = garden.standing.find((each) => each.kind === 'leek')!;
  expect(leeks.count).toEqual({ low: 96, middle: 120, high: 144 });
  expect(isoFromDay(leeks.sown!.fromDay)).toBe('2026-04-01');
});

test('southern-plot has 60 m² of beds', () => {
  const beds = gardenFrom(example('southern-plot')).places.filter((place) => place.use === 'bed');
  const groundM2 = beds.reduce((sum, place) => sum + place.count * place.lengthM! * place.widthM!, 0);
  expect(groundM2).toBeCloseTo(60, 0);
});

describe('appetite', () => {
  test('a number, twelve months, seasons, or the usual', () => {
    expect(servings(small('"appetite": { "onions": 3 }'), 'onions')).toEqual(new Array(12).fill(3));
    const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
    expect(servings(small(`"appetite": { "onions": [${months}] }`), 'onions')).toEqual(months);
    const fruits = servings(
      small('"appetite": { "summer-fruits": { "summer": 3, "winter": 0 } }'),
      'summer-fruits',
    );
    expect([fruits[0], fruits[2], fruits[6], fruits[8]]).toEqual([0, 0, 3, 3]);
    const usual = servings(small('"name": "x"'), 'summer-fruits');
    expect(usual[7]).toBeGreaterThan(usual[0]!);
  });
  test('seasons and the usual turn by half a year in the south, twelve months do not', () => {
    const seasons = '"appetite": { "salad-leaves": { "summer": 4, "winter": 1 } }';
    expect(servings(small(seasons, -43), 'salad-leaves')[0]).toBe(4);
    const north = servings(small('"name": "x"'), 'stalks');
    expect(servings(small('"name": "x"', -43), 'stalks')).toEqual([...north.slice(6), ...north.slice(0, 6)]);
    const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
    expect(servings(small(`"appetite": { "onions": [${months}] }`, -43), 'onions')).toEqual(months);
  });
  test('what is bought on purpose', () => {
    const { appetite } = gardenFrom(
      small('"boughtOnPurpose": { "potatoes": "all", "onions": 0.3 }'),
    ).household;
    const roleOf = (role: string) => appetite.find((each) => each.role === role);
    expect(roleOf('potatoes')).toMatchObject({ cover: 'none', boughtShare: 1 });
    expect(roleOf('onions')).toMatchObject({ cover: 'some', boughtShare: 0.3 });
    expect(roleOf('leeks')).toMatchObject({ cover: 'all', boughtShare: 0 });
  });
  test('who eats how much', () => {
    const people =
      '"people": [{ "name": "small", "eats": "toddler", "little": ["leeks"], "dislikes": ["cabbages"] }]';
    const share = gardenFrom(small('"name": "x"').replace('"people": [{ "name": "one" }]', people)).household
      .people[0]!.eaterShare;
    expect(share).toEqual({ other: 0.35, leeks: 0.35 * 0.3, cabbages: 0 });
  });
});

test('a file that is too large is refused before it is parsed, whatever is in it', () => {
  const started = performance.now();
  const { garden, issues } = parseGarden('[{"a":'.repeat(9_000_000).slice(0, 50_000_000), context);
  expect(garden).toBeNull();
  expect(issues.map(({ code }) => code)).toEqual(['file-too-large']);
  expect(issues[0]!.detail).toEqual({ size: 50_000_000, mostSize: mostCharacters });
  expect(performance.now() - started).toBeLessThan(5000);
});

const repeated = (count: number, item: (n: number) => string): string =>
  Array.from({ length: count }, (_, n) => item(n)).join(',');
const withList = (key: string, items: string): string =>
  small('"name": "x"').replace(/\}$/, `, "${key}": [${items}] }`);

describe('files that are large or full of faults are answered in seconds', () => {
  test.each<[string, string, string]>([
    ['4.9 MB of commas', ','.repeat(4_900_000), 'file-too-full'],
    ['4.9 MB of open brackets', '['.repeat(4_900_000), 'file-nested-too-deep'],
    ['a comment without end', `/*${'*'.repeat(4_900_000)}`, 'file-not-jsonc'],
    ['a text without end', `{ "name": "${'x'.repeat(4_900_000)}`, 'file-cut-off'],
    ['like keys', `{${'"a":1,'.repeat(700_000)}}`, 'file-too-full'],
    ['fewer like keys', `{${'"a":1,'.repeat(14_000)}}`, 'value-missing'],
    ['bad roles', small(`"appetite": {${repeated(14_000, (n) => `"R${n}":1`)}}`), 'id-malformed'],
    ['bad words', small(`"dislikes": [${repeated(29_000, () => '"!"')}]`), 'id-malformed'],
    [
      'empty sowings',
      withList(
        'standing',
        repeated(19_000, () => '{}'),
      ),
      'value-too-large',
    ],
    [
      'nameless sowings',
      withList(
        'standing',
        repeated(2000, () => '{"kind":"leek","place":"bad","count":1}'),
      ),
      'place-unknown',
    ],
  ])('%s', (_, text, code) => {
    const started = performance.now();
    const { garden, issues } = parseGarden(text, context);
    expect(garden).toBeNull();
    expect(issues.map((issue) => issue.code)).toContain(code);
    expect(issues.length).toBeLessThanOrEqual(201);
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

test('a flood of issues is cut short, errors kept', () => {
  const places = new Array(500).fill('{ "id": "bed", "colour": 1, "lengthM": 2, "widthM": 1 }').join(',');
  const text = small('"name": "x"').replace(/"places": .*\]/, `"places": [${places}]`);
  const { garden, issues } = parseGarden(text, context);
  expect(garden).toBeNull();
  expect(issues).toHaveLength(201);
  expect(issues[0]!.code).toBe('id-twice');
  expect(issues.at(-1)).toMatchObject({ code: 'errors-left-out', detail: { count: 799 } });
});

test('keys that could reach into objects stay plain keys', () => {
  const { issues } = parseGarden(
    small('"appetite": { "__proto__": 3, "constructor": 2 }, "__proto__": {}'),
    context,
  );
  expect(issues.map(({ code }) => code).sort()).toEqual(['key-unknown', 'key-unknown']);
  expect(({} as Record<string, unknown>).perWeek).toBeUndefined();
});

describe('never throws, and has no garden exactly when there is an error', () => {
  const holds = (text: string): void => {
    const { garden, issues } = parseGarden(text, context);
    expect(garden === null).toBe(issues.some(({ severity }) => severity === 'error'));
    for (const { code, detail } of issues) {
      if (!isGardenIssueCode(code)) throw new Error(`${code} is not in the list`);
      expect(Object.keys(detail).sort()).toEqual([...gardenIssueCodes[code].detail].sort());
      for (const value of Object.values(detail)) expect(['string', 'number']).toContain(typeof value);
    }
  };
  test('any text', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string()), holds), { numRuns: 500 });
  });
  test('an example cut off anywhere', () => {
    const text = example('southern-plot');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length }), (end) => holds(text.slice(0, end))),
      { numRuns: 150 },
    );
  });
  test('any JSON', () => {
    fc.assert(fc.property(fc.json(), holds), { numRuns: 300 });
  });
  test('an example with any value in any place', () => {
    const whole = JSON.parse(example('sill-and-balcony').replace(/^\s*\/\/.*$/gm, '')) as Record<
      string,
      unknown
    >;
    const paths: (string | number)[][] = [];
    const walk = (value: unknown, path: (string | number)[]): void => {
      paths.push(path);
      if (Array.isArray(value)) value.forEach((each, index) => void walk(each, [...path, index]));
      else if (typeof value === 'object' && value !== null) {
        for (const [key, each] of Object.entries(value)) walk(each, [...path, key]);
      }
    };
    walk(whole, []);
    const strange = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom<unknown>(
        -1,
        1e300,
        '',
        'about -3',
        '2026-02-30',
        'April',
        null,
        [],
        {},
        true,
        'no-such-thing',
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...paths.slice(1)), strange, (path, value) => {
        const copy = structuredClone(whole);
        let at = copy as Record<string | number, unknown>;
        for (const part of path.slice(0, -1)) at = at[part] as Record<string | number, unknown>;
        at[path.at(-1)!] = value;
        holds(JSON.stringify(copy));
      }),
      { numRuns: 800 },
    );
  });
});
