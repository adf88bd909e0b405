import { kindById } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import type { Scenario } from '../scenarios/choose-scenarios.ts';
import { neverHardens, warmEnough } from './warm-enough.ts';

/** A year of ground that is 5 °C until day 100 and 14 °C from then to day 280. */
const soilC = Float64Array.from({ length: 365 }, (_, i) => (i >= 100 && i < 280 ? 14 : 5));
const scenario = {
  prob: 1,
  member: { clockOf: () => ({ startDay: 0, dayCount: soilC.length, weather: { soilC } }) },
} as unknown as Scenario;
const bean = kindById('runner-bean')!;
const leek = kindById('leek')!;

test('tender plants wait for warm ground and do not stand a winter; hardy ones may', () => {
  expect(neverHardens(bean)).toBe(true);
  expect(warmEnough([scenario], bean, 'x', 60, 160)).toBe(false);
  expect(warmEnough([scenario], bean, 'x', 120, 180)).toBe(true);
  expect(warmEnough([scenario], bean, 'x', 260, 360)).toBe(false);
  expect(neverHardens(leek)).toBe(false);
  expect(warmEnough([scenario], leek, 'x', 60, 160)).toBe(true);
});

test('what is never ready in most years does not make the search endless', () => {
  expect(warmEnough([scenario], bean, 'x', 120, 1e9)).toBe(false);
});
