import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { independentCheck, meanScore } from '@twelvemonth/planning';
import { expect, it } from 'vitest';
import { planGarden } from '../plan-garden.ts';
import type { PlanReport } from '../report/plan-report.ts';
import { openPlan } from './open-plan.ts';

const text = readFileSync(new URL('../../../../examples/sill-and-balcony.jsonc', import.meta.url), 'utf8');
const fromDay = dayFromIso('2026-03-01')!;
const garden = parseGarden(text, { today: fromDay }).garden!;
const options = { fromDay, weeks: 40, memberCount: 4, checkMemberCount: 4, seed: 1 };
const ports = { solver: null, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };

it('a plan read back from its report feeds the household the same, and takes the same ground', async () => {
  const planned = await planGarden(garden, { ...options, effort: 0, timeLimitSeconds: null }, ports, null);
  if (planned.kind !== 'done') throw new Error(planned.kind);
  const report = JSON.parse(JSON.stringify(planned.value)) as PlanReport;
  const opened = openPlan(garden, null, report, options);
  if (opened.kind !== 'done') throw new Error(opened.kind);
  const { problem, sowings, lost, eaten } = opened.value;
  expect(lost).toEqual([]);
  expect(sowings.map((s) => s.id).sort()).toEqual(report.sowings.map((s) => s.id).sort());
  expect(independentCheck(problem, sowings)).toEqual([]);
  const score = meanScore(problem.appetite, eaten, 13, 65);
  expect(score.missingServings).toBeCloseTo(report.proof.servingsMissingCheck, 6);
  expect(score.leanWeeks).toBeCloseTo(report.proof.leanWeeksCheck, 6);
});

it('a sowing whose place is gone is named and left out, what stands goes on', async () => {
  const planned = await planGarden(garden, { ...options, effort: 0, timeLimitSeconds: null }, ports, null);
  if (planned.kind !== 'done') throw new Error(planned.kind);
  const away = { ...garden, places: garden.places.filter((place) => place.id !== 'balcony-windy') };
  const opened = openPlan(away, null, planned.value, options);
  if (opened.kind !== 'done') throw new Error(opened.kind);
  const there = planned.value.sowings.filter((s) => s.beds.some((bed) => bed.place === 'balcony-windy'));
  expect(there.length).toBeGreaterThan(0);
  expect([...opened.value.lost].sort()).toEqual(there.map((s) => s.id).sort());
});

it('without a report only what stands grows', () => {
  const opened = openPlan(garden, null, null, options);
  if (opened.kind !== 'done') throw new Error(opened.kind);
  expect(opened.value.sowings.map((s) => s.id)).toEqual(garden.standing.map((s) => s.id));
});
