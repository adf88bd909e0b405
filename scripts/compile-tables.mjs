// Checks the tables of packages/growing/tables and writes packages/growing/src/generated/catalogue.ts.
// --check writes nothing and fails also when the written file is not that of the tables.
// --tables FOLDER and --into FILE read and write elsewhere (tests).
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { checkTables } from './tables/check-tables.mjs';
import { loadEngine } from './tables/engine.mjs';
import { fieldsNoModelReads } from './tables/fields-read.mjs';
import {
  readCatalogueTables,
  readParameters,
  readSources,
  sourcesNamedElsewhere,
  usualFolder,
} from './tables/read-tables.mjs';
import { catalogueText } from './tables/write-catalogue.mjs';

const { values: options } = parseArgs({
  options: {
    check: { type: 'boolean', default: false },
    tables: { type: 'string', default: usualFolder },
    into: { type: 'string', default: 'packages/growing/src/generated/catalogue.ts' },
  },
});
const { check: onlyCheck, tables: folder, into: target } = options;

const rules = readParameters(folder);
const tables = readCatalogueTables(folder);
const merged = readSources(folder);
const engine = await loadEngine();
const checked = checkTables({
  rows: tables.rows,
  rules,
  sources: merged.sources,
  namedElsewhere: sourcesNamedElsewhere(folder),
  engine,
});
const problems = [...tables.problems, ...merged.problems, ...checked.problems];
for (const { file, line, what, mend } of problems)
  console.error(`${folder}/${file}:${line}: ${what}. Mend: ${mend}`);
for (const { id, file } of checked.unused)
  console.warn(`warning: ${folder}/${file}: no row names source "${id}"`);

if (onlyCheck && folder === usualFolder)
  for (const { parameter, field } of fieldsNoModelReads(rules))
    console.warn(`warning: ${folder}/parameters.json: no model reads ${field} ("${parameter}")`);

const used = new Set(tables.rows.map((row) => row.source));
const sources = new Map([...merged.sources].filter(([id]) => used.has(id)));
const text = catalogueText({ ...checked, rules, sources });
const before = existsSync(target) ? readFileSync(target, 'utf8') : '';
const stale = before !== text;
if (!onlyCheck && stale) writeFileSync(target, text);
if (onlyCheck && stale)
  console.error(`${target} is not that of the tables. Mend: node scripts/compile-tables.mjs`);

console.log(
  `tables: ${tables.rows.length} rows in ${tables.files.length} files, ${checked.kindIds.length} kinds whole, ` +
    `${problems.length} problems, ${checked.unused.length} unused sources`,
);
if (checked.incomplete.length > 0) console.log(`not compiled: ${checked.incomplete.join(', ')}`);
process.exitCode = problems.length > 0 || (onlyCheck && stale) ? 1 : 0;
