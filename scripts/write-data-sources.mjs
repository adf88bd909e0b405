// Writes docs/data-sources.md from the tables and their sources; --check fails when the page is not that of the tables.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { readAnyTables } from './tables/read-any-tables.mjs';
import { readSources, usualFolder } from './tables/read-tables.mjs';

const target = 'docs/data-sources.md';
const bases = ['measured', 'handbook', 'practice', 'memory', 'judged'];
const meaning = {
  measured: 'a trial, a survey, a station record or a law',
  handbook: 'printed in a handbook, guide or review',
  practice: 'what gardeners commonly do, or a plain word such as a name or a route',
  memory: 'recalled from a known work whose page could not be opened; to be confirmed',
  judged: 'no source found: our own value, with a range and a reason',
};

const tables = readAnyTables(usualFolder);
const { sources } = readSources(usualFolder);
const cell = (text) => String(text ?? '').replaceAll('|', '\\|');
const countBy = (rows, key) => {
  const counts = new Map();
  for (const row of rows) counts.set(row[key], (counts.get(row[key]) ?? 0) + 1);
  return counts;
};

function basisTable() {
  const lines = [`| table | rows | ${bases.join(' | ')} |`, `|---|---|${bases.map(() => '---').join('|')}|`];
  const all = [];
  for (const { file, rows } of tables) {
    const counts = countBy(rows, 'basis');
    lines.push(`| ${file} | ${rows.length} | ${bases.map((basis) => counts.get(basis) ?? 0).join(' | ')} |`);
    all.push(...rows);
  }
  const counts = countBy(all, 'basis');
  lines.push(`| all | ${all.length} | ${bases.map((basis) => counts.get(basis) ?? 0).join(' | ')} |`);
  return lines;
}

function sourceTable() {
  const used = new Map();
  for (const { file, rows } of tables)
    for (const { source } of rows) {
      const entry = used.get(source) ?? { rows: 0, files: new Set() };
      entry.rows += 1;
      entry.files.add(file.replace('.csv', ''));
      used.set(source, entry);
    }
  const lines = ['| id | work | where read | licence | rows | tables |', '|---|---|---|---|---|---|'];
  for (const [id, { entry }] of [...sources].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const work = [entry.authors, entry.year, entry.title, entry.publisher].filter(Boolean);
    const { rows = 0, files = [] } = used.get(id) ?? {};
    const noted = [entry.where, entry.note].filter(Boolean).join('; ');
    lines.push(
      `| ${id} | ${cell(work.map((part) => String(part).replace(/\.$/, '')).join('. '))} | ${cell(noted)} | ${cell(entry.licence)} | ${rows} | ${[...files].join(', ')} |`,
    );
  }
  return lines;
}

function judgedTable() {
  const judged = tables.flatMap(({ rows }) => rows.filter((row) => row.basis === 'judged'));
  const groups = new Map();
  for (const row of judged) {
    const name = row.parameter
      .replace(/^harvest\.[a-z-]+\.(store\.[a-z-]+\.)?/, 'harvest: ')
      .replace(/^(servings-per-week)\.[a-z]{3}$/, '$1')
      .replace(/^(replaced-by)\.[a-z-]+/, '$1');
    const group = groups.get(name) ?? { count: 0, reason: row.note };
    group.count += 1;
    groups.set(name, group);
  }
  const lines = ['| parameter | rows | one of the reasons |', '|---|---|---|'];
  for (const [name, { count, reason }] of [...groups].sort((a, b) => b[1].count - a[1].count))
    lines.push(`| ${name} | ${count} | ${cell(reason)} |`);
  return lines;
}

const text = [
  '# Where the figures come from',
  '',
  'Written by `scripts/write-data-sources.mjs` from `packages/growing/tables`: change the tables, not this page.',
  'Every figure stands in a table with its unit, source, place in the source and basis; `twelvemonth kinds ID` shows',
  'the rows behind one kind.',
  '',
  '## How sure',
  '',
  ...bases.map((basis) => `- **${basis}**: ${meaning[basis]}.`),
  '',
  ...basisTable(),
  '',
  '## Sources',
  '',
  ...sourceTable(),
  '',
  '## Judged values',
  '',
  'These are ours to mend first: each row in the tables carries its range and its reason.',
  '',
  ...judgedTable(),
  '',
].join('\n');

const stale = (existsSync(target) ? readFileSync(target, 'utf8') : '') !== text;
if (process.argv.includes('--check')) {
  if (stale) console.error(`${target} is not that of the tables. Mend: node scripts/write-data-sources.mjs`);
  process.exitCode = stale ? 1 : 0;
} else if (stale) writeFileSync(target, text);
