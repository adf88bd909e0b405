import { kindById } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import type { Bed } from '../problem.ts';
import { type Interplantable, interplant } from './interplant.ts';

const bed: Bed = { place: 'tunnel', placeName: 'tunnel', number: 1, of: 1, area: 'home', stripCount: 8 };
const sowing = (id: string, kind: string, change: Partial<Interplantable>): Interplantable => ({
  id,
  kind: kindById(kind)!,
  groundFromWeek: 0,
  groundToWeek: 20,
  placements: [{ booking: id, bed, stripsFrom: 1, stripsCount: 4, follows: [] }],
  firstHarvestWeek: 10,
  readyWeek: change.groundFromWeek ?? 0,
  ...change,
});
const strips = (id: string, from: number, count: number): Pick<Interplantable, 'placements'> => ({
  placements: [{ booking: id, bed, stripsFrom: from, stripsCount: count, follows: [] }],
});
const tomato = sowing('tomato', 'tomato-cordon', {});
const lettuce = (change: Partial<Interplantable>): Interplantable =>
  sowing('lettuce', 'lettuce-winter', {
    groundFromWeek: 20,
    groundToWeek: 40,
    readyWeek: 14,
    ...strips('lettuce', 1, 2),
    ...change,
  });

test('lettuce that waits goes between tomatoes in their last weeks, on half of their strips', () => {
  const { guestWeeks } = tomato.kind;
  expect(interplant([tomato, lettuce({})]).get('lettuce')).toEqual({
    fromWeek: 20 - guestWeeks,
    hosts: [{ host: 'tomato', strips: 2 }],
  });
});

test('not on more than the host has released, not before its first harvest, not under a crop that takes no guest', () => {
  expect(interplant([tomato, lettuce(strips('lettuce', 1, 3))]).size).toBe(0);
  const late = { ...tomato, firstHarvestWeek: 19 };
  expect(interplant([late, lettuce({})]).get('lettuce')?.fromWeek).toBe(19);
  expect(interplant([sowing('carrot', 'carrot-early', {}), lettuce({})]).size).toBe(0);
});

test('two guests share what one host has released', () => {
  const second = { ...lettuce(strips('second', 3, 2)), id: 'second' };
  const found = interplant([tomato, lettuce({}), second]);
  expect([...found.keys()]).toEqual(['lettuce']);
});

test('not where a third crop lies between, and plants that do not wait stay', () => {
  const between = sowing('radish', 'radish-summer', {
    groundFromWeek: 10,
    groundToWeek: 19,
    ...strips('radish', 1, 1),
  });
  const shorter = { ...tomato, ...strips('tomato', 2, 4) };
  expect(interplant([shorter, between, lettuce({})]).get('lettuce')?.fromWeek).toBe(19);
  expect(interplant([tomato, lettuce({ readyWeek: 20 })]).size).toBe(0);
});
