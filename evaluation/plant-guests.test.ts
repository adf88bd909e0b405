import { describe, expect, it } from 'vitest';
import { mondayOf } from '../packages/basis/src/index.ts';
import { kindById, runSowing, type SowingPlan } from '../packages/growing/src/index.ts';
import { type Bed, independentCheck } from '../packages/planning/src/index.ts';
import { smallProblem } from '../packages/planning/src/verdict/fixture/small-problem.ts';
import type { ChosenSowing } from '../packages/workflows/src/plan/chosen-sowing.ts';
import { plantGuests } from '../packages/workflows/src/plan/plant-guests.ts';

const small = smallProblem(52, 4);
const problem = { ...small, standing: [], limits: [] };
const { fromDay, fromWeek } = problem;
const bed: Bed = problem.ground[1]!.beds[0]!;
const hostUntil = fromWeek + 10;

function chosen(
  id: string,
  kindId: string,
  plan: Partial<SowingPlan>,
  change: Partial<ChosenSowing>,
): ChosenSowing {
  const whole: SowingPlan = {
    id,
    kind: kindById(kindId)!,
    route: 'module',
    startDay: fromDay,
    startSpreadDays: 0,
    stages: [{ stage: 'bench', exposure: 'tunnel' }],
    exposure: 'tunnel',
    plantDay: null,
    clearDay: null,
    plantsCount: 10,
    protection: [],
    ...plan,
  };
  const stripsCount = change.stripsCount ?? 1;
  return {
    id,
    number: 1,
    state: 'draft',
    plan: whole,
    ground: 1,
    stripsCount,
    groundFromWeek: fromWeek,
    groundToWeek: hostUntil,
    bench: [],
    placements: [{ booking: id, bed, stripsFrom: 1, stripsCount, follows: [] }],
    runs: problem.context.members.map((member) => runSowing(problem.context, member, whole, problem.stores)),
    standing: null,
    ...change,
  };
}

const clearDay = mondayOf(hostUntil) - 3;
const tomato = chosen(
  'tomato',
  'tomato-cordon',
  { startDay: fromDay - 150, plantDay: fromDay - 90, clearDay },
  { stripsCount: 8, state: 'done' },
);
const lettuce = chosen(
  'lettuce',
  'lettuce-winter',
  {
    startDay: fromDay + 5,
    plantDay: mondayOf(hostUntil),
    clearDay: mondayOf(fromWeek + 40),
    plantsCount: 20,
  },
  {
    stripsCount: 3,
    groundFromWeek: hostUntil,
    groundToWeek: fromWeek + 41,
    bench: [{ bench: 0, fromWeek: fromWeek + 1, toWeek: hostUntil, m2: 0.2 }],
  },
);
const codes = (sowings: readonly ChosenSowing[]): string[] =>
  independentCheck(problem, sowings).filter((code) => code.startsWith('guest') || code.includes(':lettuce'));

describe('guests between hosts', () => {
  it('takes plants out of their pots and between tomatoes in their last weeks, and the second count agrees', () => {
    const planted = plantGuests(problem, [tomato, lettuce]);
    const guest = planted[1]!;
    expect(guest.guestOf?.hosts).toEqual([{ host: 'tomato', strips: 3 }]);
    expect(guest.plan.plantDay).toBe(mondayOf(guest.guestOf!.fromWeek));
    expect(hostUntil - guest.guestOf!.fromWeek).toBeLessThanOrEqual(tomato.plan.kind.guestWeeks);
    expect(guest.bench.every((use) => use.toWeek <= guest.guestOf!.fromWeek)).toBe(true);
    const sum = (sowing: ChosenSowing): number =>
      sowing.runs.flatMap((run) => run.lots).reduce((all, lot) => all + lot.servings, 0);
    expect(sum(guest)).toBeGreaterThanOrEqual(sum(lettuce));
    expect(codes(planted)).toEqual([]);
  });

  it('leaves them in their pots where the host gives up fewer strips', () => {
    expect(
      plantGuests(problem, [
        { ...tomato, stripsCount: 4, placements: tomato.placements.map((p) => ({ ...p, stripsCount: 4 })) },
        lettuce,
      ])[1],
    ).toBe(lettuce);
  });

  it('is found out by the second count when it claims a host that does not take it, or too much of one', () => {
    const guestOf = { fromWeek: hostUntil - 4, hosts: [{ host: 'tomato', strips: 3 }] };
    const plan = { ...lettuce.plan, plantDay: mondayOf(hostUntil - 4) };
    const runs = problem.context.members.map((m) => runSowing(problem.context, m, plan, problem.stores));
    const guest = { ...lettuce, plan, runs, guestOf };
    expect(codes([tomato, guest])).toEqual([]);
    const carrot = { ...tomato, plan: { ...tomato.plan, kind: kindById('carrot-early')! }, runs: [] };
    expect(codes([carrot, guest]).some((code) => code.startsWith('guest-wrong:lettuce'))).toBe(true);
    const small = {
      ...tomato,
      stripsCount: 4,
      placements: tomato.placements.map((p) => ({ ...p, stripsCount: 4 })),
    };
    expect(codes([small, guest])).toContain('guest-share:tomato:3/4');
    expect(codes([tomato, { ...lettuce, plan, runs }]).some((code) => code.startsWith('ground-late'))).toBe(
      true,
    );
  });
});
