import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { figureNames, figureOf, readFigures } from './figures.ts';
import { gapProblems, parseKnownGaps, readKnownGaps, targetProblems } from './known-gaps.ts';
import { truthRowsOf } from './report-rows.ts';
import { splitOf } from './split.ts';
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

const rows = truthRowsOf('calibration');
const gaps = readKnownGaps();
const listed = new Set(gaps.map((gap) => gap.id));

describe('the engine against the outside world, on the rows that a fit may see', () => {
  it.each(rows.map((row) => [truthRowId(row), row] as const))('%s', (id, row) => {
    expect(row.source).not.toBe('');
    expect(row.tolerance).toBeGreaterThanOrEqual(0);
    expect(
      isMet(row),
      listed.has(id)
        ? `${id} is met now: take its line out of known-gaps.txt`
        : `${row.got} ${row.unit}, expected ${row.expected} ± ${row.tolerance}, and not in known-gaps.txt`,
    ).toBe(!listed.has(id));
  });
});

describe('known gaps', () => {
  it('are exactly the rows that fail', () => {
    expect(gapProblems(rows, gaps)).toEqual([]);
  });

  it('hold a missed target to account as they do a row', () => {
    const [line] = parseKnownGaps('target: all fed | half | too little light | 2026-11-25\n');
    const target = { what: 'all fed', asked: '90 %', got: '50 %', reached: false };
    expect(targetProblems([target], [line!])).toEqual([]);
    expect(targetProblems([target], [])).toHaveLength(1);
    expect(targetProblems([{ ...target, reached: true }], [line!])).toHaveLength(1);
    expect(targetProblems([], [line!])).toHaveLength(1);
    expect(gapProblems([], [line!])).toEqual([]);
  });

  const row: TruthRow = {
    quantity: 'height',
    case: 'of a post',
    expected: 2,
    got: 2.5,
    tolerance: 0.1,
    unit: 'm',
    source: 'a ruler',
  };
  const [gap] = parseKnownGaps('# a remark\n\nheight: of a post | too high | bent ruler | 2026-11-25\n');

  it('are wanted for a failing row, and refused for one that is met or not there', () => {
    expect(gapProblems([row], [])).toHaveLength(1);
    expect(gapProblems([row], [gap!])).toEqual([]);
    expect(gapProblems([{ ...row, got: 2 }], [gap!])).toHaveLength(1);
    expect(gapProblems([], [gap!])).toHaveLength(1);
    expect(gapProblems([{ ...row, got: Number.NaN }], [])).toHaveLength(1);
  });

  it.each([
    'height: of a post | too high | bent ruler',
    'a | b | c | soon',
    'a | b | c | 2026-11-25 | e',
    'a | b | c | 2026-11-25\na | b | c | 2026-11-25',
  ])('refuse the line %j', (line) => {
    expect(() => parseKnownGaps(line)).toThrow(/known-gaps\.txt line/);
  });
});

describe('the split', () => {
  it('is that of SHA-256: known digests, by their last hex digit', () => {
    // Their digests end in …15ad, …b855, …48bb and …ab35 (abc and the empty text: FIPS 180-4); that of "d" in …f8e4.
    expect(['abc', '', 'a', '2'].map(splitOf)).toEqual([
      'calibration',
      'calibration',
      'calibration',
      'calibration',
    ]);
    expect(splitOf('d')).toBe('held-out');
  });

  it('has put every figure into its folder', () => {
    for (const name of figureNames())
      for (const split of ['calibration', 'held-out'] as const) {
        const figures = readFigures(name, split);
        if (split === 'calibration') expect(figures.length, name).toBeGreaterThan(0);
        for (const figure of figures) expect(splitOf(figureOf(figure)), figure.id).toBe(split);
      }
  });

  it.each([
    ['calibration', '../packages/growing/tables/calendar.csv'],
    ['held-out', './held-out/calendar.csv'],
  ] as const)('has put every sowing window that is for %s into its file', (split, file) => {
    const subjects = readFileSync(new URL(file, import.meta.url), 'utf8')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.slice(0, line.indexOf(',')).replace(':', ': '));
    expect(subjects.length).toBeGreaterThan(40);
    expect(subjects.filter((id) => splitOf(id) !== split)).toEqual([]);
  });
});
