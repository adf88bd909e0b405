/** How many rows there must be: a row that quietly goes missing is a failure, a new one has to be counted in. */
import { groupNameOf } from './groups.ts';
import { type TruthRow, truthRowId } from './truth-row.ts';

export type Counts = Readonly<Record<string, number>>;

export function countsOf(rows: readonly TruthRow[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const row of rows) counts[groupNameOf(row)] = (counts[groupNameOf(row)] ?? 0) + 1;
  return counts;
}

export function countProblems(rows: readonly TruthRow[], expected: Counts, file: string): string[] {
  const counts = countsOf(rows);
  const ids = rows.map(truthRowId);
  return [
    ...[...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))].map((id) => `${id}: two rows of that name`),
    ...[...new Set([...Object.keys(counts), ...Object.keys(expected)])].flatMap((name) => {
      const [got, due] = [counts[name] ?? 0, expected[name] ?? 0];
      if (got < due) return [`${name}: ${got} rows, ${due} expected: ${due - got} went missing`];
      return got > due ? [`${name}: ${got} rows, ${file} says ${due}: count the new ones in`] : [];
    }),
  ];
}
