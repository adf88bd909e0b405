import { isoFromDay } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { inventedPlan } from '../sheets/fixture/invented-plan.ts';
import { dayOf } from '../sheets/sheet-days.ts';
import { comparePlans } from './compare-plans.ts';

const changed = (id: string, change: (sowing: ReportSowing) => Partial<ReportSowing>): PlanReport => ({
  ...inventedPlan,
  sowings: inventedPlan.sowings.map((s) => (s.id === id ? { ...s, ...change(s) } : s)),
});
const later =
  (days: number, id?: string) =>
  (sowing: ReportSowing): Partial<ReportSowing> => ({
    sow: isoFromDay(dayOf(sowing.sow) + days),
    ...(id === undefined ? {} : { id }),
  });
const draft = inventedPlan.sowings.find((s) => s.state === 'draft' && s.beds.length > 0)!;

test('a plan against itself: nothing changes', () => {
  const same = comparePlans(inventedPlan, inventedPlan);
  expect(same.unchanged).toBe(inventedPlan.sowings.length);
  for (const list of [same.added, same.dropped, same.moved, same.grown, same.shrunk, same.elsewhere])
    expect(list).toEqual([]);
  expect(same.lean.filled).toEqual([]);
  expect(same.lean.opened).toEqual([]);
  for (const role of same.roles) expect([role.change, role.gained, role.lost]).toEqual([0, 0, 0]);
  expect(same.shared?.weeks).toBe(inventedPlan.weeks.length);
});

test('a sowing is found again by its id however far it moved', () => {
  const result = comparePlans(inventedPlan, changed(draft.id, later(60)));
  expect(result.moved).toMatchObject([{ matchedBy: 'id', movedDays: 60, after: { id: draft.id } }]);
  expect(result.added).toEqual([]);
});

test.each([
  [21, 1],
  [-21, 1],
  [22, 0],
])('under another id it is the same sowing within three weeks (%i days)', (days, found) => {
  const result = comparePlans(inventedPlan, changed(draft.id, later(days, 'other-aaaaaa')));
  expect(result.moved).toHaveLength(found);
  expect(result.added).toHaveLength(1 - found);
  expect(result.dropped).toHaveLength(1 - found);
  if (found === 1) expect(result.moved[0]).toMatchObject({ matchedBy: 'likeness', movedDays: days });
});

test('the nearest day finds its own first', () => {
  const twin = { ...draft, id: 'twin-aaaaaa', number: 90 };
  const two: PlanReport = {
    ...inventedPlan,
    sowings: [...inventedPlan.sowings, { ...twin, ...later(14)(twin) }],
  };
  const renamed: PlanReport = {
    ...two,
    sowings: two.sowings.map((s) =>
      s.kind === draft.kind ? { ...s, id: `${s.id}-new`, ...later(5)(s) } : s,
    ),
  };
  const result = comparePlans(two, renamed);
  expect(result.added).toEqual([]);
  for (const { before, after } of result.moved) expect(after.id).toBe(`${before.id}-new`);
});

test('another size, another place, another kind', () => {
  const more = comparePlans(
    inventedPlan,
    changed(draft.id, (s) => ({ count: { ...s.count, plant: s.count.plant + 5 } })),
  );
  expect(more.grown).toMatchObject([{ plantsChange: 5, movedDays: 0 }]);
  const away = comparePlans(
    inventedPlan,
    changed(draft.id, (s) => ({ beds: s.beds.map((b) => ({ ...b, place: 'far', placeName: 'far' })) })),
  );
  expect(away.elsewhere).toMatchObject([
    { before: { place: draft.beds[0]!.place }, after: { place: 'far' } },
  ]);
  const other = comparePlans(
    inventedPlan,
    changed(draft.id, () => ({ kind: 'leek' })),
  );
  expect([other.added.length, other.dropped.length]).toEqual([1, 1]);
});

test('what is over by the later start is past, what lies beyond the earlier horizon is further', () => {
  const start = dayOf(draft.clear) + 1;
  const next: PlanReport = {
    ...inventedPlan,
    from: isoFromDay(start),
    sowings: inventedPlan.sowings
      .filter((s) => s.id !== draft.id)
      .concat({ ...draft, id: 'next-aaaaaa', ...later(600)(draft) }),
  };
  const result = comparePlans(inventedPlan, next);
  expect(result.past.map((s) => s.id)).toEqual([draft.id]);
  expect(result.further.map((s) => s.id)).toEqual(['next-aaaaaa']);
  expect([result.added, result.dropped]).toEqual([[], []]);
});

test('servings and lean weeks: hand-worked on one role in two weeks', () => {
  const role = Object.keys(inventedPlan.weeks[0]!.roles)[0]!;
  const set = (week: number, eatenMean: number, chanceLean: number, report: PlanReport): PlanReport => ({
    ...report,
    weeks: report.weeks.map((w, i) =>
      i === week ? { ...w, roles: { ...w.roles, [role]: { ...w.roles[role]!, eatenMean, chanceLean } } } : w,
    ),
  });
  const before = set(4, 3, 0.2, set(3, 2, 0.9, inventedPlan));
  const after = set(4, 2.5, 0.6, set(3, 4, 0.1, inventedPlan));
  const result = comparePlans(before, after);
  const row = result.roles.find((r) => r.role === role)!;
  expect(row.change).toBeCloseTo(1.5, 9);
  expect(row.gained).toBeCloseTo(2, 9);
  expect(row.lost).toBeCloseTo(0.5, 9);
  expect(result.lean.filled.map((w) => w.weekOf)).toEqual([inventedPlan.weeks[3]!.weekOf]);
  expect(result.lean.opened.map((w) => w.weekOf)).toEqual([inventedPlan.weeks[4]!.weekOf]);
  expect(result.lean.after - result.lean.before).toBeCloseTo(-0.4, 9);
  expect(result.weeks[3]!.change[role]).toBeCloseTo(2, 9);
});

test('plans without a week in common have no table', () => {
  const far: PlanReport = { ...inventedPlan, weeks: [] };
  expect(comparePlans(inventedPlan, far)).toMatchObject({ shared: null, roles: [], weeks: [] });
});
