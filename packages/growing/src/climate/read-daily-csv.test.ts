import { dayFromCivil, isoFromDay } from '@twelvemonth/basis';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dailyIssueCodes } from './daily-issues.ts';
import { readDailyCsv } from './read-daily-csv.ts';
import { stationById } from './stations.ts';

const { site } = stationById('dublin')!;
const header = 'date,tmax_c,tmin_c,rain_mm,rad_mj,sun_h';
const rows = (count = 800): string[] =>
  Array.from({ length: count }, (_, i) => `${isoFromDay(dayFromCivil(2020, 1, 1) + i)},12,5,1.2,8,4`);
const read = (lines: readonly string[], head = header) =>
  readDailyCsv(`# note\n${head}\n${lines.join('\n')}\n`, site);
const codes = (lines: readonly string[], head = header): string[] =>
  read(lines, head).issues.map((i) => i.code);
function changed(at: number, line: string): string[] {
  const lines = rows();
  lines[at] = line;
  return lines;
}

describe('reading a daily file', () => {
  it('reads a clean file without a word', () => {
    const { record, issues } = read(rows());
    expect(issues).toEqual([]);
    expect(record!.startDay).toBe(dayFromCivil(2020, 1, 1));
    expect(record!.tmaxC).toHaveLength(800);
    expect(record!.radiationMJPerM2Day[799]).toBe(8);
  });

  it('takes other headers, separators, line ends and a byte order mark', () => {
    const body = rows(731).map((line) => line.split(',').slice(0, 4).join(';').replace('1.2', '1,2'));
    const text = `\uFEFFDate;Max Temp;Min Temp;Rain (mm)\r\n${body.join('\r\n')}`;
    const { record, issues } = readDailyCsv(text, site);
    expect(issues.map((i) => i.code)).toEqual(['daily-radiation-estimated']);
    expect(record!.rainMm[3]).toBe(1.2);
    expect(record!.radiationMJPerM2Day[5]!).toBeGreaterThan(0.3);
  });

  it('bridges five missing days and refuses six', () => {
    const five = rows();
    five.splice(100, 5);
    five[99] = five[99]!.replace(',12,', ',6,');
    const bridged = read(five);
    expect(bridged.issues[0]).toMatchObject({
      code: 'daily-short-gap-bridged',
      severity: 'warning',
      where: 'line 102',
    });
    expect(bridged.record!.tmaxC[102]).toBeCloseTo(9, 6);
    const six = rows();
    six.splice(100, 6);
    expect(read(six).record).toBeNull();
    expect(codes(six)).toContain('daily-long-gap');
  });

  it.each([
    ['daily-bad-date', changed(5, '2020-02-31,12,5,1,8,4')],
    ['daily-bad-number', changed(5, '2020-01-06,warm,5,1,8,4')],
    ['daily-impossible-value', changed(5, '2020-01-06,99,5,1,8,4')],
    ['daily-tmax-below-tmin', changed(5, '2020-01-06,3,5,1,8,4')],
    ['daily-duplicate-day', changed(5, '2020-01-05,12,5,1,8,4')],
    ['daily-unsorted', [...rows().slice(1), rows()[0]!]],
    ['daily-line-too-long', changed(5, 'x'.repeat(5000))],
    ['daily-span-impossible', [...rows(), '9998-01-01,12,5,1,8,4']],
    ['daily-record-short', rows(300)],
    ['daily-no-rows', []],
    [
      'daily-more-of-the-same',
      rows().map((line, i) => (i < 90 && i % 3 === 0 ? line.replace(',12,', ',77,') : line)),
    ],
  ])('says %s', (code, lines) => {
    expect(codes(lines)).toContain(code);
  });

  it('stops at a file that is far too long', () => {
    const { record, issues } = readDailyCsv(`${header}\n${'2020-01-01,1,0,0,1,1\n'.repeat(400_000)}`, site);
    expect(record).toBeNull();
    expect(issues.map((i) => i.code)).toContain('daily-too-many-lines');
  });

  it('says what is wrong with the header', () => {
    expect(codes(rows(), 'a,b,c')).toEqual(['daily-no-header']);
    expect(codes(rows(), 'date,tmax,rain')).toEqual(['daily-column-missing']);
    expect(readDailyCsv('', site).issues.map((i) => i.code)).toEqual(['daily-no-header']);
  });

  it('never throws on noise and only says codes it has declared', () => {
    const piece = fc.oneof(
      fc.string(),
      fc.constantFrom(header, '\n', ',', '2020-01-01,1,0,0', '2020-01-03,NaN,-,1e99'),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        for (const issue of readDailyCsv(pieces.join('\n'), site).issues) {
          expect(dailyIssueCodes).toContain(issue.code);
        }
      }),
      { numRuns: 200 },
    );
  });
});
