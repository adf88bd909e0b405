import type { Candidate, Choice, LastSowing } from '@twelvemonth/planning';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keptIds, keptNumbers } from './keep-ids.ts';

const kinds = ['leek', 'kale'];
const routes = ['module', 'direct'] as const;
const sowing = fc.record({
  kind: fc.constantFrom(...kinds),
  route: fc.constantFrom(...routes),
  startDay: fc.integer({ min: 0, max: 90 }),
  ground: fc.integer({ min: 0, max: 1 }),
});
type Drawn = { kind: string; route: (typeof routes)[number]; startDay: number; ground: number };

const lastOf = (drawn: Drawn, i: number): LastSowing => ({
  ...drawn,
  id: `${drawn.kind}-${i}`,
  groundFromWeek: 0,
  heldWeeks: 0,
  clearDay: drawn.startDay + 90,
  stripsCount: 1,
  place: 'bed',
  placeNumber: null,
});
const choiceOf = ({ kind, route, startDay, ground }: Drawn, stays?: string): Choice => {
  const candidate = { plan: { kind: { id: kind }, route, startDay }, ground, group: null };
  const kept = stays === undefined ? candidate : { ...candidate, stays: { id: stays, bonus: 0 } };
  return { candidate: kept as unknown as Candidate, batches: 1 };
};

test('an id goes to one sowing at most, of its kind and route and within three weeks; what stays keeps its own', () => {
  fc.assert(
    fc.property(
      fc.array(sowing, { maxLength: 8 }),
      fc.array(sowing, { maxLength: 8 }),
      fc.integer({ min: 0, max: 7 }),
      (before, after, unmoved) => {
        const sowings = before.map(lastOf);
        const still = sowings[unmoved];
        const choices = [
          ...after.map((drawn) => choiceOf(drawn)),
          ...(still === undefined ? [] : [choiceOf(before[unmoved]!, still.id)]),
        ];
        const kept = keptIds({ sowings, clearDays: new Map() }, choices);
        expect(new Set(kept.values()).size).toBe(kept.size);
        for (const [{ candidate }, id] of kept) {
          const told = sowings.find((s) => s.id === id)!;
          expect([candidate.plan.kind.id, candidate.plan.route]).toEqual([told.kind, told.route]);
          expect(Math.abs(candidate.plan.startDay - told.startDay)).toBeLessThanOrEqual(21);
        }
        if (still !== undefined) expect(kept.get(choices.at(-1)!)).toBe(still.id);
      },
    ),
  );
});

test('numbers on labels stay, and new ones go on from the highest', () => {
  const numbers = keptNumbers(
    ['a', 'new', 'b', 'newer'],
    new Map([
      ['b', 7],
      ['a', 3],
      ['gone', 9],
    ]),
  );
  expect([...numbers]).toEqual([
    ['a', 3],
    ['new', 10],
    ['b', 7],
    ['newer', 11],
  ]);
});
