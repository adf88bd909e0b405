// npm run truth: the engine against the outside world. Options: --summary prints the Markdown table and nothing else;
// --check writes nothing and fails when docs/truth-report.md is out of date.
import { readFileSync, writeFileSync } from 'node:fs';
import expected from './expected-counts.json' with { type: 'json' };
import { gapProblems, readKnownGaps } from './known-gaps.ts';
import { reportPage } from './report-page.ts';
import { gatherRows } from './report-rows.ts';
import { countProblems, summaryTable } from './report-summary.ts';
import { isMet } from './truth-row.ts';

const options = process.argv.slice(2);
const unknown = options.find((option) => option !== '--summary' && option !== '--check');
if (unknown !== undefined) {
  console.error(`truth: there is no option ${unknown}; there are --summary and --check`);
  process.exit(2);
}

const pageFile = new URL('../docs/truth-report.md', import.meta.url);
const countsFile = 'truth/expected-counts.json';
const gathered = gatherRows();
const dropped = [
  ...countProblems(gathered.rows, expected.rows, countsFile),
  ...countProblems(gathered.heldOut, expected.heldOut, countsFile),
];

if (options.includes('--summary')) {
  console.log(summaryTable(gathered.rows));
  for (const problem of dropped) console.error(`truth: ${problem}`);
  process.exit(dropped.length === 0 ? 0 : 1);
}

const gaps = readKnownGaps();
const problems = [...dropped, ...gapProblems(gathered.rows, gaps)];
const page = reportPage(gathered, gaps);
if (!options.includes('--check')) writeFileSync(pageFile, page);
else if (readFileSync(pageFile, 'utf8') !== page)
  problems.push('docs/truth-report.md is out of date: run npm run truth');

console.log(summaryTable(gathered.rows));
console.log(`\nHeld out, never used for adjusting tables:\n\n${summaryTable(gathered.heldOut)}\n`);
for (const problem of problems) console.error(`truth: ${problem}`);
const metCount = gathered.rows.filter(isMet).length;
console.log(
  `truth: ${gathered.rows.length} rows, ${metCount} met, ${gathered.rows.length - metCount} not met, ${gaps.length} known gaps, ${problems.length} problems`,
);
process.exit(problems.length === 0 ? 0 : 1);
