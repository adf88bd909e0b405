import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { eat } from '@twelvemonth/growing';
import { beforeAll, expect, it } from 'vitest';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import { planGarden } from '../plan-garden.ts';
import { holdersOf } from './free-ground.ts';
import { type OpenPlan, openPlan } from './open-plan.ts';
import { type PreviewState, preparePreview, previewMove } from './preview-move.ts';
import { runsOf } from './try-out.ts';

const text = readFileSync(new URL('../../../../examples/sill-and-balcony.jsonc', import.meta.url), 'utf8');
const fromDay = dayFromIso('2026-03-01')!;
const garden = parseGarden(text, { today: fromDay }).garden!;
const options = { fromDay, weeks: 40, memberCount: 6, checkMemberCount: 6, seed: 1 };
const ports = { solver: null, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
let open: OpenPlan;
let state: PreviewState;
let drafts: ChosenSowing[];

beforeAll(async () => {
  const planned = await planGarden(garden, { ...options, effort: 0, timeLimitSeconds: null }, ports, null);
  if (planned.kind !== 'done') throw new Error(planned.kind);
  const opened = openPlan(garden, null, planned.value, options);
  if (opened.kind !== 'done') throw new Error(opened.kind);
  open = opened.value;
  state = preparePreview(open);
  drafts = open.sowings.filter((s) => s.state === 'draft' && s.plan.kind.startsAs === 'seed');
});

it('a preview says what simulating everything anew says', () => {
  const { problem, sowings } = open;
  for (const sowing of drafts.slice(0, 10)) {
    const startDay = sowing.plan.startDay + 14;
    const preview = previewMove(state, { sowing: sowing.id, startDay })!;
    const runs = runsOf(problem, { ...sowing.plan, startDay }, 6);
    const eatenAnew = runs.map((run, m) =>
      eat(
        [...problem.stock, ...sowings.flatMap((s) => (s === sowing ? run : s.runs[m]!).lots)],
        problem.appetite,
        problem.roles,
      ),
    );
    let missing = 0;
    problem.appetite.roles.forEach((_, r) => {
      for (let w = 0; w < problem.weekCount; w++)
        for (let m = 0; m < 6; m++)
          missing += (open.eaten[m]!.eaten[r]![w]! - eatenAnew[m]!.eaten[r]![w]!) / 6;
    });
    expect(preview.forbidden).toEqual([]);
    expect(preview.missingChange).toBeCloseTo(missing, 6);
  }
});

it('what is not moved changes nothing, and has no clash that the plan had not', () => {
  for (const { id } of open.sowings) {
    const { changes, missingChange, lean, clashes, risk } = previewMove(state, { sowing: id })!;
    expect(changes).toEqual([]);
    expect(missingChange).toBeCloseTo(0, 9);
    expect([lean.change, lean.filled, lean.opened]).toEqual([0, [], []]);
    expect(clashes.filter((c) => !c.before || c.over === 'ground')).toEqual([]);
    expect(risk.bolted.after).toBe(risk.bolted.before);
  }
});

it('moved onto strips that another holds, both are named with the weeks', () => {
  const [one, other] = drafts
    .flatMap((a) => drafts.map((b) => [a, b] as const))
    .find(
      ([a, b]) =>
        a !== b &&
        a.ground === b.ground &&
        a.plan.stages.length === 0 &&
        b.groundFromWeek >= a.groundToWeek &&
        a.placements.some((p) => b.placements.some((q) => p.bed === q.bed && p.stripsFrom === q.stripsFrom)),
    )!;
  const clearDay = other.groundFromWeek * 7 + 40;
  const { clashes } = previewMove(state, { sowing: one.id, clearDay })!;
  const ground = clashes.filter((c) => c.over === 'ground');
  expect(ground.flatMap((c) => c.with)).toContain(other.id);
  expect(ground.every((c) => !c.before && c.from < c.to)).toBe(true);
});

it('what cannot be is told by its reason', () => {
  const { id, plan } = drafts[0]!;
  const why = (move: object): readonly string[] => previewMove(state, { sowing: id, ...move })!.forbidden;
  expect(why({ startDay: fromDay - 30 })).toContain('in-the-past');
  expect(why({ clearDay: plan.startDay - 1 })).toContain('cleared-before-planted');
  expect(why({ place: { id: 'nowhere', number: null } })).toEqual(['no-such-place']);
  const sill = open.sowings.find((s) =>
    s.plan.kind.growsIn.every((g) => g === 'tub' || g === 'open' || g === 'cover'),
  );
  expect(previewMove(state, { sowing: sill!.id, place: { id: 'sill', number: 1 } })!.forbidden).toContain(
    'cannot-grow-there',
  );
  expect(previewMove(state, { sowing: 'parsley-balcony', startDay: fromDay + 7 })!.forbidden).toContain(
    'stands-already',
  );
  expect(previewMove(state, { sowing: 'nobody' })).toBeNull();
});

it('more plants than the place has ground for clash with all who stand there, and are short besides', () => {
  const { problem, sowings } = open;
  const limited = new Set(problem.limits.map((limit) => limit.kind));
  const tub = drafts.find((s) => s.placements[0]?.bed.place === 'balcony' && !limited.has(s.plan.kind.id))!;
  const own = problem.ground[tub.ground]!;
  const plants = (tub.plan.plantsCount / tub.stripsCount) * (own.stripCount + 2);
  const { clashes } = previewMove(state, { sowing: tub.id, plants })!;
  const ground = clashes.filter((c) => c.over === 'ground');
  expect(ground.find((c) => c.with.length === 0)?.short).toBe(2);
  const beside = holdersOf(sowings, tub.ground, tub.groundFromWeek, tub.groundToWeek);
  expect(ground.flatMap((c) => c.with).sort()).toEqual(
    beside
      .map((s) => s.id)
      .filter((id) => id !== tub.id)
      .sort(),
  );
});
