import { readFileSync } from 'node:fs';
import { dayFromIso, isoOfWeek, mondayOf, weekOfDay } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { kindById, type Lot, NEVER, runSowing, type SowingPlan } from '@twelvemonth/growing';
import type { Candidate } from '@twelvemonth/planning';
import { describe, expect, it } from 'vitest';
import { buildProblem, contextOf } from '../problem/build-problem.ts';
import type { ReportSowing } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';
import { type DecisionInput, goodYearServings, withDecisions } from './make-or-break.ts';

// Climbing beans sown at the end of a southern summer: a warm autumn brings them, a cold one does not.
const text = readFileSync(new URL('../../../../examples/southern-plot.jsonc', import.meta.url), 'utf8');
const garden = parseGarden(text, { today: dayFromIso('2026-02-15')! }).garden!;
const size = { fromDay: garden.planFrom!, weeks: 52, memberCount: 20, seed: 1 };
const context = contextOf(garden, null, 'plan', size)!;
const check = contextOf(garden, null, 'check', size)!;
const problem = { ...buildProblem(garden, context, size), standing: [] };
const ground = problem.ground.findIndex((own) => own.growsIn === 'open');
const scenarios = context.members.slice(0, 2).map((member) => ({ member, prob: 0.5 }));
const freeBench = problem.benches.map((bench) => new Float64Array(problem.weekCount).fill(bench.capacityM2));
const clearWeek = weekOfDay(dayFromIso('2026-07-20')!);

const planOf = (kind: string, sow: string): SowingPlan => ({
  id: `${kind}-${sow}`,
  kind: kindById(kind)!,
  route: 'direct',
  startDay: dayFromIso(sow)!,
  startSpreadDays: 0,
  stages: [],
  exposure: problem.ground[ground]!.exposure,
  plantDay: null,
  clearDay: mondayOf(clearWeek),
  plantsCount: 20,
  protection: problem.protection,
});

function chosen(plan: SowingPlan): ChosenSowing {
  const runs = context.members.map((member) => runSowing(context, member, plan, problem.stores));
  return {
    id: plan.id,
    number: 1,
    state: 'draft',
    plan,
    ground,
    stripsCount: 2,
    groundFromWeek: weekOfDay(plan.startDay),
    groundToWeek: clearWeek + 1,
    bench: [],
    placements: [],
    runs,
    standing: null,
  } as unknown as ChosenSowing;
}

function reportedOf({ runs }: ChosenSowing): ReportSowing {
  const lots = runs.flatMap((run) => run.lots);
  const feeds = [
    {
      role: lots[0]!.role,
      from: isoOfWeek(Math.min(...lots.map((lot) => lot.fromWeek))),
      to: isoOfWeek(Math.max(...lots.map((lot) => lot.toWeek))),
      servings: 10,
    },
  ];
  return { clear: '2026-07-20', reason: { feeds, missingWithout: 3 } } as unknown as ReportSowing;
}

/** Something quick that feeds the same weeks when it is begun in time. */
function possible(sow: string, servings: number): Candidate {
  const plan = planOf('pea-shoots', sow);
  const lot: Lot = {
    source: plan.id,
    kind: plan.kind.id,
    role: 'beans-peas',
    fromWeek: clearWeek - 8,
    toWeek: clearWeek - 4,
    servings,
    lossPerWeekShare: 0,
    form: 'fresh',
    store: null,
    storeFromWeek: null,
    keptGPerServing: 80,
    putBy: null,
    bolted: false,
  };
  return {
    plan,
    ground,
    stripsPerBatch: 1,
    groundFromWeek: weekOfDay(plan.startDay),
    groundToWeek: clearWeek,
    bench: [],
    startWeek: weekOfDay(plan.startDay),
    minutes: 5,
    work: [],
    mostBatches: 20,
    group: null,
    lots: scenarios.map(() => [lot]),
  };
}

const input = (candidates: readonly Candidate[]): DecisionInput => ({
  problem,
  check,
  candidates,
  scenarios,
  freeBench,
});
const late = ['2026-03-25', '2026-04-08', '2026-04-22'] as const;
const ready = [possible(late[0], 6), possible(late[1], 5), possible(late[2], 3)];
const risky = chosen(planOf('bean-climbing', '2026-03-01'));
const decide = (sowing: ChosenSowing, candidates: readonly Candidate[]) =>
  withDecisions(input(candidates), [sowing], [reportedOf(sowing)])[0]!.decision;

describe('a risky sowing', () => {
  it('is looked at on the last day on which its fallback can be begun, by a sign that tells', () => {
    const decision = decide(risky, ready)!;
    expect(decision.decisionDay).toBe(late[1]);
    expect(decision.fallback).toMatchObject({ kind: 'pea-shoots', sow: late[1], servings: 10 });
    expect(decision.chanceFails).toBeGreaterThanOrEqual(0.2);
    expect(decision.failsWhenSeen).toBeLessThan(decision.chanceFails);
    expect(decision.failsWhenNot).toBeGreaterThan(decision.chanceFails);
    expect(decision.rightShare).toBeGreaterThan(0.6);
    const firstDays = risky.runs
      .map((run) => Math.min(NEVER, ...run.harvests.map((h) => h.firstDay)))
      .filter((day) => day < NEVER);
    expect(dayFromIso(decision.decisionDay)!).toBeLessThan(Math.max(...firstDays));
  });

  it('has no such day without anything to take its place, nor with too little', () => {
    expect(decide(risky, [])).toBeUndefined();
    expect(decide(risky, [possible(late[1], 0.1)])).toBeUndefined();
  });
});

it('a safe sowing has none', () => {
  expect(decide(chosen(planOf('bean-climbing', '2026-02-16')), ready)).toBeUndefined();
});

it('a good year is the mean of the better half', () => {
  expect(goodYearServings([0, 0, 4, 8])).toBe(6);
  expect(goodYearServings([1, 2, 3])).toBe(2.5);
});
