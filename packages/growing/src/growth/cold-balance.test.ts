import { expect, test } from 'vitest';
import { dayOfBalance, highestBalanceCDays, makeColdBalance } from './cold-balance.ts';
import { NEVER } from './running-sum.ts';

const start = 1000;
const of = (changes: readonly number[]) => makeColdBalance(start, changes.length, (i) => changes[i]!);

/** Day by day, with a floor at nothing: what the running sum must give. */
function highestByDay(changes: readonly number[], from: number, to: number): number {
  let [balance, highest] = [0, 0];
  for (let i = from; i < to; i++) {
    balance = Math.max(0, balance + changes[i]!);
    highest = Math.max(highest, balance);
  }
  return highest;
}

test('cold adds up, warmth takes back, never below nothing', () => {
  const balance = of([5, 5, -20, 5, -3, 4]);
  expect(highestBalanceCDays(balance, start, start + 2)).toBe(10);
  expect(highestBalanceCDays(balance, start + 2, start + 6)).toBe(6); // 0, 5, 2, 6
  expect(highestBalanceCDays(balance, start, start + 6)).toBe(10); // what was set is not taken back
  expect(highestBalanceCDays(balance, start + 4, start + 5)).toBe(0);
});

test('the day on which a need is met', () => {
  const balance = of([5, 5, -8, 5, 5, 5]);
  expect(dayOfBalance(balance, start, 10)).toBe(start + 2);
  expect(dayOfBalance(balance, start + 1, 10)).toBe(start + 5); // 5, 0, 5, 10
  expect(dayOfBalance(balance, start, 18)).toBe(NEVER);
  expect(dayOfBalance(balance, NEVER, 1)).toBe(NEVER);
});

test('agrees with a count day by day over a year of spells', () => {
  const changes = Array.from({ length: 365 }, (_, i) => 6 * Math.cos(i / 9) + 3 * Math.sin(i / 2.3));
  const balance = of(changes);
  for (let from = 0; from < 340; from += 13)
    for (let to = from; to <= 365; to += 29) {
      const highest = highestByDay(changes, from, to);
      expect(highestBalanceCDays(balance, start + from, start + to)).toBeCloseTo(highest, 9);
      if (highest > 0.1) {
        const day = dayOfBalance(balance, start + from, highest * 0.999);
        expect(day).toBeLessThanOrEqual(start + to);
        expect(highestByDay(changes, from, day - start)).toBeGreaterThanOrEqual(highest * 0.999 - 1e-9);
        expect(highestByDay(changes, from, day - start - 1)).toBeLessThan(highest * 0.999);
      }
    }
});
