import { readdirSync, readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { expect, test } from 'vitest';
import { gardenIssueCodes, isGardenIssueCode } from './issue-codes.ts';
import { parseGarden } from './parse.ts';

const folder = new URL('../../../../examples/broken/', import.meta.url);
const context = { today: dayFromIso('2026-08-25')! };

/** What each file must be told, in order: where, code. A file that is not listed here fails the test. */
const wanted: Readonly<Record<string, readonly string[]>> = {
  'a-list': ['line 2 file-not-a-garden'],
  'absurd-latitude': ['line 6: site.latitude latitude-impossible'],
  'amount-without-unit': ['line 10: stock[0].amount amount-needs-a-unit'],
  'bed-without-size': ['line 8: places[0] place-without-size'],
  'csv-outside': ['line 6: site.climate.dailyCsv csv-path-not-beside-file'],
  'cut-off': ['line 9 file-cut-off'],
  'duplicate-ids': ['line 8: places[1].id id-twice'],
  'eleven-normals': ['line 6: site.climate.normals normals-not-twelve'],
  empty: ['file file-empty'],
  'impossible-date': ['line 9: standing[0].sown date-impossible'],
  'impossible-plan-day': ['line 5: planFrom date-impossible'],
  'key-twice': ['line 4: invented key-twice'],
  'malformed-id': ['line 8: places[0].id id-malformed'],
  'missing-comma': ['line 5 file-not-jsonc'],
  'missing-place': ['line 9: standing[0].place place-unknown'],
  'negative-count': ['line 9: standing[0].count count-negative'],
  'negative-count-in-words': ['line 9: standing[0].count count-negative'],
  'nested-too-deep': ['file file-nested-too-deep'],
  'newer-version': ['line 3: schemaVersion newer-version'],
  'no-site': ['line 2: site value-missing'],
  'nobody-eats': ['line 5: household.people household-without-people'],
  noise: ['line 1 file-not-jsonc'],
  'not-json': ['line 1 file-not-jsonc'],
  'only-a-comment': ['file file-empty'],
  'over-full-bed': ['line 11: standing[1].groundM2 bed-over-full'],
  'place-number': ['line 9: standing[0].number place-number-unknown'],
  'planted-before-sown': ['line 9: standing[0].planted planted-before-sown'],
  'rest-and-week-unclear': [
    'line 10: wishes[0].place value-missing',
    'line 11: wishes[1].from value-missing',
    'line 12: wishes[2] wish-unclear',
    'line 13: wishes[3].kind value-missing',
  ],
  'rest-not-possible': [
    'line 10: wishes[0] dates-reversed',
    'line 13: wishes[3].from date-not-understood',
    'line 11: wishes[1].number place-number-unknown',
    'line 12: wishes[2].place place-unknown',
  ],
  'sown-in-future': ['line 10: standing[0].sown date-in-future'],
  'tmax-below-tmin': ['line 6: site.climate.normals[3] normals-tmax-below-tmin'],
  'two-climates': ['line 6: site.climate climate-unclear'],
  'unclear-amount': ['line 10: stock[0].amount amount-not-understood'],
  'unclear-date': ['line 9: standing[0].sown date-not-understood'],
  'unclear-wish': ['line 10: wishes[0] wish-unclear', 'line 10: wishes[1] wish-unclear'],
  'unknown-cover': ['line 8: places[0].cover cover-unknown'],
  'unknown-key': ['line 8: places[0].lenghtM key-unknown', 'line 8: places[0].wintersun key-unknown'],
  'unknown-word': ['line 8: places[0].winterSun value-not-offered'],
  'version-in-words': ['line 3: schemaVersion version-not-understood'],
  'weeks-away-reversed': ['line 5: household.weeksAway[0] dates-reversed'],
  'wrong-type': [
    'line 8: places[0].lengthM value-of-wrong-type',
    'line 8: places[0].watered value-of-wrong-type',
  ],
};

const files = readdirSync(folder).map((name) => name.replace(/\.jsonc$/, ''));

test('every broken example is told apart', () => {
  expect(files.sort()).toEqual(Object.keys(wanted).sort());
});

test.each(files)('%s', (name) => {
  const { garden, issues } = parseGarden(readFileSync(new URL(`${name}.jsonc`, folder), 'utf8'), context);
  expect(issues.map(({ where, code }) => `${where} ${code}`)).toEqual(wanted[name]);
  expect(garden === null).toBe(issues.some(({ severity }) => severity === 'error'));
  for (const { code, severity, detail } of issues) {
    if (!isGardenIssueCode(code)) throw new Error(`${code} is not in the list`);
    expect(severity).toBe(gardenIssueCodes[code].severity);
    expect(Object.keys(detail).sort()).toEqual([...gardenIssueCodes[code].detail].sort());
  }
});

test('misspelt names are told the nearest', () => {
  const detailOf = (name: string) =>
    parseGarden(readFileSync(new URL(`${name}.jsonc`, folder), 'utf8'), context).issues.map(
      ({ detail }) => detail.nearest,
    );
  expect(detailOf('unknown-key')).toEqual(['lengthM', 'winterSun']);
  expect(detailOf('unknown-cover')).toEqual(['tunnel']);
  expect(detailOf('missing-place')).toEqual(['north']);
  expect(detailOf('unknown-word')).toEqual(['half']);
});
