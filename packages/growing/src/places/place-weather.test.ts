import { dayFromCivil } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { weatherMembers } from '../climate/members.ts';
import { stationById } from '../climate/stations.ts';
import { waterShares } from './ground-water.ts';
import { hardenedShares } from './hardening.ts';
import type { CoverInstance, CoverMaterial, Exposure, PlaceWeather } from './place.ts';
import { diffuseShare, hiddenBeamShare } from './place-light.ts';
import { placeWeather } from './place-weather.ts';

const { site, normals } = stationById('dublin')!;
const outdoor = weatherMembers({
  site,
  source: { kind: 'normals', normals },
  seed: 1,
  purpose: 'plan',
  memberCount: 1,
  startDay: dayFromCivil(2025, 1, 1),
  dayCount: 730,
})[0]!;
const exposure = (
  material: CoverMaterial,
  change: Partial<Exposure> = {},
  cover: Partial<CoverInstance> = {},
): Exposure => ({
  cover: { id: 'c', material, ageYears: 0, ventAboveC: null, faces: null, ...cover },
  winterSun: 'all',
  aspect: 'flat',
  frostPocket: false,
  wet: false,
  windy: false,
  watered: true,
  ...change,
});
const weather = (e: Exposure, offsetC = 0): PlaceWeather => placeWeather(site, outdoor, e, offsetC);
const mean = (values: ArrayLike<number>, from = 0, to = values.length): number => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum / (to - from);
};

