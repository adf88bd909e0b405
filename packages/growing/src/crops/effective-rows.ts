import type { TableRow } from './crop-type.ts';
import { type CompiledTables, unpackRow } from './table-types.ts';

type RowsBySubject = CompiledTables['rowsBySubject'];

/** Lays the general rows under the particular ones: kind over crop over family over `*`. */
export function effectiveRows(
  rowsBySubject: RowsBySubject,
  kindId: string,
  nearest: readonly TableRow[] = [],
): ReadonlyMap<string, TableRow> {
  const rows = new Map<string, TableRow>();
  const layUnder = (subject: string): void => {
    for (const packed of rowsBySubject[subject] ?? [])
      if (!rows.has(packed[0])) rows.set(packed[0], unpackRow(subject, packed));
  };
  for (const row of nearest) rows.set(row.parameter, row);
  layUnder(`kind:${kindId}`);
  layUnder(`crop:${rows.get('crop')?.value ?? ''}`);
  layUnder(`family:${rows.get('family')?.value ?? ''}`);
  layUnder('*');
  return rows;
}
