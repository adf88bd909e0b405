import { type Coverage, coverageOf, type Held, passes } from './coverage-of.ts';

interface Named {
  readonly name: string;
  readonly held: readonly Held[];
}

export interface CoverageInput {
  readonly records: readonly Named[];
  /** The same outcomes, forecast from drawn weather with the normals of the nearest station of our table. */
  readonly drawn: readonly Named[];
  readonly date: string;
  readonly hash: string;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const line = (name: string, coverage: Coverage): string =>
  `| ${name} | ${coverage.outcomes} | ${coverage.years} | ${percent(coverage.share)} | ${percent(coverage.low)} – ${percent(coverage.high)} |`;
const linesOf = (all: readonly Named[]): string =>
  all.map(({ name, held }) => line(name, coverageOf(held))).join('\n');

function groupLines(held: readonly Held[]): string {
  const groups = [...new Set(held.map((each) => each.group))];
  return linesOf(groups.map((group) => ({ name: group, held: held.filter((each) => each.group === group) })));
}

const head = `| | outcomes | years | share held | 95 % interval |
| --- | --- | --- | --- | --- |`;

/** Years of different records are one cluster: the stations share their weather. */
export function coveragePage({ records, drawn, date, hash }: CoverageInput): string {
  const pooled = records.flatMap((record) => record.held);
  const all = coverageOf(pooled);
  const caseOf = (held: Held): string => `${held.group}: ${held.name}`;
  const cases = [...new Set(pooled.map(caseOf))];
  return `# Weather coverage

Written by \`npm run coverage -- FOLDER\` on ${date}; do not edit. Tables and code: ${hash}.

Of every ten years, a band "most years" should hold eight. Here each year of a daily record is hidden in turn, together with
every member that shares a day with it; the engine forecasts emergence, first harvests, the standstill and sums of warmth from
the other years, and the hidden year is looked up. It is *weather* coverage: the model judges itself, with its own crops at their
usual pace, so it shows whether the spread of weather is carried rightly, not whether the crops are. How far the crops are off
stands in [truth.md](truth.md). Years, not outcomes, are the clusters of the interval, since a late spring is late for everything.

It passes when the interval holds 80 % and the share is at least 70 %: **${passes(all) ? 'passes' : 'does not pass'}**, ${percent(all.share)} of ${all.outcomes} outcomes.

${head}
${line('all pooled', all)}
${linesOf(records)}
${groupLines(pooled)}

## From twelve normals

A household without a daily record gets drawn weather. The same outcomes, forecast from thirty drawn members with the normals
of the station of our table, which are of other years in part: here a difference between normals and record counts as well.

${head}
${linesOf(drawn)}
${groupLines(drawn.flatMap((each) => each.held))}

## Case by case

${head}
${linesOf(cases.map((name) => ({ name, held: pooled.filter((held) => caseOf(held) === name) })))}
`;
}
