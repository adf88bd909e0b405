import { describe, expect, it } from 'vitest';
import { climateTruthRows } from './rows.ts';

const rows = climateTruthRows();

describe('climate against the outside world', () => {
  it('compares something everywhere', () => {
    expect(rows.length).toBeGreaterThan(350);
    expect(new Set(rows.map((row) => `${row.quantity}/${row.case}`)).size).toBe(rows.length);
  });

  it.each(rows)('$quantity: $case', (row) => {
    expect(row.source).not.toBe('');
    expect(row.tolerance).toBeGreaterThan(0);
    expect(
      Math.abs(row.got - row.expected),
      `${row.got} ${row.unit}, expected ${row.expected}`,
    ).toBeLessThanOrEqual(row.tolerance);
  });
});
