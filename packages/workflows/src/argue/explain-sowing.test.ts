import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { leanStretches } from '@twelvemonth/planning';
import { beforeAll, expect, it } from 'vitest';
import { planGarden } from '../plan-garden.ts';
import { explainSowing } from './explain-sowing.ts';
import { explainWeek } from './explain-week.ts';
import { type OpenPlan, openPlan } from './open-plan.ts';
import { eatenWith, gapOf } from './try-out.ts';

const text = readFileSync(new URL('../../../../examples/sill-and-balcony.jsonc', import.meta.url), 'utf8');
const fromDay = dayFromIso('2026-03-01')!;
const garden = parseGarden(text, { today: fromDay }).garden!;
const options = { fromDay, weeks: 40, memberCount: 6, checkMemberCount: 6, seed: 1 };
const ports = { solver: null, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
let open: OpenPlan;

beforeAll(async () => {
  const planned = await planGarden(garden, { ...options, effort: 0, timeLimitSeconds: null }, ports, null);
  if (planned.kind !== 'done') throw new Error(planned.kind);
  const opened = openPlan(garden, null, planned.value, options);
  if (opened.kind !== 'done') throw new Error(opened.kind);
  open = opened.value;
});

it('what is missing without a sowing is found by living without it, and is what it feeds when nothing replaces it', () => {
  const parsley = explainSowing(open, 'parsley-balcony', fromDay)!;
  const base = gapOf(open.problem, open.eaten);
  const without = gapOf(open.problem, eatenWith(open, new Set(['parsley-balcony']), []));
  expect(parsley.missingWithout).toBeCloseTo(without.missing - base.missing, 9);
  expect(parsley.sowing.state).toBe('done');
  expect(parsley.delays).toEqual([]);
  expect(parsley.lastSafe).toBeNull();
});

it('a delayed sowing is told week by week, and the last safe day is not before its own day', () => {
  const draft = open.sowings.find((s) => s.state === 'draft' && s.plan.kind.startsAs === 'seed')!;
  const reasons = explainSowing(open, draft.id, fromDay)!;
  expect(reasons.delays.map((d) => d.weeks)).toEqual([1, 2, 3]);
  expect(dayFromIso(reasons.lastSafe!.day)!).toBeGreaterThanOrEqual(draft.plan.startDay);
});

it('what stands before it and after it in its strips is named, and ends before it begins', () => {
  for (const sowing of open.sowings.slice(0, 12)) {
    const { before, after } = explainSowing(open, sowing.id, fromDay)!;
    for (const { id } of before)
      expect(open.sowings.find((s) => s.id === id)!.groundToWeek).toBeLessThanOrEqual(sowing.groundFromWeek);
    for (const { id } of after)
      expect(open.sowings.find((s) => s.id === id)!.groundFromWeek).toBeGreaterThanOrEqual(
        sowing.groundToWeek,
      );
  }
});

it('a sowing that the plan does not have is not explained', () => {
  expect(explainSowing(open, 'nobody', fromDay)).toBeNull();
});

it('what is eaten in a week is told by source, and adds up to what is eaten', () => {
  const week = open.problem.fromWeek + 20;
  const { roles } = explainWeek(open, week, null, fromDay)!;
  expect(roles.length).toBeGreaterThan(2);
  for (const { role, sources } of roles) {
    const r = open.problem.appetite.roles.findIndex((id) => id === role);
    const eaten = open.eaten.reduce((sum, e) => sum + e.eaten[r]![20]!, 0) / open.eaten.length;
    const told = sources.reduce((sum, s) => sum + s.servings, 0);
    expect(told).toBeLessThanOrEqual(eaten + 1e-9);
    expect(told).toBeGreaterThan(0.7 * eaten - 1);
  }
});

it('a lean week says what binds, and a remedy that was tried fills some of it', () => {
  const { problem } = open;
  const stretch = leanStretches(problem, open.eaten).find((s) => s.missing >= 1)!;
  const role = problem.appetite.roles[stretch.role]!;
  const { roles } = explainWeek(open, problem.fromWeek + stretch.from, role, fromDay)!;
  const { lean } = roles[0]!;
  expect(lean).not.toBeNull();
  expect(lean!.servingsMissing).toBeCloseTo(stretch.missing, 9);
  if (lean!.remedy !== null) expect(lean!.remedy.filled).toBeGreaterThan(0);
  else expect(['too-late', 'season']).toContain(lean!.binds);
});

it('a week outside the plan, or a role that nobody eats, has no answer', () => {
  expect(explainWeek(open, open.problem.fromWeek - 1, null, fromDay)).toBeNull();
  expect(explainWeek(open, open.problem.fromWeek, 'no-such-role', fromDay)).toBeNull();
});
