import { expect, test } from 'vitest';
import {
  allHazards,
  allKinds,
  allRoles,
  calendarRows,
  familyById,
  kindById,
  kindIds,
  roleById,
  sourceById,
  tableRowsOf,
} from './index.ts';

test('every kind is whole and its harvests serve known roles', () => {
  expect(allKinds().map((kind) => kind.id)).toEqual([...kindIds]);
  for (const kind of allKinds()) {
    expect(kind.harvests.length, kind.id).toBeGreaterThan(0);
    for (const harvest of kind.harvests) {
      expect(roleById(harvest.role), `${kind.id} ${harvest.id}`).toBeDefined();
      expect(harvest.yieldLowGPerPlant).toBeLessThanOrEqual(harvest.yieldGPerPlant);
      expect(harvest.yieldHighGPerPlant).toBeGreaterThanOrEqual(harvest.yieldGPerPlant);
    }
  }
  expect(kindById('no-such-kind')).toBeUndefined();
});

test('a kind takes the most particular row and the rows say where they came from', () => {
  const rows = tableRowsOf('leek');
  const subjects = new Set(rows.map((row) => row.subject));
  expect(subjects).toContain('kind:leek');
  expect(subjects).toContain('*');
  expect(new Set(rows.map((row) => row.parameter)).size).toBe(rows.length);
  const inRow = rows.find((row) => row.parameter === 'in-row-cm');
  expect(kindById('leek')?.inRowCm).toBe(Number(inRow?.value));
});

test('every source named by a row in force is known', () => {
  for (const id of kindIds)
    for (const row of tableRowsOf(id))
      if (row.source !== '') expect(sourceById(row.source)?.title, `${id} ${row.parameter}`).toBeTruthy();
});

test('the plate holds 21 servings in every month, seasonings apart', () => {
  const plate = allRoles().filter((role) => role.id !== 'garlic' && role.id !== 'herbs');
  for (let month = 0; month < 12; month++) {
    const servings = plate.reduce((sum, role) => sum + role.servingsPerWeekByMonth[month]!, 0);
    expect(servings, `month ${month + 1}`).toBeCloseTo(21, 6);
  }
  const salad = roleById('salad-leaves')!.servingsPerWeekByMonth;
  const roots = roleById('sweet-roots')!.servingsPerWeekByMonth;
  expect(salad[5]!).toBeGreaterThan(salad[0]!);
  expect(roots[0]!).toBeGreaterThan(roots[5]!);
});

test('no role replaces itself, and potato servings are heavier than leaf servings', () => {
  for (const role of allRoles())
    for (const other of role.substitutes) {
      expect(other.role).not.toBe(role.id);
      expect(other.mostShare).toBeLessThanOrEqual(1);
    }
  expect(roleById('cooked-greens')?.substitutes).toContainEqual({
    role: 'cabbages',
    exchange: 1,
    mostShare: 0.7,
  });
  expect(roleById('potatoes')?.servingG).toBe(175);
});

test('a bad year takes more than an ordinary one, and both carrot fly flights share their bad years', () => {
  for (const hazard of allHazards()) {
    expect(hazard.badYearLossShare, hazard.id).toBeGreaterThan(hazard.lossShare);
    expect(hazard.preventedBy === null).toBe(hazard.preventedShare === 0);
  }
  const flights = allHazards().filter((hazard) => hazard.id.startsWith('carrot-fly'));
  expect(flights.map((hazard) => hazard.group)).toEqual(['carrot-fly', 'carrot-fly']);
});

test('published windows name routes and places that their kind has', () => {
  for (const row of calendarRows()) {
    const kind = kindById(row.kind);
    if (kind === undefined) continue;
    expect(kind.routes, `${row.kind} ${row.route}`).toContain(row.route);
    expect(kind.growsIn, `${row.kind} ${row.growsIn}`).toContain(row.growsIn);
  }
  const leek = calendarRows().find((row) => row.kind === 'leek');
  expect(leek).toMatchObject({ sowFromDayOfYear: 70, harvestFromDayOfYear: 274, harvestToDayOfYear: 120 });
});

test('rotation knows the disease behind the rest', () => {
  expect(familyById('Brassicaceae')).toMatchObject({
    id: 'Brassicaceae',
    restYears: 3,
    recordedDisease: 'clubroot',
  });
  expect(familyById('Cucurbitaceae')?.recordedDisease).toBeNull();
});
