import { dayFromIso, weekOfDay } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { independentCheck } from '@twelvemonth/planning';
import { expect, test } from 'vitest';
import { buildProblem, contextOf } from './build-problem.ts';

const text = (plants: number): string => `{
  "schemaVersion": 1, "invented": true, "planFrom": "2026-08-20",
  "household": { "people": [{ "name": "one" }] },
  "site": { "latitude": 53, "climate": "dublin" },
  "covers": [{ "id": "frame", "material": "cold-frame" }],
  "places": [
    { "id": "bed", "count": 3, "lengthM": 6, "widthM": 1.2 },
    { "id": "frame-bench", "use": "bench", "cover": "frame", "trays": 4 }
  ],
  "standing": [
    { "id": "waiting", "kind": "cabbage-spring", "place": "frame-bench", "count": ${plants}, "sown": "late July", "plantInto": "bed" }
  ]
}`;

function problemOf(plants: number) {
  const { garden } = parseGarden(text(plants), { today: dayFromIso('2026-08-20')! });
  const size = { fromDay: dayFromIso('2026-08-20')!, weeks: 78, memberCount: 2, seed: 1 };
  return buildProblem(garden!, contextOf(garden!, null, 'plan', size)!, size);
}

test('plants that wait on a bench take their trays until they are planted', () => {
  const problem = problemOf(40);
  const [crop] = problem.standing;
  const [use] = crop!.bench;
  expect(use).toMatchObject({ bench: 0, fromWeek: weekOfDay(problem.fromDay), toWeek: crop!.groundFromWeek });
  expect(use!.toWeek).toBeGreaterThan(use!.fromWeek);
  expect(use!.m2).toBeCloseTo(40 * crop!.plan.kind.moduleM2PerPlant, 2);
});

test('more than a bench holds is taken for a full bench, which the check accepts', () => {
  const problem = problemOf(5000);
  const [crop] = problem.standing;
  const [use] = crop!.bench;
  expect(use!.m2).toBeGreaterThan(0.79);
  expect(use!.m2).toBeLessThanOrEqual(problem.benches[0]!.capacityM2);
  const sowing = {
    ...crop!,
    plan: { ...crop!.plan, clearDay: crop!.clearDays[0]! },
    groundToWeek: crop!.groundFromWeek + 8,
  };
  expect(independentCheck(problem, [sowing]).filter((code) => code.startsWith('bench'))).toEqual([]);
});
