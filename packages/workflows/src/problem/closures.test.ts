import { readFileSync } from 'node:fs';
import { dayFromIso, weekOfDay } from '@twelvemonth/basis';
import { type Garden, parseGarden, type Wish } from '@twelvemonth/garden';
import { expect, test } from 'vitest';
import { planGarden } from '../plan-garden.ts';
import type { PlanPorts } from '../ports.ts';
import type { PlanReport } from '../report/plan-report.ts';

const text = readFileSync(new URL('../../../../examples/southern-plot.jsonc', import.meta.url), 'utf8');
const garden = parseGarden(text, { today: dayFromIso('2026-08-20')! }).garden!;
const fromDay = garden.planFrom!;
const ports: PlanPorts = {
  solver: null,
  progress: () => {},
  stopRequested: () => false,
  elapsedSeconds: () => 0,
};
const plan = async (wishes: readonly Wish[]): Promise<PlanReport> => {
  const wished: Garden = { ...garden, wishes: [...garden.wishes, ...wishes] };
  const options = {
    fromDay,
    weeks: 44,
    memberCount: 3,
    checkMemberCount: 3,
    seed: 1,
    effort: 0,
    timeLimitSeconds: null,
  };
  const outcome = await planGarden(wished, options, ports, null);
  if (outcome.kind !== 'done') throw new Error(outcome.reason);
  return outcome.value;
};
const dayOf = (iso: string): number => dayFromIso(iso)!;

test('a bed rests, and in some weeks nothing is planted: both are kept, and all else adds up', async () => {
  const [restFrom, restTo] = [fromDay + 90, fromDay + 200];
  const [from, to] = [fromDay + 21, fromDay + 48];
  const report = await plan([
    { wish: 'rest', place: 'bed', placeNumber: 3, fromDay: restFrom, toDay: restTo },
    { wish: 'no-planting', fromDay: from, toDay: to },
  ]);
  expect(report.proof.violations).toEqual([]);
  expect(report.issues).toEqual([]);
  const bedThree = report.sowings.filter((s) => s.beds.some((b) => b.place === 'bed' && b.number === 3));
  expect(bedThree.length).toBeGreaterThan(1);
  for (const sowing of bedThree) {
    const comes = weekOfDay(dayOf(sowing.route.at(-1)!.from));
    const goes = weekOfDay(dayOf(sowing.clear));
    expect(goes < weekOfDay(restFrom) || comes > weekOfDay(restTo), sowing.id).toBe(true);
  }
  const isIn = (iso: string): boolean => dayOf(iso) >= from && dayOf(iso) <= to;
  for (const sowing of report.sowings) {
    if (sowing.state === 'draft') expect(isIn(sowing.sow), sowing.id).toBe(false);
    if (sowing.plantOut !== null) expect(isIn(sowing.route.at(-1)!.from), sowing.id).toBe(false);
  }
  expect(report.sowings.some((s) => s.harvests.some((h) => h.first.p50 !== null && isIn(h.first.p50)))).toBe(
    true,
  );
});

test('perennials keep the ground that is to rest, and that is said', async () => {
  const report = await plan([{ wish: 'rest', place: 'fence', placeNumber: null, fromDay, toDay: null }]);
  expect(report.sowings.some((s) => s.kind === 'rhubarb')).toBe(true);
  expect(report.issues.map(({ code }) => code)).toEqual(['rest-begins-late']);
});
