import { describe, expect, it } from 'vitest';
import { groupsOf } from './groups.ts';
import { groupsTable } from './report-tables.ts';
import { countProblems } from './row-counts.ts';
import { truthRows } from './truth-row.ts';

const height = truthRows('height', 'm', 'a ruler');
const rows = [height('of a post', 2, 2.1, 0.2), height('of a wall', 3, 2.7, 0.1)];

describe('the report', () => {
  it('gives mean and largest error without sign, and names the worst', () => {
    const [group] = groupsOf(rows, false);
    expect(group).toMatchObject({ name: 'height', n: 2, unit: 'm', meanError: 0.2, largestError: 0.3 });
    expect(group).toMatchObject({ withinShare: 0.5, dropped: 0, never: 0 });
    expect(group!.worst).toEqual([
      { id: 'height: of a wall', error: 0.3, tolerance: 0.1, unit: 'm', expected: 3, got: 2.7 },
    ]);
    expect(groupsTable([group!], [])).toContain('| height | m | 2 | 0.2 | 0.3 | 50 % | 0 | 0 |  |  |  |  |');
  });

  it('keeps what a held-out row expects to itself', () => {
    const [group] = groupsOf(rows, true);
    expect(group!.name).toBe('height, held out');
    expect(group!.worst).toEqual([{ id: 'height: of a wall', error: 0.3, tolerance: 0.1, unit: 'm' }]);
  });

  it('drops nothing: a row without a number and one that never comes count as not met', () => {
    const more = [
      height('of a cloud', 900, Number.NaN, 1e9),
      height('of the sky', 1, Number.POSITIVE_INFINITY, 1e9),
    ];
    expect(groupsOf([...rows, ...more], false)[0]).toMatchObject({
      n: 4,
      withinShare: 0.25,
      dropped: 1,
      never: 1,
      largestError: 0.3,
    });
  });

  it('fails a row gone missing, a group gone missing, an uncounted one and a name used twice', () => {
    expect(countProblems(rows, { height: 2 }, 'counts')).toEqual([]);
    expect(countProblems(rows.slice(1), { height: 2 }, 'counts')[0]).toContain('1 went missing');
    expect(countProblems([], { height: 2 }, 'counts')[0]).toContain('2 went missing');
    expect(countProblems(rows, { height: 1 }, 'counts')).toHaveLength(1);
    expect(countProblems(rows, {}, 'counts')).toHaveLength(1);
    expect(countProblems([rows[0]!, rows[0]!], { height: 2 }, 'counts')).toHaveLength(1);
  });
});
