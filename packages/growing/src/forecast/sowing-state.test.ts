import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { coversTable } from '../generated/covers.ts';
import { kindById, plantsPerM2 } from '../index.ts';
import { forecastContext } from './member.ts';
import { runSowing } from './sowing-run.ts';
import { sowingStateOn } from './sowing-state.ts';

const { site, normals } = stationById('dublin')!;
const context = forecastContext({
  site,
  source: { kind: 'normals', normals },
  exposures: new Map([
    [
      'open',
      {
        cover: { id: 'open', material: 'open', ageYears: 0, ventAboveC: null, faces: null },
        winterSun: 'all',
        aspect: 'flat',
        frostPocket: false,
        wet: false,
        windy: false,
        watered: true,
      } as const,
    ],
  ]),
  seed: 1,
  purpose: 'plan',
  memberCount: 4,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 700,
});
const planOf = (id: string, sow: string) => ({
  id,
  kind: kindById(id)!,
  route: 'direct' as const,
  startDay: dayFromIso(sow)!,
  startSpreadDays: 0,
  stages: [],
  exposure: 'open',
  plantDay: null,
  clearDay: null,
  plantsCount: plantsPerM2(kindById(id)!),
  protection: [],
});

describe('what is seen over the bed', () => {
  const plan = planOf('beetroot', '2026-05-01');
  it('nothing before it is up, then leaves, and full size when the harvest begins', () => {
    for (const member of context.members) {
      const run = runSowing(context, member, plan, new Set());
      const at = (day: number) => sowingStateOn(context, member, plan, day);
      expect(at(run.emergenceDay - 1)).toMatchObject({ isUp: false, trueLeaves: 0, sizeShare: 0 });
      expect(at(run.emergenceDay).isUp).toBe(true);
      let before = 0;
      for (let day = run.emergenceDay; day < run.harvests[0]!.firstDay; day += 7) {
        expect(at(day).trueLeaves).toBeGreaterThanOrEqual(before);
        before = at(day).trueLeaves;
      }
      const first = plan.kind.harvests[0]!;
      const ready = at(run.harvests[0]!.firstDay);
      expect(ready.sizeShare).toBeGreaterThan(0.97);
      expect(ready.sizeShare).toBeLessThan(1.1);
      expect(ready.trueLeaves / ready.sizeShare).toBeCloseTo(
        first.startDays / coversTable.leaf['reference-days-per-leaf'],
        6,
      );
      expect(at(run.harvests[0]!.firstDay).boltedShare).toBeLessThanOrEqual(run.boltedShare + 1e-9);
    }
  });

  it('fewer stand after frost that the run knows of', () => {
    const tender = planOf('bean-climbing', '2026-09-01');
    const day = dayFromIso('2027-01-15')!;
    for (const member of context.members)
      expect(sowingStateOn(context, member, tender, day).standingShare).toBeLessThan(0.2);
  });
});
