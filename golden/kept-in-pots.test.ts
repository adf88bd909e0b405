import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { createHighsSolver } from '@twelvemonth/solver-highs';
import { type PlanReport, planGarden } from '@twelvemonth/workflows';
import { beforeAll, describe, expect, it } from 'vitest';

// One tunnel bed, winter leaves wanted until February, heads wanted from May: nothing in the engine knows of this case.
let report: PlanReport;
const dayOf = (iso: string): number => dayFromIso(iso)!;

beforeAll(async () => {
  const text = readFileSync(new URL('./kept-in-pots.jsonc', import.meta.url), 'utf8');
  const { garden } = parseGarden(text, { today: dayOf('2026-09-20') });
  const options = {
    weeks: 52,
    memberCount: 20,
    checkMemberCount: 5,
    seed: 1,
    effort: 20,
    timeLimitSeconds: null,
  };
  const solver = await createHighsSolver();
  const ports = { solver, progress: () => {}, stopRequested: () => false, elapsedSeconds: () => 0 };
  const outcome = await planGarden(garden!, { ...options, fromDay: garden!.planFrom! }, ports, null);
  await solver.dispose();
  if (outcome.kind !== 'done') throw new Error(outcome.reason);
  report = outcome.value;
});

describe('calabrese kept in pots lets a winter leaf bed stand until February', () => {
  it('keeps the leaf bed through the dark months although it might be cleared from November', () => {
    const leaves = report.sowings.find((s) => s.kind === 'spinach-overwintering')!;
    expect(dayOf(leaves.clear)).toBeGreaterThanOrEqual(dayOf('2027-01-15'));
    expect(dayOf(leaves.clear)).toBeLessThanOrEqual(dayOf('2027-03-20'));
  });

  it('raises the first calabrese on the bench meanwhile and plants it where the leaves stood', () => {
    const leaves = report.sowings.find((s) => s.kind === 'spinach-overwintering')!;
    const first = report.sowings.find((s) => s.kind === 'calabrese-early')!;
    const bed = first.route.at(-1)!;
    expect(first.route[0]!.stage).toBe('bench');
    expect(dayOf(bed.from) - dayOf(first.sow)).toBeGreaterThanOrEqual(8 * 7);
    expect(dayOf(bed.from)).toBeGreaterThanOrEqual(dayOf(leaves.clear));
    expect(dayOf(bed.from) - dayOf(leaves.clear)).toBeLessThanOrEqual(21);
    expect(first.follows).toContain(leaves.id);
    expect(first.harvests[0]!.servings.p50).toBeGreaterThan(0);
  });

  it('passes the independent check', () => {
    expect(report.proof.violations).toEqual([]);
  });
});
