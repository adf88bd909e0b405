import { dayFromIso } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { stationById } from '../climate/index.ts';
import { kindById } from '../crops/index.ts';
import { plainExposure } from '../places/fixture/plain-exposure.ts';
import { forecastContext } from './member.ts';
import { plantsPerM2 } from './servings.ts';
import { runSowing } from './sowing-run.ts';
import { openedKey, withTornCover } from './torn-cover.ts';

const munich = stationById('muenchen')!;
const context = forecastContext({
  site: munich.site,
  source: { kind: 'normals', normals: munich.normals },
  exposures: new Map([
    ['open', plainExposure('open', 'open')],
    ['tunnel', plainExposure('tunnel', 'polytunnel')],
    ['other', plainExposure('other', 'polytunnel')],
  ]),
  seed: 1,
  purpose: 'check',
  memberCount: 6,
  startDay: dayFromIso('2026-06-01')!,
  dayCount: 500,
});
const day = dayFromIso('2027-01-10')!;
const torn = withTornCover(context, { cover: 'tunnel', day, hasFleece: false });
const at = day - context.startDay;

describe('a torn cover', () => {
  it('leaves the days before as they were and gives the uncovered ground’s air from then on', () => {
    const [before, after] = [context.members[0]!, torn.members[0]!];
    const [whole, now] = [before.clockOf('tunnel').weather, after.clockOf('tunnel').weather];
    expect(now.tminC.slice(0, at)).toEqual(whole.tminC.slice(0, at));
    expect(now.tminC.slice(at)).toEqual(before.outdoor.tminC.slice(at));
    expect(now.radiationMJPerM2Day[at + 30]).toBeGreaterThan(whole.radiationMJPerM2Day[at + 30]!);
    expect(now.hardenedShare[at]).not.toBe(whole.hardenedShare[at]);
  });

  it('takes from then on what the cover was worth against frost, but for fleece at hand', () => {
    const kind = kindById('lettuce-leaf')!;
    const week = Math.floor(at / 7) + 2;
    const bare = torn.members[0]!.clockOf('tunnel').frostMargins(kind)[week]!;
    const fleeced = withTornCover(context, { cover: 'tunnel', day, hasFleece: true });
    const under = fleeced.members[0]!.clockOf('tunnel').frostMargins(kind)[week]!;
    expect(under - bare).toBeCloseTo(kind.frostFleeceGainC, 4);
  });

  it('touches no other cover', () => {
    expect(torn.members[0]!.clockOf('other')).toBe(context.members[0]!.clockOf('other'));
    expect(torn.exposures.get(openedKey('tunnel'))?.cover.material).toBe('open');
    expect(torn.exposures.has(openedKey('other'))).toBe(false);
  });

  it('costs winter salad, and nothing that was picked before', () => {
    const kind = kindById('lettuce-leaf')!;
    const plan = {
      id: 'x',
      kind,
      route: 'direct' as const,
      startDay: dayFromIso('2026-09-05')!,
      startSpreadDays: 0,
      stages: [],
      exposure: 'tunnel',
      plantDay: null,
      clearDay: dayFromIso('2027-05-10')!,
      plantsCount: plantsPerM2(kind),
      protection: [],
    };
    const servings = (of: typeof context): number =>
      of.members.reduce(
        (sum, member) =>
          sum + runSowing(of, member, plan, new Set()).harvests.reduce((s, h) => s + h.servings, 0),
        0,
      );
    expect(servings(context)).toBeGreaterThan(0);
    expect(servings(torn)).toBeLessThan(0.9 * servings(context));
    const early = { ...plan, clearDay: day - 20 };
    for (const [m, member] of context.members.entries())
      expect(runSowing(torn, torn.members[m]!, early, new Set()).lots).toEqual(
        runSowing(context, member, early, new Set()).lots,
      );
  });
});
