// npm run coverage -- FOLDER: weather coverage on the daily records (*.csv) of a folder, written to docs/coverage.md.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readDailyCsv, type Site, stationById, stationIds } from '../../packages/growing/src/index.ts';
import { exposuresUnderTest } from '../garden-under-test.ts';
import { coverageOf, type Held, heldOutcomes, passes } from './coverage-of.ts';
import { coveragePage } from './coverage-page.ts';
import { outcomeCases } from './outcomes.ts';
import { generatedYears, weatherYear, yearsOf } from './weather-years.ts';

/** As many as the planner has. */
const drawnMembers = 30;

function fail(sentence: string): never {
  console.error(`coverage: ${sentence}`);
  process.exit(2);
}

/** The first comment of a record says where it was taken: "lat 53.428 lon -6.241 elev 71 m". */
function siteOf(text: string, file: string): Site {
  const found = /lat (-?[\d.]+) lon (-?[\d.]+) elev (-?[\d.]+) m/.exec(text.split('\n', 1)[0] ?? '');
  if (found === null)
    fail(
      `${file}: its first line does not say where it was taken; write "# …, lat 53.4 lon -6.2 elev 71 m".`,
    );
  const [latitudeDeg, longitudeDeg, elevationM] = found.slice(1).map(Number) as [number, number, number];
  return { latitudeDeg, longitudeDeg, elevationM, coastal: true };
}

interface Judged {
  readonly name: string;
  readonly held: readonly Held[];
  /** From drawn weather; null where our table has no station within a tenth of a degree. */
  readonly drawn: readonly Held[] | null;
}

function stationNear({ latitudeDeg, longitudeDeg }: Site) {
  const isNear = ({ site }: { site: Site }): boolean =>
    Math.abs(site.latitudeDeg - latitudeDeg) < 0.1 && Math.abs(site.longitudeDeg - longitudeDeg) < 0.1;
  return stationIds.map((id) => stationById(id)!).find(isNear) ?? null;
}

function judge(folder: string, file: string): Judged {
  const text = readFileSync(join(folder, file), 'utf8');
  const site = siteOf(text, file);
  const { record } = readDailyCsv(text, site);
  if (record === null) fail(`${file} cannot be read as daily weather; look at it with "twelvemonth check".`);
  const years = yearsOf(record).map((year) => weatherYear(site, record, year, exposuresUnderTest));
  console.log(`${file}: ${years.length} years, ${outcomeCases.length} outcomes each`);
  const station = stationNear(site);
  const members =
    station === null ? null : generatedYears(station.site, station.normals, drawnMembers, exposuresUnderTest);
  return {
    name: file.replace(/^daily-|\.csv$/g, ''),
    held: heldOutcomes(years, outcomeCases),
    drawn: members === null ? null : heldOutcomes(years, outcomeCases, members),
  };
}

/** Hash of every table and every line of the engine that the figures depend on. */
function hashOfEngine(): string {
  const hash = createHash('sha256');
  const files = (folder: string): string[] =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((name) => join(folder, name))
      .filter((path) => /\.(csv|ts|json)$/.test(path) && !path.endsWith('.test.ts'));
  const folders = ['packages/growing/tables', 'packages/growing/src', 'truth/weather-years'];
  for (const path of folders.flatMap(files).sort()) hash.update(path).update(readFileSync(path));
  return `sha256 ${hash.digest('hex').slice(0, 16)}`;
}

const folder = process.argv[2];
if (folder === undefined) fail('say which folder holds the daily records: npm run coverage -- FOLDER');
const files = readdirSync(folder).filter((name) => name.endsWith('.csv'));
if (files.length === 0) fail(`${folder} holds no *.csv`);
const records = files.map((file) => judge(folder, file));
const drawn = records.flatMap(({ name, drawn: held }) => (held === null ? [] : [{ name, held }]));
const all = coverageOf(records.flatMap((record) => record.held));
const date = new Date().toISOString().slice(0, 10);
writeFileSync('docs/coverage.md', coveragePage({ records, drawn, date, hash: hashOfEngine() }));
console.log(
  `coverage: ${all.outcomes} outcomes, ${Math.round(all.share * 100)} % held (${Math.round(all.low * 100)}–${Math.round(all.high * 100)} %), ${passes(all) ? 'passes' : 'does not pass'}; docs/coverage.md written`,
);
