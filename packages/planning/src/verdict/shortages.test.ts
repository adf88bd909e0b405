import { expect, it } from 'vitest';
import { makeCandidates } from '../candidates/make-candidates.ts';
import { groundLedger } from '../solve/ground-ledger.ts';
import { smallProblem } from './fixture/small-problem.ts';
import { bindsOn } from './scarce.ts';
import { judgeStretch, leanStretches, type ShortageInput } from './shortages.ts';
import { simulate } from './simulate.ts';

const whole = smallProblem(53, 2);
const problem = { ...whole, kinds: whole.kinds.filter((k) => ['lettuce-leaf', 'leek'].includes(k.id)) };
const scenarios = problem.context.members.map((member) => ({ member, prob: 0.5 }));
const candidates = makeCandidates(problem, scenarios, () => {});
const { context, stock, appetite, roles, stores } = problem;
const eaten = simulate({ context, plans: [], stock, appetite, roles, stores }).map((m) => m.eaten);
const salad = appetite.roles.indexOf('salad-leaves');

/** Half of what a batch bears is taken to be eaten. */
const input = (changes: Partial<ShortageInput> = {}): ShortageInput => ({
  problem,
  scenarios,
  candidates,
  ledger: groundLedger(problem),
  tryAdding: (candidate, batches) =>
    0.5 * batches * candidate.lots[0]!.reduce((sum, l) => sum + l.servings, 0),
  fromDay: problem.fromDay,
  ...changes,
});

it('where nothing grows, every wanted role is lean from the first week to the last', () => {
  const stretches = leanStretches(problem, eaten);
  expect(stretches.map((s) => s.role).sort()).toEqual(appetite.roles.map((_, r) => r));
  const { from, to, missing } = stretches.find((s) => s.role === salad)!;
  expect([from, to]).toEqual([0, problem.shownWeeks - 1]);
  const wanted = appetite.garden[salad]!.slice(0, problem.shownWeeks).reduce((sum, v) => sum + v, 0);
  expect(missing).toBeCloseTo(wanted, 9);
});

const stretch = { role: salad, from: 12, to: 20, missing: 20, lean: 9 };

it('with ground to spare the remedy is to sow more, begun in time, no more than fits', () => {
  const { binds, remedy } = judgeStretch(input(), stretch);
  expect([binds, remedy?.code, remedy?.kind]).toEqual(['not-worth-it', 'sow-more', 'lettuce-leaf']);
  expect(remedy!.byDay).toBeGreaterThanOrEqual(problem.fromDay);
  expect(remedy!.candidate!.startWeek).toBeLessThan(problem.fromWeek + stretch.to);
  expect(remedy!.batches).toBeLessThanOrEqual(groundLedger(problem).room(remedy!.candidate!));
});

it('with all ground taken it is ground that binds, and what is more of it would give is told', () => {
  const ledger = groundLedger(problem);
  const held = {
    ...candidates[0]!,
    groundFromWeek: problem.fromWeek,
    groundToWeek: problem.fromWeek + problem.weekCount,
    bench: [],
    work: [],
  };
  problem.ground.forEach((ground, g) => {
    ledger.take({ ...held, ground: g }, ground.stripCount);
  });
  const { binds, remedy } = judgeStretch(input({ ledger }), stretch);
  expect(['ground-open', 'ground-cover']).toContain(binds);
  expect(['more-ground', 'more-cover']).toContain(remedy!.code);
  expect(remedy!.filled).toBeGreaterThan(0);
});

it('a full bench is told apart from full ground', () => {
  const raised = candidates.find((c) => c.bench.length > 0)!;
  const ledger = groundLedger(problem);
  expect(ledger.room(raised)).toBeGreaterThan(0);
  ledger.freeBench[raised.bench[0]!.bench]!.fill(0);
  expect(ledger.room(raised)).toBe(0);
  expect(bindsOn(problem, ledger, raised)).toBe('bench');
});

it('what could only have been begun earlier is too late, not out of season', () => {
  const soon = { ...stretch, from: 0, to: 1, missing: 4 };
  const { binds, remedy } = judgeStretch(input({ fromDay: problem.fromDay + 7 }), soon);
  expect([binds, remedy?.code, remedy?.filled]).toEqual(['too-late', 'buy', 4]);
});
