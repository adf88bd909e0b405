import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { beforeAll, describe, expect, it } from 'vitest';
import { planGarden } from './plan-garden.ts';
import type { PlanReport } from './report/plan-report.ts';
import type { WhatIfRequest } from './what-if/changes.ts';
import { whatIfGarden } from './what-if-garden.ts';

const read = (name: string): Garden => {
  const text = readFileSync(new URL(`../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: dayFromIso('2026-08-20')! }).garden!;
};
const southern = read('southern-plot');
const nothing: WhatIfRequest = { lose: null, cover: null, weather: null, onDay: null };
const quiet = { progress: () => {}, stopRequested: () => false };
let report: PlanReport;
const ask = (request: Partial<WhatIfRequest>, memberCount = 8) =>
  whatIfGarden(southern, report, { ...nothing, ...request }, memberCount, null, quiet);
const answer = (request: Partial<WhatIfRequest>, memberCount = 8) => {
  const outcome = ask(request, memberCount);
  if (outcome.kind === 'cannot') throw new Error(outcome.reason);
  return outcome.value;
};

beforeAll(async () => {
  const options = {
    fromDay: southern.planFrom!,
    weeks: 46,
    memberCount: 4,
    checkMemberCount: 4,
    seed: 1,
    effort: 0,
    timeLimitSeconds: null,
  };
  const ports = { solver: null, elapsedSeconds: () => 0, ...quiet };
  const outcome = await planGarden(southern, options, ports, null);
  if (outcome.kind === 'cannot') throw new Error(outcome.reason);
  report = outcome.value;
}, 120_000);

const worthiest = () =>
  report.sowings.reduce((a, b) => (b.reason.missingWithout > a.reason.missingWithout ? b : a));

describe('a lost sowing', () => {
  it('is missed at the table, and what can still be begun brings some of it back', () => {
    const lost = answer({ lose: worthiest().id });
    expect(lost.changes).toMatchObject([{ change: 'lost', sowing: worthiest().id }]);
    const [role] = lost.roles;
    expect(role!.servingsLost).toBeGreaterThan(1);
    expect(lost.after.servingsMissing).toBeGreaterThan(lost.before.servingsMissing + 1);
    expect(role!.from! >= lost.countedFrom).toBe(true);
    expect(lost.withRemedies.servingsMissing).toBeLessThanOrEqual(lost.after.servingsMissing);
    const filled = lost.remedies.reduce((sum, remedy) => sum + remedy.filled, 0);
    expect(filled).toBeLessThanOrEqual(lost.after.servingsMissing - lost.withRemedies.servingsMissing + 1e-6);
    const weeksLostOf = (roles: readonly string[]): number =>
      lost.roles
        .filter(({ role }) => roles.includes(role))
        .flatMap((role) => role.weeks.map((week) => Math.max(0, week.servingsLost)))
        .reduce((sum, servings) => sum + servings, 0);
    for (const remedy of lost.remedies) {
      // Nothing brings back more than was lost of its roles, week by week.
      expect(remedy.filled).toBeLessThanOrEqual(weeksLostOf(remedy.roles) + 0.3);
      expect(remedy.sow >= lost.knownDay).toBe(true);
      expect(remedy.by >= remedy.sow).toBe(true);
      expect(remedy.m2).toBeGreaterThan(0);
    }
  });

  it('is the less missed the later it is lost, and may be named by its number', () => {
    const sowing = worthiest();
    const day = dayFromIso(answer({ lose: sowing.id }).knownDay)!;
    const at = (onDay: number): number => {
      const { after, before } = answer({ lose: String(sowing.number), onDay });
      return after.servingsMissing - before.servingsMissing;
    };
    expect(at(day)).toBeGreaterThanOrEqual(at(day + 28));
    expect(at(day + 28)).toBeGreaterThanOrEqual(at(day + 84));
    expect(at(day)).toBeGreaterThan(at(day + 84));
  });
});

describe('weather of one year in five', () => {
  it('is that of the southern spring, among the members, and colder than usual', () => {
    const cold = answer({ weather: 'late-spring' }, 20);
    expect(cold.changes).toMatchObject([
      { change: 'weather', from: '2026-09-01', to: '2026-11-30', members: 4, ofMembers: 20 },
    ]);
    const [change] = cold.changes;
    if (change?.change !== 'weather') throw new Error('no weather');
    expect(change.value).toBeLessThan(change.usual);
    expect(cold.members).toBe(4);
    expect(cold.knownDay).toBe('2026-10-17');
    expect(cold.countedFrom).toBe('2026-08-31');
  });

  it('can come together with a loss', () => {
    const both = answer({ weather: 'dry-may', lose: worthiest().id }, 10);
    expect(both.changes.map((change) => change.change)).toEqual(['lost', 'weather']);
    expect(both.members).toBe(2);
  });
});

describe('a torn cover', () => {
  it('names what is raised under it', () => {
    const torn = answer({ cover: 'Cold Frame' });
    const [change] = torn.changes;
    if (change?.change !== 'cover') throw new Error('no cover');
    expect(change.day).toBe('2026-07-15');
    expect(change.raised.length).toBeGreaterThan(0);
  });
});

it.each([
  [{ lose: 'no-such-sowing' }, 'sowing-unknown', {}],
  [{ cover: 'frme' }, 'cover-unknown', { nearest: 'frame' }],
  [{ cover: 'window' }, 'cover-indoors', {}],
  [{ cover: 'frame', onDay: dayFromIso('2031-01-01')! }, 'day-outside-plan', {}],
  [{}, 'nothing-asked', {}],
] as const)('%j cannot be answered: %s', (request, reason, detail) => {
  expect(ask(request, 4)).toMatchObject({ kind: 'cannot', reason, detail });
});
