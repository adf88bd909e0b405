// All long tables in the folder, those of other models too: rows by column name.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { asTableRows, catalogueFiles, readCsv } from './read-tables.mjs';

export function readAnyTables(folder) {
  const files = readdirSync(folder).filter((file) => file.endsWith('.csv'));
  return [...new Set([...files, ...catalogueFiles(folder)])].sort().map((file) => {
    const { rows } = asTableRows(readCsv(readFileSync(join(folder, file), 'utf8'), file), file);
    return { file: file.replace('../../../', ''), rows };
  });
}
