import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { stationById } from '@twelvemonth/growing';
import { describe, expect, it } from 'vitest';
import { climateOfGarden } from './climate-garden.ts';
import type { ClimateReport } from './report/forecast-report.ts';

const day = (iso: string): number => dayFromIso(iso)!;
const example = (name: string): Garden => {
  const text = readFileSync(new URL(`../../../examples/${name}.jsonc`, import.meta.url), 'utf8');
  return parseGarden(text, { today: day('2026-08-20') }).garden!;
};
const at = (garden: Garden, from: string, memberCount = 12): ClimateReport =>
  climateOfGarden(garden, { memberCount, seed: 1, fromDay: day(from) }, null);

const marram = example('marram-end');
const report = at(marram, '2026-08-20', 30);
const placeNamed = (name: string, month: number): ClimateReport['months'][number]['places'][number] =>
  report.months[month - 1]!.places.find((place) => place.placeNames.includes(name))!;

describe('the climate of a garden', () => {
  it('returns the normals of its station', () => {
    const { normals } = stationById('valentia')!;
    for (const { month, tmaxC, tminC, rainMm } of report.months) {
      expect(Math.abs(tmaxC - normals.tmaxC[month - 1]!)).toBeLessThan(0.6);
      expect(Math.abs(tminC - normals.tminC[month - 1]!)).toBeLessThan(0.6);
      expect(rainMm / normals.rainMm[month - 1]!).toBeGreaterThan(0.75);
      expect(rainMm / normals.rainMm[month - 1]!).toBeLessThan(1.25);
    }
    expect(report.station).toBe('Valentia');
  });

  it('shows each different weather once, the uncovered ground first, every place in one of them', () => {
    for (const { places } of report.months) {
      expect(places[0]!.exposure).toBe('open/all/flat');
      expect(new Set(places.map((place) => place.exposure)).size).toBe(places.length);
      expect(places.flatMap((place) => place.placeNames).sort()).toEqual(
        marram.places.map((place) => place.name).sort(),
      );
    }
  });

  it('shows a warm tunnel with less light, a hedge that takes winter light, growth at a standstill in December', () => {
    for (let month = 1; month <= 12; month++) {
      const open = placeNamed('upper beds', month);
      const tunnel = placeNamed('tunnel beds', month);
      expect(tunnel.tmaxC).toBeGreaterThan(open.tmaxC + 1);
      expect(tunnel.radiationMJPerM2Day).toBeLessThan(open.radiationMJPerM2Day);
      expect(tunnel.frostNights).toBeLessThanOrEqual(open.frostNights);
    }
    const hedge = placeNamed('beds behind the hedge', 12);
    expect(hedge.growth).toBeLessThan(0.7 * placeNamed('upper beds', 12).growth);
    expect(placeNamed('tunnel beds', 12).growth).toBeLessThan(0.3 * placeNamed('tunnel beds', 10).growth);
  });

  it('names the next standstill and frosts that lie on the right side of summer, whenever it is asked', () => {
    for (const from of ['2026-01-10', '2026-03-01', '2026-06-30', '2026-08-20', '2026-11-30']) {
      const { standstill, frost } = at(marram, from);
      expect(standstill!.to >= from).toBe(true);
      expect(standstill!.from.slice(5, 7)).toBe('10');
      expect(standstill!.to.slice(5, 7)).toBe('02');
      const spring = frost.lastSpring.p50!.slice(5);
      expect(spring > '01-15' && spring < '05-31').toBe(true);
      const autumn = frost.firstAutumn.p50!;
      expect(['10', '11', '12', '01', '02']).toContain(autumn.slice(5, 7));
    }
    expect(at(marram, '2026-03-01').frost.lastSpring.p50!.slice(0, 4)).toBe('2026');
  });

  it('turns the year round in the south', () => {
    const south = at(example('southern-plot'), '2026-09-15');
    expect(south.months[0]!.tmaxC).toBeGreaterThan(south.months[6]!.tmaxC);
    expect(south.standstill!.from.slice(5, 7)).toBe('05');
    expect(south.frost.lastSpring.p50!.slice(5, 7) >= '07').toBe(true);
    expect(south.frost.firstAutumn.p50! > south.frost.lastSpring.p50!).toBe(true);
  });

  it('draws the same weather twice', () => {
    expect(at(marram, '2026-08-20', 4)).toEqual(at(marram, '2026-08-20', 4));
  });
});
