// Reads the long CSV tables with their line numbers, the parameter list and the sources.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';

export const usualFolder = 'packages/growing/tables';
export const header = 'subject,parameter,value,low,high,unit,source,locator,basis,valid_for,note'.split(',');

// These hold rows of the catalogue; other CSV files here are compiled by their own models, only their sources count.
const catalogueFile = /^(kinds-[a-z]+(-[a-z]+)*|defaults|roles|hazards|families|calendar)\.csv$/;

// Windows of the sowing calendar that the truth report holds out: the product needs them for its rival gardeners, so the
// compiler takes them in beside calendar.csv (docs/decisions/0007).
const heldOutCalendar = '../../../truth/held-out/calendar.csv';

/** Files of the catalogue as seen from the folder of the tables. */
export const catalogueFiles = (folder) => [
  ...readdirSync(folder)
    .filter((file) => catalogueFile.test(file))
    .sort(),
  ...(existsSync(join(folder, heldOutCalendar)) ? [heldOutCalendar] : []),
];

const readJson = (folder, file) => JSON.parse(readFileSync(join(folder, file), 'utf8'));

export const readParameters = (folder) => readJson(folder, 'parameters.json');

/** Rows as `{file, line, cells}`, and what made a line unreadable. */
export function readCsv(text, file) {
  const problems = [];
  const parsed = Papa.parse(text.replace(/\r\n/g, '\n').replace(/\n$/, ''), { newline: '\n' });
  for (const fault of parsed.errors)
    problems.push({
      file,
      line: (fault.row ?? 0) + 1,
      what: `the line cannot be read (${fault.message})`,
      mend: 'close the quotes; put fields that hold a comma in "double quotes"',
    });
  const rows = [];
  for (const [index, cells] of parsed.data.entries()) {
    const line = index + 1;
    if (cells.some((cell) => cell.includes('\n')))
      problems.push({ file, line, what: 'a field holds a line break', mend: 'keep one row on one line' });
    rows.push({ file, line, cells });
  }
  return { rows, problems };
}

/** Rows by column name; a wrong header or count of cells is a problem, and the row is left out. */
export function asTableRows({ rows: [top, ...rows], problems }, file) {
  if (top === undefined || top.cells.join(',') !== header.join(','))
    return {
      rows: [],
      problems: [
        ...problems,
        {
          file,
          line: 1,
          what: 'the header is not that of a table',
          mend: `write exactly: ${header.join(',')}`,
        },
      ],
    };
  const good = [];
  const bad = [...problems];
  for (const { line, cells } of rows) {
    if (cells.length === 1 && cells[0].trim() === '') continue;
    if (cells.length !== header.length) {
      bad.push({
        file,
        line,
        what: `${cells.length} fields where ${header.length} belong`,
        mend: 'count the commas; quote a field that holds one',
      });
      continue;
    }
    const named = Object.fromEntries(header.map((name, i) => [name, cells[i].trim()]));
    good.push({ file, line, ...named });
  }
  return { rows: good, problems: bad };
}

export function readCatalogueTables(folder) {
  const rows = [];
  const problems = [];
  const files = catalogueFiles(folder);
  for (const file of files) {
    const read = asTableRows(readCsv(readFileSync(join(folder, file), 'utf8'), file), file);
    rows.push(...read.rows);
    problems.push(...read.problems);
  }
  return { files, rows, problems };
}

/** Every source id that a table outside the catalogue names in a column called `source`. */
export function sourcesNamedElsewhere(folder) {
  const named = new Set();
  for (const file of readdirSync(folder)) {
    if (!file.endsWith('.csv') || catalogueFile.test(file)) continue;
    const [top, ...rows] = readCsv(readFileSync(join(folder, file), 'utf8'), file).rows;
    const columns = (top?.cells ?? []).flatMap((name, i) => (/source/.test(name) ? [i] : []));
    for (const { cells } of rows) for (const i of columns) named.add(cells[i]?.trim() ?? '');
  }
  return named;
}

/** All sources*.json merged; the same id with other content is a problem. */
export function mergeSources(filesWithContent) {
  const sources = new Map();
  const problems = [];
  for (const [file, content] of filesWithContent)
    for (const [id, entry] of Object.entries(content)) {
      const known = sources.get(id);
      if (known === undefined) sources.set(id, { file, entry });
      else if (JSON.stringify(known.entry) !== JSON.stringify(entry))
        problems.push({
          file,
          line: 1,
          what: `source "${id}" says something else than in ${known.file}`,
          mend: 'make both alike, or give one of them another id',
        });
      if (typeof entry.title !== 'string' || entry.title === '')
        problems.push({ file, line: 1, what: `source "${id}" has no title`, mend: 'give its title' });
    }
  return { sources, problems };
}

export function readSources(folder) {
  const files = readdirSync(folder).filter((file) => /^sources(-[a-z]+)?\.json$/.test(file));
  return mergeSources(files.sort().map((file) => [file, readJson(folder, file)]));
}
