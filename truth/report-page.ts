/** docs/truth.md, written whole from the rows. */
import type { Group } from './groups.ts';
import type { KnownGap } from './known-gaps.ts';
import { cropsWithoutKind } from './published-crops.ts';
import { referencesWithoutKind } from './reference-kinds.ts';
import { blindTable, groupsTable, markdownTable, rowsTable, targetsTable } from './report-tables.ts';
import { targetsOf } from './targets.ts';
import { isMet, type TruthRow } from './truth-row.ts';

export interface ReportParts {
  readonly rows: readonly TruthRow[];
  readonly heldOut: readonly TruthRow[];
  readonly groups: { readonly seen: readonly Group[]; readonly heldOut: readonly Group[] };
  readonly gaps: readonly KnownGap[];
}

const calendarQuantity = 'first harvest outside its published window';

const sourcesOf = (rows: readonly TruthRow[]): string => {
  const groups = new Map<string, Set<string>>();
  for (const row of rows) {
    const name = row.group ?? row.quantity;
    groups.set(name, (groups.get(name) ?? new Set()).add(row.source));
  }
  return [...groups].map(([name, sources]) => `- ${name}: ${[...sources].join('; ')}.`).join('\n');
};

export function reportPage({ rows, heldOut, groups, gaps }: ReportParts): string {
  const failing = rows.filter((row) => !isMet(row));
  const blindFailing = heldOut.filter((row) => !isMet(row));
  const calendar = rows.filter((row) => row.quantity === calendarQuantity);
  return `# How wrong the engine is

Written by \`npm run truth\`; do not edit. It sets the engine beside figures that others measured or wrote down. Errors are
without sign; where a source gives a range, its middle is expected and half its width is the tolerance. A row that could
not be computed is *dropped*: it stays in the count and counts as not met, and so does one where the engine says *never*.
Every row that is not met stands in known-gaps.txt with its reason. *Common practice* marks what growers do without a
publication to name: weaker than a measurement.

Rows are divided by the hash of their id before anything is fitted ([record 0007](decisions/0007-rows-held-out-by-hash.md)):
about a quarter is held out, lies in \`truth/held-out\` and is read by this report alone. The rows of emergence and calendar
had all been seen by earlier fits, so that for them held out means blind only from 25 November 2026 on.

## What is asked, and what is reached

${targetsTable(targetsOf(rows, heldOut))}

## Every group

${groupsTable(groups.seen, groups.heldOut)}

Published crops that we have no kind of, so that their figures are in no row: ${cropsWithoutKind().join(', ')}.

Published rows that wait for a kind, and count as dropped till then: ${referencesWithoutKind().join(', ') || 'none'}.

## Not met

${failing.length === 0 ? 'Every row is met.' : rowsTable(failing)}

## Not met, held out

The size of the error is all that is said, so that nobody can tune to these rows by reading this page.

${blindFailing.length === 0 ? 'Every row is met.' : blindTable(blindFailing)}

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
