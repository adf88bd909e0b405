import { readFileSync } from 'node:fs';
import { dayFromIso, type Issue } from '@twelvemonth/basis';
import { type Garden, parseGarden, type StandingSowing, type Wish } from '@twelvemonth/garden';
import { describe, expect, it } from 'vitest';
import { issuesOfGarden } from './garden-issues.ts';
import { nearestName } from './issues/nearest-name.ts';
import { workflowIssueCodes } from './workflow-issue-codes.ts';

const example = (name: string): Garden => {
  const text = readFileSync(new URL(`../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: dayFromIso('2026-08-20')! }).garden!;
};
const day = (iso: string): number => dayFromIso(iso)!;
const marram = example('marram-end');
const fromDay = day('2026-08-20');
const found = (garden: Garden, from = fromDay): string[] =>
  issuesOfGarden(garden, from).map(({ code, where }) => `${code} @ ${where}`);
const leeks: StandingSowing = {
  id: 'leeks-xxxxxx',
  kind: 'leek',
  place: 'home-hedge',
  placeNumber: 2,
  count: { low: 40, middle: 40, high: 40 },
  sown: { fromDay: day('2026-04-01'), toDay: day('2026-04-10') },
  planted: { fromDay: day('2026-06-20'), toDay: day('2026-06-30') },
  groundM2: null,
  mayClearFrom: null,
  note: '',
  plantInto: null,
};
const withStanding = (change: Partial<StandingSowing>): Garden => ({
  ...marram,
  standing: [{ ...leeks, ...change }],
});
const firm = (change: Partial<Extract<Wish, { wish: 'firm' }>>): Wish => ({
  wish: 'firm',
  id: 'firm-xxxxxx',
  kind: 'garlic-bulb',
  place: 'plot-ridge',
  sowDay: day('2026-10-20'),
  plantsCount: 100,
  route: null,
  ...change,
});
const withWish = (...wishes: Wish[]): Garden => ({ ...marram, wishes });

describe('issues of a garden', () => {
  it('finds nothing in the two northern demo gardens', () => {
    expect(found(marram)).toEqual([]);
    expect(found(example('sill-and-balcony'), day('2026-03-01'))).toEqual([]);
  });

  it('finds names that the catalogue does not have, and says which was meant', () => {
    const garden: Garden = {
      ...withStanding({ kind: 'calabrese' }),
      stores: [{ store: 'cellar', capacityKg: null }],
      stock: [{ ...marram.stock[0]!, kind: 'apple' }],
      seeds: [{ kind: 'cardoon', seedsCount: 10, packedYear: null }],
      site: { ...marram.site, climate: { kind: 'station', station: 'valencia' } },
      household: {
        ...marram.household,
        dislikes: ['okra', 'leek'],
        yearly: [{ kind: 'leeks', count: 10 }],
        appetite: [{ ...marram.household.appetite[0]!, role: 'fruit' }],
      },
      wishes: [{ wish: 'forbid', kind: 'quinoa' }],
    };
    expect(found(garden)).toEqual([
      'kind-unknown @ household.yearly.leeks',
      'kind-passed-over @ household.dislikes[0]',
      'kind-unknown @ standing[0].kind',
      'kind-unknown @ stock[0].kind',
      'kind-passed-over @ seeds[0].kind',
      'kind-unknown @ wishes about quinoa',
      'role-unknown @ household.appetite.fruit',
      'store-unknown @ stores[0].store',
      'station-unknown @ site.climate',
    ]);
    const nearest = (issue: Issue | undefined): unknown => issue?.detail.nearest;
    const issues = issuesOfGarden(garden, fromDay);
    expect(nearest(issues.find((i) => i.where === 'standing[0].kind'))).toBe('calabrese-early');
    expect(nearest(issues.find((i) => i.code === 'station-unknown'))).toBe('valentia');
    expect(nearestName('zzzz', ['leek', 'kale'])).toBe('');
  });

  it('finds crops in places that cannot carry them or have their disease on record', () => {
    expect(found(withStanding({ kind: 'cucumber-tunnel', count: { low: 4, middle: 4, high: 4 } }))).toEqual([
      'kind-not-for-place @ standing[0]',
    ]);
    const kale = { kind: 'kale', place: 'plot-lower', count: { low: 9, middle: 9, high: 9 } };
    expect(found(withStanding(kale))).toEqual(['disease-on-record @ standing[0]']);
    expect(found(withWish(firm({ kind: 'cucumber-tunnel', plantsCount: 3 })))).toContain(
      'kind-not-for-place @ wishes about cucumber-tunnel',
    );
  });

  it('finds more plants than the ground holds, standing and firm', () => {
    const many = { low: 4000, middle: 4000, high: 4000 };
    expect(found(withStanding({ count: many }))).toEqual(['plants-over-ground @ standing[0].count']);
    expect(found(withWish(firm({ plantsCount: 5000 })))).toEqual([
      'plants-over-ground @ wishes about garlic-bulb',
    ]);
  });

  it('finds a bed over-full in time: what may be cleared before the next is begun does not count', () => {
    const lettuce = { ...leeks, kind: 'lettuce-leaf', groundM2: 6, mayClearFrom: day('2026-09-10') };
    const next = (planted: string): StandingSowing => ({
      ...leeks,
      groundM2: 5,
      planted: { fromDay: day(planted), toDay: day(planted) },
    });
    const garden = (planted: string): Garden => ({ ...marram, standing: [lettuce, next(planted)] });
    expect(found(garden('2026-07-01'))).toEqual(['bed-over-full @ standing[1].groundM2']);
    expect(found(garden('2026-09-01'))).toEqual([
      'date-in-future @ standing[1].planted',
      'bed-over-full @ standing[1].groundM2',
    ]);
    expect(found(garden('2026-09-20'))).toEqual(['date-in-future @ standing[1].planted']);
  });

  it('finds a firm sowing whose bed is not free by then, and by which crop until when', () => {
    const wishes = (sow: string): Garden =>
      withWish(firm({ kind: 'onion-autumn-red', place: 'tunnel-bed', sowDay: day(sow), plantsCount: 700 }));
    const early = issuesOfGarden(wishes('2026-09-01'), fromDay);
    expect(early.map(({ code }) => code)).toContain('sown-before-free');
    const issue = early.find(({ code }) => code === 'sown-before-free')!;
    expect(issue.detail.by).not.toBe('');
    expect(String(issue.detail.until) > '2026-09-01').toBe(true);
    expect(found(wishes('2026-11-25'))).toEqual([]);
  });

  it('counts an earlier firm sowing in the same bed', () => {
    const first = firm({ id: 'one-xxxxxx', plantsCount: 130, sowDay: day('2026-10-01') });
    const second = firm({ id: 'two-xxxxxx', kind: 'shallot', plantsCount: 100, sowDay: day('2027-02-20') });
    expect(found(withWish(first, second))).toContain('sown-before-free @ wishes about shallot');
    expect(found(withWish(second))).toEqual([]);
  });

  it('finds stock that is ten times the usual', () => {
    const stock = (kg: number): Garden => ({
      ...marram,
      stock: [{ ...marram.stock[0]!, amountG: { low: kg * 1000, middle: kg * 1000, high: kg * 1000 } }],
    });
    expect(found(stock(60))).toEqual([]);
    expect(found(stock(6000))).toEqual(['stock-far-over-usual @ stock[0].amount']);
  });

  it('gives each issue the values that its code promises', () => {
    const gardens = [
      withStanding({ kind: 'calabrese' }),
      withStanding({ kind: 'cucumber-tunnel' }),
      withWish(firm({ plantsCount: 5000 })),
    ];
    for (const issue of gardens.flatMap((garden) => issuesOfGarden(garden, fromDay))) {
      const promised = workflowIssueCodes[issue.code as keyof typeof workflowIssueCodes];
      expect(issue.severity).toBe(promised.severity);
      expect(Object.keys(issue.detail).sort()).toEqual([...promised.detail].sort());
    }
  });
});
