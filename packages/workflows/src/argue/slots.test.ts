import { readFileSync } from 'node:fs';
import { dayFromIso, weekOfDay } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { expect, it } from 'vitest';
import { freeRuns, placeInRuns } from './free-ground.ts';
import { type OpenPlan, openPlan } from './open-plan.ts';
import { slotsFor } from './slots.ts';

const text = readFileSync(new URL('../../../../examples/sill-and-balcony.jsonc', import.meta.url), 'utf8');
const fromDay = dayFromIso('2026-03-01')!;
const garden = parseGarden(text, { today: fromDay }).garden!;
const options = { fromDay, weeks: 40, memberCount: 6, seed: 1 };

function opened(of = garden): OpenPlan {
  const outcome = openPlan(of, null, null, options);
  if (outcome.kind !== 'done') throw new Error(outcome.kind);
  return outcome.value;
}
const request = { kind: 'lettuce-leaf', plants: null, most: 4, today: fromDay };

it('without a plan, slots lie in tubs that nothing standing holds, and fill what is missing', () => {
  const open = opened();
  const { slots, beside } = slotsFor(open, request)!;
  expect(beside).toBe('what-stands');
  expect(slots.length).toBeGreaterThan(0);
  for (const { sowing, missingFilled } of slots) {
    expect(missingFilled).toBeGreaterThan(0);
    expect(sowing.beds.length).toBeGreaterThan(0);
    const weeks = [dayFromIso(sowing.route.at(-1)!.from)!, dayFromIso(sowing.clear)!].map(weekOfDay);
    for (const bed of sowing.beds)
      for (const { placements, groundFromWeek, groundToWeek } of open.sowings) {
        const there = placements.some((p) => p.bed.place === bed.place && p.bed.number === bed.number);
        if (there) expect(groundFromWeek > weeks[1]! || groundToWeek <= weeks[0]!).toBe(true);
      }
  }
  const filled = slots.map((s) => s.missingFilled);
  expect(filled).toEqual([...filled].sort((a, b) => b - a));
});

it('more plants than all tubs hold are answered with as many as fit', () => {
  const { slots, none, fewer } = slotsFor(opened(), { ...request, plants: 5000 })!;
  expect([none, fewer]).toEqual([null, true]);
  expect(slots.every((s) => s.sowing.count.plant < 5000)).toBe(true);
});

it('where every strip is held it is said that nothing is free, and what would have to make way', () => {
  const open = opened();
  const all = open.problem.ground.map((ground, g) => {
    const crop = { ...open.sowings[0]!, id: `held-${g}`, ground: g, state: 'draft' as const, number: 90 + g };
    const placements = ground.beds.map((bed) => ({
      booking: crop.id,
      bed,
      stripsFrom: 1,
      stripsCount: bed.stripCount,
      follows: [],
    }));
    const weeks = { groundFromWeek: open.problem.fromWeek, groundToWeek: open.problem.fromWeek + 60 };
    const plan = { ...crop.plan, id: crop.id, startDay: fromDay };
    return { ...crop, ...weeks, plan, stripsCount: ground.stripCount, placements };
  });
  const { slots, none, instead } = slotsFor({ ...open, sowings: all }, request)!;
  expect([slots, none]).toEqual([[], 'nothing-free']);
  expect(instead?.replaces.id).toMatch(/^held-/);
});

it('a kind that grows in nothing the household has is told apart', () => {
  expect(slotsFor(opened(), { ...request, kind: 'parsnip' })!.none).toBe('no-such-place');
  expect(slotsFor(opened(), { ...request, kind: 'rhubarb' })).toBeNull();
  expect(slotsFor(opened(), { ...request, kind: 'no-such-kind' })).toBeNull();
});

it('runs of free strips go round what is held, and a sowing takes the run that it fills best', () => {
  const open = opened();
  const bed = { place: 'b', placeName: 'b', number: 1, of: 1, area: 'home', stripCount: 10 };
  const ground = [{ ...open.problem.ground[0]!, beds: [bed], stripCount: 10 }];
  const problem = { ...open.problem, ground };
  const held = (stripsFrom: number, stripsCount: number, from: number, to: number) => ({
    id: 'x',
    ground: 0,
    groundFromWeek: from,
    groundToWeek: to,
    placements: [{ booking: 'x', bed, stripsFrom, stripsCount, follows: [] }],
  });
  const sowings = [held(3, 2, 0, 10), held(8, 1, 5, 20), held(1, 10, 30, 40)];
  const runs = freeRuns(problem, sowings, 0, 4, 12).map((r) => [r.stripsFrom, r.stripsCount]);
  expect(runs).toEqual([
    [5, 3],
    [1, 2],
    [9, 2],
  ]);
  expect(freeRuns(problem, sowings, 0, 20, 30).map((r) => r.stripsCount)).toEqual([10]);
  const two = placeInRuns(freeRuns(problem, sowings, 0, 4, 12), 2, 'new');
  expect(two.map((p) => [p.stripsFrom, p.stripsCount])).toEqual([[9, 2]]);
  const five = placeInRuns(freeRuns(problem, sowings, 0, 4, 12), 5, 'new');
  expect(five.reduce((sum, p) => sum + p.stripsCount, 0)).toBe(5);
});
