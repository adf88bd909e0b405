import { invariant } from '@twelvemonth/basis';
import { tables } from '../generated/catalogue.ts';
import type { TableRow } from './crop-type.ts';
import { TableReader } from './table-reader.ts';
import { type SubjectSort, unpackRow } from './table-types.ts';

/** A reader for each subject of one sort, in the order of the tables: `hazard:carrot-fly` has the id `carrot-fly`. */
export function readEach<T>(sort: SubjectSort, build: (id: string, read: TableReader) => T): readonly T[] {
  const prefix = `${sort}:`;
  const subjects = Object.keys(tables.rowsBySubject).filter((subject) => subject.startsWith(prefix));
  return subjects.map((subject) => {
    const rows = new Map<string, TableRow>(
      (tables.rowsBySubject[subject] ?? []).map((packed) => [packed[0], unpackRow(subject, packed)]),
    );
    const read = new TableReader(subject, rows, tables.parameters[sort]);
    const built = build(subject.slice(prefix.length), read);
    invariant(read.issues.length === 0, 'the compiler lets only whole rows through', { issues: read.issues });
    return built;
  });
}
