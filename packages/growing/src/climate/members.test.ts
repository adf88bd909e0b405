import { civilFromDay, dayFromCivil } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import type { DailyWeather, WeatherMembersRequest } from './climate.ts';
import { weatherMembers, weatherYearsIn } from './members.ts';
import { clearnessBounds } from './radiation.ts';
import { stationById } from './stations.ts';
import { extraterrestrialRadiationMJPerM2Day, noonSunAltitudeDeg } from './sun.ts';

const dublin = stationById('dublin')!;
const drawn: WeatherMembersRequest = {
  site: dublin.site,
  source: { kind: 'normals', normals: dublin.normals },
  seed: 7,
  purpose: 'plan',
  memberCount: 4,
  startDay: dayFromCivil(2025, 9, 15),
  dayCount: 600,
};

/** A record whose maximum says which day it is. */
function record(fromYear: number, toYear: number): DailyWeather {
  const startDay = dayFromCivil(fromYear, 1, 1);
  const count = dayFromCivil(toYear + 1, 1, 1) - startDay;
  const numbered = Float64Array.from({ length: count }, (_, i) => startDay + i);
  const zero = new Float64Array(count);
  return { startDay, tmaxC: numbered, tminC: zero, rainMm: zero, radiationMJPerM2Day: zero };
}
const recorded = (change: Partial<WeatherMembersRequest> = {}): WeatherMembersRequest => ({
  ...drawn,
  source: { kind: 'daily', record: record(1991, 2002) },
  ...change,
});

describe('members drawn from normals', () => {
  it('are the same whatever the number of members and the length of the run', () => {
    const four = weatherMembers(drawn);
    const two = weatherMembers({ ...drawn, memberCount: 2, dayCount: 900 });
    expect(Array.from(two[1]!.tminC.slice(0, 600))).toEqual(Array.from(four[1]!.tminC));
    expect(Array.from(four[0]!.tmaxC)).not.toEqual(Array.from(four[1]!.tmaxC));
  });

  it('share no draw between purposes and seeds', () => {
    const plan = weatherMembers(drawn)[0]!.tmaxC[10];
    expect(weatherMembers({ ...drawn, purpose: 'check' })[0]!.tmaxC[10]).not.toBe(plan);
    expect(weatherMembers({ ...drawn, seed: 8 })[0]!.tmaxC[10]).not.toBe(plan);
  });

  it('stay inside what the sky allows and keep the maximum above the minimum', () => {
    for (const member of weatherMembers({ ...drawn, dayCount: 800 })) {
      for (let i = 0; i < 800; i++) {
        const { month, dayOfMonth } = civilFromDay(member.startDay + i);
        const shown = dayFromCivil(2023, month, month === 2 ? Math.min(28, dayOfMonth) : dayOfMonth);
        const dayOfYear = shown - dayFromCivil(2023, 1, 1) + 1;
        const outer = extraterrestrialRadiationMJPerM2Day(dublin.site.latitudeDeg, dayOfYear);
        const bounds = clearnessBounds(noonSunAltitudeDeg(dublin.site.latitudeDeg, dayOfYear));
        const share = member.radiationMJPerM2Day[i]! / outer;
        expect(share).toBeLessThanOrEqual(bounds.clearShare + 1e-9);
        expect(share).toBeGreaterThanOrEqual(bounds.overcastShare - 1e-9);
        expect(member.tmaxC[i]! - member.tminC[i]!).toBeGreaterThan(0.4999);
        expect(member.rainMm[i]! === 0 || member.rainMm[i]! >= 1).toBe(true);
      }
    }
  });
});

describe('members from a daily record', () => {
  it('keep the date and run unbroken for a year from the start', () => {
    for (const [k, member] of weatherMembers(recorded()).entries()) {
      expect(civilFromDay(member.tmaxC[0]!)).toEqual({ year: 1991 + 2 * k, month: 9, dayOfMonth: 15 });
      for (let i = 0; i < member.tmaxC.length; i++) {
        const here = civilFromDay(member.startDay + i);
        const there = civilFromDay(member.tmaxC[i]!);
        expect([there.month, there.dayOfMonth]).toEqual([here.month, here.dayOfMonth]);
        if (i > 0 && i < 365) expect(member.tmaxC[i]! - member.tmaxC[i - 1]!).toBeLessThanOrEqual(2);
      }
    }
  });

  it('use disjoint days for planning and checking, wrapping within their own years', () => {
    const daysOf = (purpose: 'plan' | 'check'): Set<number> =>
      new Set(
        weatherMembers(recorded({ purpose, memberCount: 9, dayCount: 1500 })).flatMap((m) => [...m.tmaxC]),
      );
    const plan = daysOf('plan');
    for (const day of daysOf('check')) expect(plan.has(day)).toBe(false);
    const members = weatherMembers(recorded({ memberCount: 7 }));
    expect(members[6]!.tmaxC[0]).toBe(members[0]!.tmaxC[0]);
  });

  it('gives 29 February the day before where the record year has none', () => {
    const startDay = dayFromCivil(2028, 2, 27);
    const member = weatherMembers(recorded({ startDay, dayCount: 5, memberCount: 1 }))[0]!;
    expect([...member.tmaxC].map((day) => civilFromDay(day).dayOfMonth)).toEqual([27, 28, 28, 1, 2]);
  });

  it('can start on 29 February and use the whole record', () => {
    const startDay = dayFromCivil(2028, 2, 29);
    expect(weatherYearsIn(record(1991, 2002), startDay)).toHaveLength(11);
    for (const member of weatherMembers(recorded({ startDay, dayCount: 1200, memberCount: 6 }))) {
      expect(member.tmaxC.every((day) => day >= dayFromCivil(1991, 1, 1))).toBe(true);
    }
  });

  it('shares the only year when a record has but one', () => {
    const one = { kind: 'daily', record: record(1991, 1992) } as const;
    expect(weatherMembers(recorded({ source: one, purpose: 'check', memberCount: 2 }))).toHaveLength(2);
  });
});
