// npm run truth: the engine against the outside world, and docs/truth.md written anew. Options: --json prints the groups
// as JSON and writes nothing; --summary prints what is asked and reached and writes nothing; --check writes nothing and fails
// when docs/truth.md is out of date; --count-in takes the rows there are into expected-counts.json.
import { readFileSync, writeFileSync } from 'node:fs';
import { answersWithoutFact } from './facts.ts';
import { groupsOf } from './groups.ts';
import { factAnswers } from './growth/rows.ts';
import { gapProblems, readKnownGaps, targetProblems } from './known-gaps.ts';
import { reportPage } from './report-page.ts';
import { truthRowsOf } from './report-rows.ts';
import { groupsTable, targetsTable } from './report-tables.ts';
import { type Counts, countProblems, countsOf } from './row-counts.ts';
import { targetsOf } from './targets.ts';
import { isMet } from './truth-row.ts';

const options = process.argv.slice(2);
const known = ['--json', '--summary', '--check', '--count-in'];
const unknown = options.find((option) => !known.includes(option));
if (unknown !== undefined) {
  console.error(`truth: there is no option ${unknown}; there are ${known.join(', ')}`);
  process.exit(2);
}

const pageFile = new URL('../docs/truth.md', import.meta.url);
const countsFile = new URL('./expected-counts.json', import.meta.url);
const rows = truthRowsOf('calibration');
const heldOut = truthRowsOf('held-out');
const groups = { seen: groupsOf(rows, false), heldOut: groupsOf(heldOut, true) };

if (options.includes('--count-in')) {
  const counts = { rows: countsOf(rows), heldOut: countsOf(heldOut) };
  writeFileSync(countsFile, `${JSON.stringify(counts, null, 2)}\n`);
}
const expected = JSON.parse(readFileSync(countsFile, 'utf8')) as Record<'rows' | 'heldOut', Counts>;
const problems = [
  ...countProblems(rows, expected.rows, 'truth/expected-counts.json'),
  ...countProblems(heldOut, expected.heldOut, 'truth/expected-counts.json, heldOut,'),
  ...answersWithoutFact(factAnswers()),
];

if (options.includes('--json')) console.log(JSON.stringify({ groups: [...groups.seen, ...groups.heldOut] }));
else if (options.includes('--summary')) console.log(targetsTable(targetsOf(rows, heldOut)));
else {
  const gaps = readKnownGaps();
  problems.push(...gapProblems(rows, gaps), ...targetProblems(targetsOf(rows, heldOut), gaps));
  const page = reportPage({ rows, heldOut, groups, gaps });
  if (!options.includes('--check')) writeFileSync(pageFile, page);
  else if (readFileSync(pageFile, 'utf8') !== page)
    problems.push('docs/truth.md is out of date: run npm run truth');
  const met = rows.filter(isMet).length;
  const metBlind = heldOut.filter(isMet).length;
  console.log(groupsTable(groups.seen, groups.heldOut));
  console.log(
    `\ntruth: ${rows.length} rows, ${met} met, ${rows.length - met} not met, ${gaps.length} known gaps; ` +
      `${heldOut.length} held out, ${metBlind} met; ${problems.length} problems`,
  );
}
for (const problem of problems) console.error(`truth: ${problem}`);
process.exitCode = problems.length === 0 ? 0 : 1;
