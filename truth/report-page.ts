/** docs/truth-report.md, written whole from the rows. */
import type { KnownGap } from './known-gaps.ts';
import type { GatheredRows } from './report-rows.ts';
import { markdownTable, rowsTable, summaryTable } from './report-summary.ts';
import { isMet, type TruthRow } from './truth-row.ts';

const calendarQuantity = 'first harvest outside its published window';

const sourcesOf = (rows: readonly TruthRow[]): string => {
  const quantities = new Map<string, Set<string>>();
  for (const row of rows) {
    const sources = quantities.get(row.quantity) ?? new Set();
    quantities.set(row.quantity, sources.add(row.source));
  }
  return [...quantities]
    .map(([quantity, sources]) => `- ${quantity}: ${[...sources].join('; ')}.`)
    .join('\n');
};

export function reportPage({ rows, heldOut }: GatheredRows, gaps: readonly KnownGap[]): string {
  const failing = rows.filter((row) => !isMet(row));
  const calendar = rows.filter((row) => row.quantity === calendarQuantity);
  return `# Truth report

Written by \`npm run truth\`; do not edit. It sets the engine beside figures that others measured or wrote down. The mean
error is without sign. A row that gives no number counts as not met. Every row that is not met stands in known-gaps.txt with
its reason. *Common practice* marks what growers do without a publication to name: weaker than a measurement.

Rows called arithmetic check that a published formula was coded as printed. The emergence rows at 10–25 °C check the shape of
the response more than its level, since most crops had their line fitted to the same leaflet.

## Every quantity

${summaryTable(rows)}

## Held out

A fifth of the published sowing calendar, put aside by a fixed hash of the row's name and never looked at when a table is
adjusted. These rows are reported and decide nothing. They were put aside on 25 November 2026; before that day the tables
had been looked over against the whole calendar, so that only what happens to them from then on is a blind check.

${summaryTable(heldOut)}

${rowsTable(heldOut)}

## Not met

${failing.length === 0 ? 'Every row is met.' : rowsTable(failing.map((row) => ({ ...row, case: `${row.quantity}: ${row.case}` })))}

## Known gaps

${markdownTable(
  ['row', 'what is wrong', 'why', 'since'],
  gaps.map((gap) => [gap.id, gap.wrong, gap.why, gap.since]),
)}

## The sowing calendar

Sown in the middle of the published window; days of the median first harvest outside the published harvest window.

${rowsTable(calendar)}

## Sources

${sourcesOf([...rows, ...heldOut])}
`;
}
