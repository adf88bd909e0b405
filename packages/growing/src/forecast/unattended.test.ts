import { dayFromIso, mondayOf, weekOfDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindById, kindIds } from '../crops/index.ts';
import type { Absence } from './away.ts';
import type { Lot } from './sowing-plan.ts';
import { attendedLots, visitedShare } from './unattended.ts';
import { wateredShareBy } from './unwatered.ts';

const first = weekOfDay(dayFromIso('2027-07-05')!);
const lot = (week: number, servings = 10, part: Partial<Lot> = {}): Lot => ({
  source: 'x',
  kind: 'x',
  role: 'beans-peas',
  fromWeek: week,
  toWeek: week,
  servings,
  lossPerWeekShare: 0,
  form: 'fresh',
  store: null,
  storeFromWeek: null,
  keptGPerServing: 80,
  putBy: null,
  bolted: false,
  ...part,
});
/** Weeks 2 and 3 of eight. */
const away: readonly Absence[] = [
  {
    fromDay: mondayOf(first + 2),
    toDay: mondayOf(first + 4) - 1,
    neighbourPicks: false,
    neighbourWaters: false,
  },
];
const eight = Array.from({ length: 8 }, (_, w) => lot(first + w));
const days = [mondayOf(first), mondayOf(first + 8) - 1] as const;
const servings = (lots: readonly Lot[]): [number, number][] =>
  lots.map((l) => [l.fromWeek - first, Math.round(l.servings * 100) / 100]);

describe('a fortnight away in July', () => {
  it('costs two weeks of beans and nearly half of what would have come after', () => {
    const had = attendedLots({ away, care: undefined, crop: 'french-bean' }, 'picks', eight, ...days);
    expect(servings(had)).toEqual([
      [0, 10],
      [1, 10],
      [4, 5.5],
      [5, 5.5],
      [6, 5.5],
      [7, 5.5],
    ]);
  });

  it('makes marrows of courgettes: fewer afterwards, not none', () => {
    const had = attendedLots({ away, care: undefined, crop: 'courgette' }, 'picks', eight, ...days);
    expect(servings(had)).toEqual([
      [0, 10],
      [1, 10],
      [4, 7.5],
      [5, 7.5],
      [6, 7.5],
      [7, 7.5],
    ]);
  });

  it('costs only the fortnight where a neighbour picks', () => {
    const kind = [{ ...away[0]!, neighbourPicks: true }];
    const had = attendedLots({ away: kind, care: undefined, crop: 'french-bean' }, 'picks', eight, ...days);
    expect(servings(had)).toEqual([
      [0, 10],
      [1, 10],
      [4, 10],
      [5, 10],
      [6, 10],
      [7, 10],
    ]);
  });

  it('leaves one coarse cut of leaves on coming back', () => {
    const had = attendedLots({ away, care: undefined, crop: 'lettuce' }, 'cuts', eight, ...days);
    expect(servings(had)).toEqual([
      [0, 10],
      [1, 10],
      [4, 7.23],
      [4, 10],
      [5, 10],
      [6, 10],
      [7, 10],
    ]);
  });

  it('finds heads that stand and loses those that do not; bulbs are lifted later', () => {
    const heads = [
      lot(first + 2, 10, { toWeek: first + 5 }),
      lot(first + 2),
      lot(first + 3, 10, { form: 'store', store: 'dry', storeFromWeek: first + 3, toWeek: first + 40 }),
    ];
    const had = attendedLots({ away, care: undefined, crop: 'cabbage' }, 'once', heads, ...days);
    expect(
      had.map((l) => [l.fromWeek - first, l.storeFromWeek === null ? null : l.storeFromWeek - first]),
    ).toEqual([
      [4, null],
      [4, 4],
    ]);
  });

  it('dries out tubs unless somebody waters, tunnels less, open ground not', () => {
    const base = { away, southern: false, startDay: days[0] - 60, groundDay: days[0] - 60 };
    const end = days[1];
    // 14 days: 12 beyond the two that a tub holds out, 8 beyond the six of a tunnel bed
    expect(wateredShareBy({ ...base, dries: 'tub' }, end)).toBeCloseTo(0.88 ** 12, 9);
    expect(wateredShareBy({ ...base, dries: 'cover' }, end)).toBeCloseTo(0.96 ** 8, 9);
    expect(wateredShareBy({ ...base, dries: null }, end)).toBe(1);
    const watered = [{ ...away[0]!, neighbourWaters: true }];
    expect(wateredShareBy({ ...base, away: watered, dries: 'tub' }, end)).toBe(1);
  });

  it('kills modules that nobody waters', () => {
    const raised = { away, southern: false, startDay: days[0], groundDay: days[1], dries: null };
    expect(wateredShareBy(raised, days[1])).toBeLessThan(0.02);
  });
});

describe('few visits', () => {
  it('cost part of the picks, and little else', () => {
    expect([0, 1, 2, 3, 7].map((n) => visitedShare('picks', n))).toEqual([0, 0.65, 0.9, 1, 1]);
    expect(visitedShare('once', 1)).toBe(1);
    expect(visitedShare('cuts', 1)).toBe(0.9);
  });
});

it('absence never gives more than presence, in any habit, for any kind and stretch', () => {
  const habits = ['once', 'cuts', 'picks', 'tips', 'thinnings', 'stands'] as const;
  fc.assert(
    fc.property(
      fc.constantFrom(...habits),
      fc.constantFrom(...kindIds),
      fc.array(
        fc.tuple(
          fc.integer({ min: -5, max: 60 }),
          fc.integer({ min: 0, max: 30 }),
          fc.boolean(),
          fc.boolean(),
        ),
        { maxLength: 3 },
      ),
      fc.integer({ min: 0, max: 7 }),
      (habit, id, stretches, visitsPerWeek) => {
        const gone = stretches.map(([from, length, neighbourPicks, neighbourWaters]) => ({
          fromDay: days[0] + from,
          toDay: days[0] + from + length,
          neighbourPicks,
          neighbourWaters,
        }));
        const attendance = { away: gone, care: { visitsPerWeek, inTub: false }, crop: kindById(id)!.crop };
        const had = attendedLots(attendance, habit, eight, ...days);
        const sum = (lots: readonly Lot[]): number => lots.reduce((all, l) => all + l.servings, 0);
        expect(sum(had)).toBeLessThanOrEqual(sum(eight) + 1e-9);
        for (const l of had) expect(l.toWeek).toBeGreaterThanOrEqual(l.fromWeek);
      },
    ),
  );
});
