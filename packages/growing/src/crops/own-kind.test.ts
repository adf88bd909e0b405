import { expect, test } from 'vitest';
import { kindById } from './catalogue.ts';
import { assembleOwnKind } from './own-kind.ts';

const request = (changes: Parameters<typeof assembleOwnKind>[0]['changes']) =>
  assembleOwnKind({ id: 'our-leek', parent: 'leek', changes });

const codesOf = (changes: Parameters<typeof assembleOwnKind>[0]['changes']): string[] => {
  const own = request(changes);
  return 'issues' in own ? own.issues.map((issue) => issue.code) : [];
};

test('an own kind is its parent but for what was changed', () => {
  const own = request({ name: 'our leek', 'in-row-cm': 20 });
  const parent = kindById('leek')!;
  expect(own).toHaveProperty('kind');
  if (!('kind' in own)) return;
  expect(own.kind).toEqual({ ...parent, id: 'our-leek', name: 'our leek', inRowCm: 20 });
  const changed = own.rows.find((row) => row.parameter === 'in-row-cm');
  expect(changed?.subject).toBe('kind:our-leek');
  expect(changed?.note).toContain('changed from ');
});

test('a changed yield stretches its range along', () => {
  const harvest = kindById('leek')!.harvests[0]!;
  const own = request({ [`harvest.${harvest.id}.yield-g-per-plant`]: harvest.yieldGPerPlant * 1.5 });
  if (!('kind' in own)) throw new Error(JSON.stringify(own.issues));
  expect(own.kind.harvests[0]!.yieldHighGPerPlant).toBeCloseTo(harvest.yieldHighGPerPlant * 1.5, 6);
});

test('what cannot be right is an issue, never thrown', () => {
  expect(codesOf({ 'in-row-inch': 8 })).toEqual(['own-kind.parameter-unknown']);
  expect(codesOf({ 'in-row-cm': 2000 })).toEqual(['own-kind.outside-plausible']);
  expect(codesOf({ 'in-row-cm': 'wide' })).toEqual(['own-kind.not-a-number']);
  expect(codesOf({ 'starts-as': 'sprout' })).toEqual(['own-kind.not-allowed']);
  expect(codesOf({ crop: 'woad' })).toEqual(['own-kind.crop-unknown']);
  expect(codesOf({ 'in-row-cm': { value: 20, low: 25, high: 30 } })).toEqual(['own-kind.range-disordered']);
  expect(codesOf({ harvests: 'nuts' })).toContain('table.harvest-not-listed');
});

test('a parent that is not there and an id that is taken are refused', () => {
  const orphan = assembleOwnKind({ id: 'x', parent: 'woad', changes: {} });
  expect('issues' in orphan && orphan.issues[0]?.code).toBe('own-kind.parent-unknown');
  const taken = assembleOwnKind({ id: 'kale', parent: 'leek', changes: {} });
  expect('issues' in taken && taken.issues[0]?.code).toBe('own-kind.id-taken');
});
