import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { describe, expect, it } from 'vitest';
import { planGarden } from './plan-garden.ts';
import type { PlanPorts } from './ports.ts';

const read = (name: string): Garden => {
  const text = readFileSync(new URL(`../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: dayFromIso('2026-08-20')! }).garden!;
};
const balcony = read('sill-and-balcony');
const southern = read('southern-plot');
const options = {
  weeks: 60,
  memberCount: 6,
  checkMemberCount: 4,
  seed: 1,
  effort: 0,
  timeLimitSeconds: null,
};
const ports: PlanPorts = {
  solver: null,
  progress: () => {},
  stopRequested: () => false,
  elapsedSeconds: () => 0,
};
const plan = async (garden: Garden, change: Partial<PlanPorts> = {}) => {
  const outcome = await planGarden(
    garden,
    { ...options, fromDay: garden.planFrom! },
    { ...ports, ...change },
    null,
  );
  if (outcome.kind !== 'done') throw new Error(outcome.reason);
  return outcome.value;
};

describe('planning a garden', () => {
  it('adds up: no finding of the independent check, every sowing in a real bed, servings within appetite', async () => {
    for (const garden of [balcony, southern]) {
      const report = await plan(garden);
      expect(report.proof.violations).toEqual([]);
      for (const sowing of report.sowings) expect(sowing.beds.length).toBeGreaterThan(0);
      for (const week of report.weeks)
        for (const role of Object.values(week.roles)) {
          expect(role.eaten.p90).toBeLessThanOrEqual(role.appetite - role.bought + 1e-6);
          expect(role.fromStock).toBeLessThanOrEqual(role.eaten.p90 + 1e-6);
        }
    }
  });

  it('keeps fleece at hand in the week that is too cold for plants of open ground, and says below what', async () => {
    const report = await plan(southern);
    const covers = new Map(southern.places.map((place) => [place.id, place.cover]));
    const nights = report.jobs.filter((job) => job.code === 'fleece-night');
    const courgette = nights.filter((job) => job.kindName === 'courgette');
    expect(courgette.length).toBeGreaterThan(0);
    for (const job of courgette) expect(Math.abs(job.belowC!)).toBeLessThanOrEqual(1);
    for (const job of nights) {
      const sowing = report.sowings.find((s) => s.id === job.sowing)!;
      expect(job.day <= sowing.clear, `${job.sowing} ${job.day}`).toBe(true);
      for (const bed of sowing.beds) expect(covers.get(bed.place), job.sowing!).toBeNull();
    }
    const bare = await plan({ ...southern, kit: { ...southern.kit, fleeceM: 0 } });
    expect(bare.jobs.filter((job) => job.code === 'fleece-night')).toEqual([]);
  });

  it('keeps a promised sowing: its kind, day and place, as firm', async () => {
    const fromDay = southern.planFrom!;
    const wish = {
      wish: 'firm' as const,
      id: 'kale-promise-aaaaaa',
      kind: 'kale',
      place: 'bed',
      sowDay: fromDay + 14,
      plantsCount: 8,
      route: null,
    };
    const report = await plan({ ...southern, wishes: [...southern.wishes, wish] });
    const kept = report.sowings.find((s) => s.id === wish.id)!;
    expect(kept.state).toBe('firm');
    expect(dayFromIso(kept.sow)).toBe(wish.sowDay);
    expect(kept.count.plant).toBe(8);
    expect(kept.beds.every((bed) => bed.place === 'bed')).toBe(true);
    expect(report.proof.violations).toEqual([]);
  });

  it('leaves out what is forbidden and what nobody eats', async () => {
    const without = { ...southern, wishes: [{ wish: 'forbid' as const, kind: 'chard' }] };
    const report = await plan(without);
    expect(report.sowings.some((s) => s.state === 'draft' && s.kind === 'chard')).toBe(false);
  });

  it('gives the best so far when it is asked to stop', async () => {
    const report = await plan(balcony, { stopRequested: () => true });
    expect(report.weeks).toHaveLength(options.weeks);
  });

  it('says that it cannot without a climate', async () => {
    const nowhere: Garden = {
      ...balcony,
      site: { ...balcony.site, climate: { kind: 'station', station: 'atlantis' } },
    };
    const outcome = await planGarden(nowhere, { ...options, fromDay: balcony.planFrom! }, ports, null);
    expect(outcome).toMatchObject({ kind: 'cannot', reason: 'no-climate' });
  });
});
