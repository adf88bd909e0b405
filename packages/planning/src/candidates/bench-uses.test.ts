import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchUses } from './bench-uses.ts';

const benches = [{ stage: 'mat' }, { stage: 'sill' }, { stage: 'frame' }, { stage: 'bench' }] as const;
const kind = { moduleM2PerPlant: 0.002, potM2PerPlant: 0.01 };
const warm = { route: 'warm', benches: [0, 1, 2] } as const;

test('mat until it is up, sill until a fortnight before planting, then the frame, then pots', () => {
  const weeks = { startWeek: 10, emergedWeek: 12, readyWeek: 18, heldWeeks: 3 };
  const uses = benchUses(benches, warm, kind, 100, weeks);
  expect(uses.map(({ bench, fromWeek, toWeek }) => [bench, fromWeek, toWeek])).toEqual([
    [0, 10, 12],
    [1, 12, 16],
    [2, 16, 18],
    [2, 18, 21],
  ]);
  expect(uses.map(({ m2 }) => Math.round(m2 * 100) / 100)).toEqual([0.07, 0.2, 0.2, 1]);
});

test('what comes up late goes from the mat straight into the frame', () => {
  const weeks = { startWeek: 10, emergedWeek: 14, readyWeek: 15, heldWeeks: 0 };
  const uses = benchUses(benches, warm, kind, 100, weeks);
  expect(uses.map(({ bench, fromWeek, toWeek }) => [bench, fromWeek, toWeek])).toEqual([
    [0, 10, 14],
    [2, 14, 15],
  ]);
});

test('from sowing to planting it is in one place at a time, without a gap, whatever the weeks', () => {
  const paths = [[0, 1, 2], [1, 2], [3], [3, 2], [1], [0, 3]];
  fc.assert(
    fc.property(
      fc.constantFrom(...paths),
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: 0, max: 14 }),
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 1, max: 400 }),
      (path, toEmerge, toReady, heldWeeks, plants) => {
        const weeks = { startWeek: 50, emergedWeek: 50 + toEmerge, readyWeek: 50 + toReady, heldWeeks };
        const uses = benchUses(benches, { route: 'warm', benches: path }, kind, plants, weeks);
        expect(uses[0]!.fromWeek).toBe(50);
        for (let i = 1; i < uses.length; i++) expect(uses[i]!.fromWeek).toBe(uses[i - 1]!.toWeek);
        expect(uses.at(-1)!.toWeek).toBe(Math.max(51, weeks.readyWeek) + heldWeeks);
        for (const use of uses) expect(use.m2 * 1024).toBe(Math.round(use.m2 * 1024));
      },
    ),
  );
});
