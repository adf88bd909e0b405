/** How salads that stand the winter end. Common practice unless a table row says more. */
import { civilFromDay, dayFromIso } from '@twelvemonth/basis';
import { expect, it } from 'vitest';
import { allHazards, kindById, stationById } from '../index.ts';
import type { Exposure } from '../places/place.ts';
import { forecastContext } from './member.ts';
import { plantsPerM2 } from './servings.ts';
import { runSowing } from './sowing-run.ts';

const open: Exposure = {
  cover: { id: 'open', material: 'open', ageYears: 0, ventAboveC: null, faces: null },
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
};
const { site, normals } = stationById('camborne')!;
const context = forecastContext({
  site,
  source: { kind: 'normals', normals },
  exposures: new Map([['open', open]]),
  seed: 1,
  purpose: 'plan',
  memberCount: 9,
  startDay: dayFromIso('2026-01-01')!,
  dayCount: 800,
});

const lastLeafDays = (kindId: string, sow: string): number[] => {
  const kind = kindById(kindId)!;
  const plan = {
    id: kindId,
    kind,
    route: 'direct' as const,
    startDay: dayFromIso(sow)!,
    startSpreadDays: 0,
    stages: [],
    exposure: 'open',
    plantDay: null,
    clearDay: null,
    plantsCount: plantsPerM2(kind),
    protection: ['net'] as const,
  };
  return context.members.map((member) => runSowing(context, member, plan, new Set()).harvests[0]!.lastDay);
};

it('land cress is a biennial: a sowing of September is over in the second half of April or in early May', () => {
  for (const day of lastLeafDays('land-cress', '2026-09-01')) {
    expect(civilFromDay(day).year).toBe(2027);
    expect([4, 5]).toContain(civilFromDay(day).month);
  }
});

it('land cress sown in spring does not run to seed in long days: it needs a winter first', () => {
  const october = dayFromIso('2026-10-01')!;
  for (const day of lastLeafDays('land-cress', '2026-04-15')) expect(day).toBeGreaterThan(october);
});

it('pigeons come to the leaf of the mustards in open ground', () => {
  const pigeons = allHazards().find((hazard) => hazard.id === 'pigeon-winter-brassicas')!;
  for (const crop of ['komatsuna', 'mizuna', 'mustard-leaf', 'pak-choi'])
    expect(pigeons.crops).toContain(crop);
  expect(pigeons.underCoverShare).toBe(0);
});

it('leaves that hold much oxalate say so', () => {
  for (const id of ['spinach-spring', 'spinach-overwintering', 'chard', 'leaf-beet'])
    expect(kindById(id)!.cautions).toContain('oxalate-leaves');
  expect(kindById('komatsuna')!.cautions).not.toContain('oxalate-leaves');
});