describe('place weather', () => {
  it('leaves open level ground as it is outdoors', () => {
    const open = weather(exposure('open'));
    expect([...open.tmaxC]).toEqual([...outdoor.tmaxC]);
    expect([...open.tminC]).toEqual([...outdoor.tminC]);
    expect([...open.radiationMJPerM2Day]).toEqual([...outdoor.radiationMJPerM2Day]);
  });

  it('warms a tunnel by day, hardly by night, and holds it near the vent point while it is cooler outside', () => {
    const tunnel = weather(exposure('polytunnel'));
    for (let i = 0; i < 730; i++) {
      const nightLiftC = tunnel.tminC[i]! - outdoor.tminC[i]!;
      expect(nightLiftC).toBeGreaterThanOrEqual(0);
      expect(nightLiftC).toBeLessThanOrEqual(1.5 + 1e-9);
      expect(tunnel.tmaxC[i]!).toBeGreaterThan(outdoor.tmaxC[i]!);
      if (outdoor.tmaxC[i]! < 12) expect(tunnel.tmaxC[i]!).toBeLessThanOrEqual(24);
    }
    const liftC = mean(tunnel.tmaxC) - mean(outdoor.tmaxC);
    expect(liftC).toBeGreaterThan(2.5);
    expect(liftC).toBeLessThan(6);
  });

  it('lets in less light with the age of the film', () => {
    const light = (ageYears: number): number =>
      mean(weather(exposure('polytunnel', {}, { ageYears })).radiationMJPerM2Day) /
      mean(outdoor.radiationMJPerM2Day);
    expect(light(0)).toBeCloseTo(0.76, 6);
    expect(light(6)).toBeCloseTo(0.58, 6);
    expect(light(40)).toBeCloseTo(0.5, 6);
  });

  it('adds the offset of a cover and lowers a frost pocket on clear nights only', () => {
    const plain = weather(exposure('glass'));
    const learned = weather(exposure('glass'), 0.7);
    expect(mean(learned.tminC) - mean(plain.tminC)).toBeCloseTo(0.7, 6);
    const pocket = weather(exposure('open', { frostPocket: true }));
    for (let i = 0; i < 730; i++) {
      const lower = outdoor.tminC[i]! - pocket.tminC[i]!;
      if (outdoor.tmaxC[i]! - outdoor.tminC[i]! <= 6) expect(lower).toBe(0);
      else expect(lower).toBeGreaterThan(0);
    }
  });

  it('takes the beam of the low sun away behind a hedge and leaves summer alone', () => {
    const open = weather(exposure('open'));
    const hedge = weather(exposure('open', { winterSun: 'none' }));
    const half = weather(exposure('open', { winterSun: 'half' }));
    const share = (w: PlaceWeather, from: number, to: number): number =>
      mean(w.radiationMJPerM2Day, from, to) / mean(open.radiationMJPerM2Day, from, to);
    expect(share(hedge, 0, 31)).toBeGreaterThan(0.55);
    expect(share(hedge, 0, 31)).toBeLessThan(0.72);
    expect(share(half, 0, 31)).toBeGreaterThan(share(hedge, 0, 31));
    expect(share(hedge, 150, 240)).toBe(1);
    expect(hiddenBeamShare('none', 18)).toBe(1);
    expect(diffuseShare(0.1)).toBeGreaterThan(diffuseShare(0.6));
  });

  it('keeps a sill warm and a mat at its thermostat, with little light', () => {
    const south = weather(exposure('windowsill', {}, { faces: 'south' }));
    const north = weather(exposure('windowsill', {}, { faces: 'north' }));
    expect(mean(south.soilC, 0, 60)).toBeGreaterThan(16);
    expect(mean(south.soilC, 0, 60)).toBeLessThan(19.5);
    expect(mean(south.radiationMJPerM2Day, 0, 60)).toBeGreaterThan(
      2.5 * mean(north.radiationMJPerM2Day, 0, 60),
    );
    const mat = weather(exposure('heated-mat'));
    expect(mean(mat.soilC)).toBe(21);
  });

  it('dries unwatered ground in summer and never watered ground', () => {
    expect(mean(weather(exposure('open')).waterShare)).toBe(1);
    const dry = weather(exposure('open', { watered: false }));
    expect(mean(dry.waterShare, 170, 230)).toBeLessThan(0.9);
    expect(mean(dry.waterShare, 0, 60)).toBeGreaterThan(0.97);
    expect(Math.min(...dry.waterShare)).toBeGreaterThanOrEqual(0);
  });

  it('leaves deep roots water when shallow ones go short', () => {
    const dry = weather(exposure('open', { watered: false }));
    const summer = (share: Float64Array): number => mean(share, 150, 240);
    expect(summer(dry.middleWaterShare)).toBeGreaterThan(summer(dry.waterShare) + 0.03);
    expect(summer(dry.deepWaterShare)).toBeGreaterThan(summer(dry.middleWaterShare) + 0.01);
    const watered = weather(exposure('open'));
    expect(Math.min(...watered.deepWaterShare)).toBe(1);
  });

  it('a bucket of each depth runs dry as FAO-56 reckons it', () => {
    const none = new Float64Array(60);
    const five = new Float64Array(60).fill(5);
    // Readily available water, mm: 140 · depth · p; a dry day takes 0.9 · 5 mm.
    for (const [rooting, easyMm] of [
      ['shallow', 16.8],
      ['middle', 37.8],
      ['deep', 50.4],
    ] as const) {
      const firstShort = waterShares(rooting, none, five).findIndex((share) => share < 1);
      expect(firstShort).toBe(Math.floor(easyMm / 4.5) + 1);
    }
  });

  it('says from when ground can be worked, later in a wet place', () => {
    const dry = weather(exposure('open'));
    const wet = weather(exposure('open', { wet: true }));
    const waiting = (w: PlaceWeather): number =>
      w.workableDay.reduce((sum, day, i) => sum + day - (w.startDay + i), 0);
    expect(waiting(wet)).toBeGreaterThan(waiting(dry));
    for (let i = 1; i < 730; i++) {
      expect(dry.workableDay[i]!).toBeGreaterThanOrEqual(dry.workableDay[i - 1]!);
      expect(dry.workableDay[i]!).toBeGreaterThanOrEqual(dry.startDay + i);
    }
  });
});

describe('hardening', () => {
  const run = (...spells: [days: number, tmax: number, tmin: number][]): number[] => {
    const tmax = spells.flatMap(([days, t]) => new Array<number>(days).fill(t));
    const tmin = spells.flatMap(([days, , t]) => new Array<number>(days).fill(t));
    return [...hardenedShares(tmax, tmin)];
  };

  it('comes in days, is near its most in two weeks, and is half lost in one warm day', () => {
    const shares = run([10, 20, 14], [30, 3, -2], [2, 20, 17]);
    expect(shares[9]!).toBeLessThan(0.02);
    expect(shares[39]!).toBeGreaterThan(0.95);
    expect(shares[23]!).toBeGreaterThan(0.9);
    expect(shares[40]! / shares[39]!).toBeGreaterThan(0.45);
    expect(shares[40]! / shares[39]!).toBeLessThan(0.65);
  });

  it('hardly happens above four degrees', () => {
    expect(run([40, 9, 6]).at(-1)!).toBeLessThan(0.15);
  });
});
