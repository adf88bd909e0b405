import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { type Garden, parseGarden } from '@twelvemonth/garden';
import { kindById } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { forecastGarden } from '../forecast-garden.ts';
import { issuesOfGarden } from '../garden-issues.ts';
import { kindIdsOf, kindOf, kindsOf, ownRowsOf } from './garden-kinds.ts';

const today = dayFromIso('2026-08-20')!;
const file = new URL('../../../../examples/marram-end.jsonc', import.meta.url);

/** The demo household with one more own kind. */
function withOwnKind(written: Record<string, unknown>): Garden {
  const text = readFileSync(file, 'utf8').replace(
    '"standing": [',
    `"ownKinds": [${JSON.stringify({ id: 'our-beet', like: 'beetroot', name: 'our beet', ...written })}],\n  "standing": [`,
  );
  const { garden, issues } = parseGarden(text, { today });
  if (garden === null) throw new Error(JSON.stringify(issues));
  return garden;
}

test('an own kind stands beside those of the catalogue', () => {
  const garden = withOwnKind({ weeksToHarvest: 9, inRowCm: 8, rowCm: 25 });
  expect(kindOf(garden, 'our-beet')?.inRowCm).toBe(8);
  expect(kindOf(garden, 'leek')).toBe(kindById('leek'));
  expect(kindsOf(garden).map((kind) => kind.id)).toEqual(kindIdsOf(garden));
  expect(kindIdsOf(garden)).toContain('our-beet');
  expect(ownRowsOf(garden, 'our-beet')?.find((row) => row.parameter === 'in-row-cm')?.value).toBe('8');
  expect(issuesOfGarden(garden, today).filter((issue) => issue.where.startsWith('ownKinds'))).toEqual([]);
});

test('a quicker packet is forecast earlier', () => {
  const middleOf = (garden: Garden, kind: string): string => {
    const request = { kind, sowDay: dayFromIso('2027-04-20')!, route: 'direct', place: 'home-south' };
    const { report } = forecastGarden(garden, { ...request, count: 50, memberCount: 10, seed: 1 }, null);
    return report!.firstHarvest.p50!;
  };
  const garden = withOwnKind({ daysToHarvest: 55 });
  expect(middleOf(garden, 'our-beet') < middleOf(garden, 'beetroot')).toBe(true);
});

test('what is wrong with an own kind is said at its place in the list', () => {
  const found = (written: Record<string, unknown>) =>
    issuesOfGarden(withOwnKind(written), today)
      .filter((issue) => issue.where === 'ownKinds[0]')
      .map((issue) => `${issue.severity} ${issue.code}`);
  expect(found({ like: 'woad' })).toEqual(['error own-kind.parent-unknown']);
  expect(found({ weeksToHarvest: 24 })).toEqual(['warning own-kind.days-contradict']);
  expect(found({ changes: { 'in-row-inch': 3 } })).toEqual(['error own-kind.parameter-unknown']);
  expect(found({ inRowCm: 290 })).toEqual(['error own-kind.outside-plausible']);
});
