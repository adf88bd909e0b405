import { describe, expect, it } from 'vitest';
import { countProblems, summarise, summaryTable } from './report-summary.ts';
import { truthRows } from './truth-row.ts';

const height = truthRows('height', 'm', 'a ruler');
const rows = [height('of a post', 2, 2.1, 0.2), height('of a wall', 3, 2.7, 0.1)];

describe('the report', () => {
  it('gives mean and largest error, without sign', () => {
    const [summary] = summarise(rows);
    expect(summary!.meanError).toBeCloseTo(0.2);
    expect(summary!.largestError).toBeCloseTo(0.3);
    expect(summary).toMatchObject({ count: 2, metCount: 1, smallestTolerance: 0.1, largestTolerance: 0.2 });
    expect(summaryTable(rows)).toContain('| height | m | 2 | 0.2 | 0.3 | 0.1 – 0.2 | 1 | 1 |');
  });

  it('counts a row without a number as not met', () => {
    const [summary] = summarise([...rows, height('of a cloud', 900, Number.NaN, 1000)]);
    expect(summary).toMatchObject({ count: 3, metCount: 1, largestError: Number.POSITIVE_INFINITY });
  });

  it('fails a dropped sample, a dropped quantity, an uncounted one and a name used twice', () => {
    expect(countProblems(rows, { height: 2 }, 'counts')).toEqual([]);
    expect(countProblems(rows.slice(1), { height: 2 }, 'counts')[0]).toContain('1 dropped');
    expect(countProblems([], { height: 2 }, 'counts')[0]).toContain('2 dropped');
    expect(countProblems(rows, { height: 1 }, 'counts')).toHaveLength(1);
    expect(countProblems(rows, {}, 'counts')).toHaveLength(1);
    expect(countProblems([rows[0]!, rows[0]!], { height: 2 }, 'counts')).toHaveLength(1);
  });
});
