/** The tables of docs/evaluation.md, also what a run prints. */
import type { CaseFigures, CaseSettings, Measured } from './figures.ts';
import type { MadeWith } from './hashes.ts';
import type { SmallFigures } from './small-set.ts';
import { type RivalName, type Summary, targets } from './summary.ts';

export interface Run {
  /** ISO date: given, or that of the commit. */
  readonly date: string;
  readonly settings: CaseSettings;
  readonly madeWith: MadeWith;
  readonly cases: readonly CaseFigures[];
  /** Cases that could not be planned: they count as missed. */
  readonly failed: readonly { readonly name: string; readonly reason: string }[];
}

const whole = (value: number): string => Math.round(value).toString();
const tenths = (value: number): string => value.toFixed(1);
const hundredths = (value: number | null): string => (value === null ? '–' : value.toFixed(2));
const percent = (share: number | null): string => (share === null ? '–' : `${(share * 100).toFixed(1)} %`);
const row = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
const head = (cells: readonly string[]): string[] => [row(cells), `|${'---|'.repeat(cells.length)}`];

const rivalTitles: Readonly<Record<RivalName, string>> = {
  calendar: 'calendar gardener',
  practised: 'practised gardener',
};

function whoRow(name: string, measured: Measured, marks: string): string {
  return row([
    name,
    tenths(measured.leanWeeks),
    whole(measured.servingsMissing),
    whole(measured.servingsEaten),
    whole(measured.wasted),
    whole(measured.hours),
    measured.sowings,
    `${whole(measured.groundIdleShare * 100)} %`,
    measured.kgPerM2Year.toFixed(2),
    marks,
  ]);
}

function caseRows(figures: CaseFigures): string[] {
  const { name, plan, calendar, practised } = figures;
  const marks = (straw: boolean): string => (straw ? 'straw man' : '');
  return [
    whoRow(`**${name}**, plan`, plan, figures.shortOfGround ? 'short of ground' : ''),
    whoRow(rivalTitles.calendar, calendar, marks(calendar.strawMan)),
    whoRow(rivalTitles.practised, practised, marks(practised.strawMan)),
  ];
}

function ratioRow(figures: CaseFigures): string {
  const { ratios } = figures;
  return row([
    figures.name,
    whole(figures.groundM2),
    hundredths(ratios.calendar.leanWeeks),
    hundredths(ratios.calendar.servingsMissing),
    hundredths(ratios.calendar.wasted),
    hundredths(ratios.practised.leanWeeks),
    hundredths(ratios.practised.servingsMissing),
    hundredths(ratios.practised.wasted),
    percent(figures.gapShare),
    figures.boundServingsMissing === null ? '–' : whole(figures.boundServingsMissing),
    figures.leftOutRoleWeeks ?? '–',
    whole(figures.seconds),
    figures.violations.length,
  ]);
}

const listOf = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [`${title}: none.`, ''] : [`${title}:`, '', ...lines.map((line) => `- ${line}`), ''];

export function summaryLines(summary: Summary): string[] {
  const of = (target: number | null): string => (target === null ? '' : ` (≤ ${target.toFixed(2)})`);
  return [
    ...head([
      'plan against',
      'cases',
      'median',
      'best half',
      'median, opponents only',
      'best half',
      'target',
    ]),
    ...summary.ratios.map((each) =>
      row([
        `${rivalTitles[each.rival]}, ${each.measure === 'leanWeeks' ? 'lean weeks' : 'missing'}`,
        each.casesCount,
        `${hundredths(each.median)}${of(targets[each.rival].median)}`,
        `${hundredths(each.bestHalf)}${of(targets[each.rival].bestHalf)}`,
        hundredths(each.medianOfOpponents),
        hundredths(each.bestHalfOfOpponents),
        each.met ? 'met' : 'missed',
      ]),
    ),
    '',
    ...listOf('Worse than a rival', summary.worseThanARival),
    ...listOf('Waste higher than a rival', summary.wastesMore),
    ...listOf('Rivals that are straw men (rule 8)', summary.strawMen),
    ...listOf('Findings of the independent check', summary.violations),
  ];
}

export function ratioLines(cases: readonly CaseFigures[]): string[] {
  const against = (rival: string): string[] => [`lean / ${rival}`, `missing / ${rival}`, `wasted / ${rival}`];
  return [
    ...head([
      'case',
      'm²',
      ...against('calendar'),
      ...against('practised'),
      'gap',
      'bound missing',
      'left out',
      's',
      'findings',
    ]),
    ...cases.map(ratioRow),
  ];
}

const madeWithLines = (run: Run): string[] => [
  ...head(['made with', 'SHA-256']),
  ...Object.entries(run.madeWith).map(([part, hash]) => row([part, `\`${hash}\``])),
];

/** The generated block of the page. */
export function pageLines(run: Run, summary: Summary): string[] {
  const { effort, memberCount, checkMemberCount } = run.settings;
  return [
    `${run.date}: effort ${effort}, ${memberCount} members to plan with, ${checkMemberCount} to measure with, ${run.cases.length} cases.`,
    run.cases.every((each) => each.leftOutRoleWeeks === null)
      ? 'The planner did not say what its relaxation eats, so no role-week is left out.'
      : '"Left out": role-weeks that the bound itself leaves lean; "–": no bound was found, and none is left out.',
    '',
    '### Against the targets',
    '',
    ...listOf(
      'Cases that could not be planned',
      run.failed.map(({ name, reason }) => `${name}: ${reason}`),
    ),
    ...summaryLines(summary),
    '### Ratios',
    '',
    ...ratioLines(run.cases),
    '',
    '### Figures',
    '',
    ...head(['', 'lean', 'missing', 'eaten', 'wasted', 'hours', 'sowings', 'idle', 'kg/m²·a', '']),
    ...run.cases.flatMap(caseRows),
    '',
    ...madeWithLines(run),
  ];
}

export function smallLines(settings: CaseSettings, cases: Readonly<Record<string, SmallFigures>>): string[] {
  const { effort, memberCount, checkMemberCount } = settings;
  return [
    `Effort ${effort}, ${memberCount} members to plan with, ${checkMemberCount} to measure with.`,
    '',
    ...head(['case', 'lean', 'missing', 'wasted', 'gap', 'missing / calendar', 'missing / practised']),
    ...Object.entries(cases).map(([name, figures]) =>
      row([
        name,
        tenths(figures.leanWeeks),
        whole(figures.servingsMissing),
        whole(figures.wasted),
        percent(figures.gapShare),
        hundredths(figures.ratios.calendar.servingsMissing),
        hundredths(figures.ratios.practised.servingsMissing),
      ]),
    ),
  ];
}
