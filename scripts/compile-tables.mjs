// Checks the tables of packages/growing/tables and writes packages/growing/src/generated/catalogue.ts.
// --check writes nothing and fails also when the written file is not that of the tables.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { checkTables } from './tables/check-tables.mjs';
import { loadEngine } from './tables/engine.mjs';
import {
  readCatalogueTables,
  readParameters,
  readSources,
  sourcesNamedElsewhere,
  tablesFolder,
} from './tables/read-tables.mjs';
import { catalogueText } from './tables/write-catalogue.mjs';

const target = 'packages/growing/src/generated/catalogue.ts';
const onlyCheck = process.argv.includes('--check');

const rules = readParameters();
const tables = readCatalogueTables();
const merged = readSources();
const engine = await loadEngine();
const checked = checkTables({
  rows: tables.rows,
  rules,
  sources: merged.sources,
  namedElsewhere: sourcesNamedElsewhere(),
  engine,
});
const problems = [...tables.problems, ...merged.problems, ...checked.problems];
for (const { file, line, what, mend } of problems)
  console.error(`${tablesFolder}/${file}:${line}: ${what}. Mend: ${mend}`);
for (const { id, file } of checked.unused)
  console.warn(`warning: ${tablesFolder}/${file}: no row names source "${id}"`);

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
