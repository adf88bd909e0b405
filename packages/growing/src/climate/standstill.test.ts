import { describe, expect, it } from 'vitest';
import { standstillPeriod } from './standstill.ts';
import { stationById } from './stations.ts';

describe('standstill', () => {
  it('spans the new year in the north and midyear in the south', () => {
    const dublin = stationById('dublin')!;
    const north = standstillPeriod(dublin.site, dublin.normals);
    expect(north.shortDays!.fromDayOfYear).toBeGreaterThan(north.shortDays!.toDayOfYear);
    expect(north.lowLight!.days).toBeLessThan(north.shortDays!.days);
    const invercargill = stationById('invercargill')!;
    const south = standstillPeriod(invercargill.site, invercargill.normals);
    expect(south.shortDays!.fromDayOfYear).toBeGreaterThan(110);
    expect(south.shortDays!.toDayOfYear).toBeLessThan(235);
  });

  it('is null where there is none, or where nothing is known of the light', () => {
    const site = { latitudeDeg: 30, longitudeDeg: 0, elevationM: 0, coastal: false };
    expect(standstillPeriod(site)).toEqual({ shortDays: null, lowLight: null });
  });
});
