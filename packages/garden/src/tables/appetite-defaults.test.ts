import { expect, test } from 'vitest';
import { defaultAppetite } from './appetite-defaults.ts';

const seasoning = ['garlic', 'herbs', 'potatoes'];

test('the usual plate stays level through the year', () => {
  const plates = Array.from({ length: 12 }, (_, month) =>
    defaultAppetite
      .filter(({ role }) => !seasoning.includes(role))
      .reduce((sum, row) => sum + row.servingsPerWeekByMonth[month]!, 0),
  );
  expect(Math.min(...plates)).toBeGreaterThanOrEqual(14);
  expect(Math.max(...plates)).toBeLessThanOrEqual(17);
});

test('each role stands once, with twelve months and shares of 0 to 1', () => {
  expect(new Set(defaultAppetite.map(({ role }) => role)).size).toBe(13);
  for (const row of defaultAppetite) {
    expect(row.servingsPerWeekByMonth, row.role).toHaveLength(12);
    expect(Math.min(...row.servingsPerWeekByMonth)).toBeGreaterThanOrEqual(0);
    expect(row.boughtShare).toBeGreaterThanOrEqual(0);
    expect(row.boughtShare).toBeLessThanOrEqual(1);
  }
});
