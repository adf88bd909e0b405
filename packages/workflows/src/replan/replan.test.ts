import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../argue/open-plan.ts';
import { comparePlans } from '../compare/compare-plans.ts';
import { planGarden } from '../plan-garden.ts';
import type { PlanPorts } from '../ports.ts';
import type { PlanReport } from '../report/plan-report.ts';

const read = (name: string): Garden => {
  const text = readFileSync(new URL(`../../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: dayFromIso('2026-03-01')! }).garden!;
};
const balcony = { ...read('sill-and-balcony'), hoursPerWeek: null };
const start = balcony.planFrom!;
const ports: PlanPorts = {
  solver: null,
  progress: () => {},
  stopRequested: () => false,
  elapsedSeconds: () => 0,
};
const plan = async (garden: Garden, fromDay: number, report: PlanReport | null, notBegun: string[] = []) => {
  const options = {
    fromDay,
    weeks: 52,
    memberCount: 5,
    checkMemberCount: 3,
    seed: 1,
    effort: 0,
    timeLimitSeconds: null,
    last: report === null ? null : { report, notBegun },
  };
  const outcome = await planGarden(garden, options, ports, null);
  if (outcome.kind !== 'done') throw new Error(outcome.reason);
  return outcome.value;
};
const first = await plan(balcony, start, null);

describe('planning again', () => {
  it.each([1, 8])('changes next to nothing %i days later when nothing else changed', async (days) => {
    const again = await plan(balcony, start + days, first);
    const { added, dropped, moved, unchanged, past } = comparePlans(first, again);
    expect([dropped, moved]).toEqual([[], []]);
    expect(added.length).toBeLessThanOrEqual(0.1 * first.sowings.length);
    expect(unchanged + past.length).toBe(first.sowings.length);
    expect(again.proof.violations).toEqual([]);
    const numbers = new Map(first.sowings.map((s) => [s.id, s.number]));
    for (const s of again.sowings)
      expect(numbers.has(s.id) ? s.number === numbers.get(s.id) : s.number > numbers.size).toBe(true);
  });

  it('takes what was begun in between as standing, and goes on from there again and again', async () => {
    const summer = await plan(balcony, start + 90, first);
    const begun = first.sowings.filter((s) => s.state === 'draft' && dayFromIso(s.sow)! < start + 90);
    const over = begun.filter((s) => dayFromIso(s.clear)! < start + 90);
    expect(begun.length).toBeGreaterThan(over.length);
    for (const sowing of begun.filter((s) => !over.includes(s))) {
      const now = summer.sowings.find((s) => s.id === sowing.id)!;
      expect(now.state, sowing.id).toBe('done');
      expect([now.sow, now.number]).toEqual([sowing.sow, sowing.number]);
      expect(now.begun!.plants).toBeGreaterThan(0);
    }
    expect(summer.proof.violations).toEqual([]);
    const open = openPlan(balcony, null, summer, { fromDay: start, weeks: 52, memberCount: 2, seed: 1 });
    if (open.kind !== 'done') throw new Error(open.reason);
    expect(open.value.lost).toEqual([]);
    const idsOf = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id).sort();
    expect(idsOf(open.value.sowings)).toEqual(idsOf(summer.sowings));
    const autumn = await plan(balcony, start + 120, summer);
    expect(autumn.proof.violations).toEqual([]);
    const still = summer.sowings.filter((s) => s.begun && dayFromIso(s.clear)! > start + 120);
    expect(still.length).toBeGreaterThan(0);
    expect(autumn.issues).toEqual([]);
    for (const { id, begun: at } of still) expect(autumn.sowings.find((s) => s.id === id)?.begun).toEqual(at);
  });

  it('plans what was not begun anew, and believes the file about what stands', async () => {
    const due = first.sowings.find(
      (s) => s.state === 'draft' && s.sow < '2026-03-20' && s.plantOut !== null,
    )!;
    const fromDay = dayFromIso(due.sow)! + 10;
    const without = await plan(balcony, fromDay, first, [due.id]);
    expect(without.sowings.some((s) => s.id === due.id && s.state === 'done')).toBe(false);
    const standing = {
      id: 'on-the-sill-aaaaaa',
      kind: due.kind,
      place: due.route[0]!.place,
      placeNumber: null,
      count: { low: 2, middle: 2, high: 2 },
      sown: { fromDay: dayFromIso(due.sow)! + 2, toDay: dayFromIso(due.sow)! + 2 },
      planted: null,
      groundM2: null,
      mayClearFrom: null,
      note: '',
      plantInto: due.beds[0]!.place,
    };
    const told = await plan({ ...balcony, standing: [...balcony.standing, standing] }, fromDay, first);
    expect(told.sowings.some((s) => s.id === due.id)).toBe(false);
    expect(told.sowings.find((s) => s.id === standing.id)?.state).toBe('done');
  });

  it('keeps the ids of what is moved by three weeks at most, and nearly all of the plan when a tub is lost', async () => {
    const fewer: Garden = {
      ...balcony,
      places: balcony.places.map((p) => (p.id === 'balcony' ? { ...p, count: 3 } : p)),
    };
    const again = await plan(fewer, start + 1, first);
    expect(again.proof.violations).toEqual([]);
    const change = comparePlans(first, again);
    for (const { matchedBy } of change.moved) expect(matchedBy).toBe('id');
    const drafts = first.sowings.filter((s) => s.state === 'draft').length;
    expect(change.added.length + change.moved.length).toBeLessThan(drafts / 4);
  });

  it('a promised sowing whose day has passed stands; one to come stays promised', async () => {
    const firm = (id: string, sowDay: number) => ({
      wish: 'firm' as const,
      id,
      kind: 'lettuce-leaf',
      place: 'balcony',
      sowDay,
      plantsCount: 6,
      route: null,
    });
    const promised: Garden = {
      ...balcony,
      wishes: [...balcony.wishes, firm('first-aaaaaa', start + 5), firm('second-aaaaaa', start + 60)],
    };
    const before = await plan(promised, start, null);
    expect(before.sowings.filter((s) => s.state === 'firm')).toHaveLength(2);
    const after = await plan(promised, start + 20, before);
    const stateOf = (id: string) => after.sowings.find((s) => s.id === id)?.state;
    expect([stateOf('first-aaaaaa'), stateOf('second-aaaaaa')]).toEqual(['done', 'firm']);
  });
});
