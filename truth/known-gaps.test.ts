import { describe, expect, it } from 'vitest';
import { fixedHash } from './fixed-hash.ts';
import { gapProblems, parseKnownGaps, readKnownGaps } from './known-gaps.ts';
import { heldOutIds, openTruthRows } from './report-rows.ts';
import { calendarId, yearlyCalendarRows } from './trade/calendar.ts';
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

const rows = openTruthRows();
const gaps = readKnownGaps();
const listed = new Set(gaps.map((gap) => gap.id));

describe('growth and trade against the outside world', () => {
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

describe('held-out rows', () => {
  it('are the fifth of the calendar that the hash picks', () => {
    const ids = yearlyCalendarRows().map(calendarId);
    const picked = ids.toSorted((a, b) => fixedHash(a) - fixedHash(b)).slice(0, Math.round(ids.length / 5));
    expect([...heldOutIds]).toEqual(picked.toSorted());
    expect(rows.some((row) => heldOutIds.some((id) => row.case.startsWith(id)))).toBe(false);
  });
});
