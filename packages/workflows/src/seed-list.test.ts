import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden, type SeedEntry } from '@twelvemonth/garden';
import { kindById } from '@twelvemonth/growing';
import { expect, it } from 'vitest';
import type { PlanReport, ReportSowing } from './report/plan-report.ts';
import { seedListOf } from './seed-list.ts';
import { inventedPlan } from './sheets/fixture/invented-plan.ts';

const text = readFileSync(new URL('../../../examples/marram-end.jsonc', import.meta.url), 'utf8');
const marram = parseGarden(text, { today: dayFromIso('2026-08-20')! }).garden!;
const some = inventedPlan.sowings[0]!;

const sowing = (
  kind: string,
  sow: string,
  seeds: number,
  fromTin = 0,
  state: ReportSowing['state'] = 'draft',
): ReportSowing => ({
  ...some,
  kind,
  state,
  sow,
  count: { sow: seeds, plant: seeds, keep: seeds, fromTin, tinLeftShare: 1 },
});
const plan = (...sowings: ReportSowing[]): PlanReport => ({ ...inventedPlan, from: '2026-08-20', sowings });
const tin = (...seeds: SeedEntry[]): Garden => ({ ...marram, seeds });
const packet = kindById('leek')!.packetSeedsCount;
const life = kindById('leek')!.seedLifeYears;

it('adds the sowings of a kind, takes what the tin holds, and buys whole packets three weeks ahead', () => {
  const report = plan(sowing('leek', '2027-04-10', 100), sowing('leek', '2027-03-20', packet, 50));
  const [line, ...others] = seedListOf(report, tin({ kind: 'leek', seedsCount: 50, packedYear: 2026 }));
  expect(others).toEqual([]);
  expect(line).toMatchObject({ needCount: packet + 100, inTinCount: 50, packetCount: packet, packets: 2 });
  expect(line).toMatchObject({ firstUse: '2027-03-20', orderBy: '2027-02-27' });
});

it('orders at once what is sown soon, and nothing when the tin has enough', () => {
  const bought = plan(sowing('leek', '2026-08-25', 30));
  expect(seedListOf(bought, tin())[0]).toMatchObject({ orderBy: '2026-08-20', packets: 1 });
  const full = tin({ kind: 'leek', seedsCount: 30, packedYear: null });
  const report = plan(sowing('leek', '2026-08-25', 30, 30));
  expect(seedListOf(report, full)[0]).toMatchObject({ packets: 0, inTinCount: 30 });
});

it('counts nothing that will be too old in the year it is sown', () => {
  const report = plan(sowing('leek', '2027-03-20', 30));
  const packed = (year: number): Garden => tin({ kind: 'leek', seedsCount: 500, packedYear: year });
  expect(seedListOf(report, packed(2027 - life))[0]).toMatchObject({ inTinCount: 500 });
  expect(seedListOf(report, packed(2027 - 2 * life))[0]).toMatchObject({ inTinCount: 0, packets: 1 });
});

it('buys nothing for what already stands, and sets and cloves by their own packets', () => {
  const report = plan(sowing('leek', '2026-04-10', 100, 0, 'done'), sowing('garlic-bulb', '2026-10-20', 120));
  const lines = seedListOf(report, tin());
  expect(lines.map(({ kind }) => kind)).toEqual(['garlic-bulb']);
  const cloves = kindById('garlic-bulb')!.packetSeedsCount;
  expect(lines[0]).toMatchObject({
    startsAs: 'clove',
    packets: Math.ceil(120 / cloves),
    packetCount: cloves,
  });
});
