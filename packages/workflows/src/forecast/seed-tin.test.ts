import { dayFromIso } from '@twelvemonth/basis';
import type { SeedEntry } from '@twelvemonth/garden';
import { kindById } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { openTin } from './seed-tin.ts';
import { threeNumbers } from './three-numbers.ts';

const leek = kindById('leek')!;
const spring = dayFromIso('2027-03-20')!;
const packet = (seedsCount: number, packedYear: number | null, kind = 'leek'): SeedEntry => ({
  kind,
  seedsCount,
  packedYear,
});

test('fresh seed goes seed for seed, and what is missing is bought', () => {
  const draw = openTin([packet(40, 2027)]).drawFor(leek, spring);
  expect(draw(30)).toEqual({ fromTin: 30, bought: 0, leftShare: 1 });
  expect(draw(30)).toMatchObject({ fromTin: 10, bought: 20 });
});

test('a packet at its listed life counts about half, so about twice as much of it is sown', () => {
  const old = openTin([packet(500, 2027 - leek.seedLifeYears)]).drawFor(leek, spring)(100);
  expect(old.bought).toBe(0);
  expect(old.fromTin).toBeGreaterThan(180);
  expect(old.fromTin).toBeLessThan(210);
});

test('the older packet is used first, and one too old not at all', () => {
  const tin = openTin([packet(100, 2027), packet(10, 2026), packet(900, 2027 - 2 * leek.seedLifeYears)]);
  const drawn = tin.drawFor(leek, spring)(50);
  expect(drawn.fromTin).toBeGreaterThan(50);
  expect(drawn.fromTin).toBeLessThan(54);
  expect(drawn.leftShare).toBeLessThan(1);
});

test('other kinds are left alone, seed of unknown year is taken as fresh', () => {
  const tin = openTin([packet(100, 2027, 'kale'), packet(25, null)]);
  expect(tin.drawFor(leek, spring)(40)).toMatchObject({ fromTin: 25, bought: 15 });
});

test('sets keep for their season only', () => {
  const garlic = kindById('garlic-bulb')!;
  const autumn = dayFromIso('2026-10-20')!;
  const of = (year: number) => openTin([packet(60, year, 'garlic-bulb')]).drawFor(garlic, autumn)(60);
  expect(of(2026)).toMatchObject({ fromTin: 60, bought: 0 });
  expect(of(2025)).toMatchObject({ fromTin: 0, bought: 60 });
});

test('the three numbers: old seed and a poor warmth raise what is sown, and a very poor one thins the stand', () => {
  const numbers = (germinatingShare: number, year = 2027) =>
    threeNumbers(leek, 100, true, germinatingShare, openTin([packet(9999, year)]).drawFor(leek, spring));
  const good = numbers(1);
  expect(good.plant).toBe(100);
  expect(numbers(1, 2027 - leek.seedLifeYears).sow).toBeGreaterThan(1.8 * good.sow);
  expect(numbers(0.8).sow).toBe(Math.ceil(good.sow / 0.8 - 1));
  expect(numbers(0.8).keep).toBe(good.keep);
  expect(numbers(0.25).keep).toBe(Math.round(good.keep / 2));
  expect(numbers(0.25).sow).toBe(numbers(0.5).sow);
  expect(numbers(0)).toMatchObject({ keep: 0 });
});
