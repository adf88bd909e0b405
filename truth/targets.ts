/** What the report is asked to reach, and whether it does. */
import { groupNameOf } from './groups.ts';
import { isMet, type TruthRow } from './truth-row.ts';

export interface Target {
  readonly what: string;
  readonly asked: string;
  /** In the unit of `asked`; NaN when there is no row. */
  readonly got: string;
  readonly count: number;
  readonly reached: boolean;
}

const shareOf = (rows: readonly TruthRow[], met: (row: TruthRow) => boolean): number =>
  rows.filter(met).length / rows.length;

function shareTarget(
  what: string,
  rows: readonly TruthRow[],
  asked: number,
  met: (row: TruthRow) => boolean = isMet,
): Target {
  const share = shareOf(rows, met);
  const percent = (value: number): string => `${Math.floor(100 * value)} %`;
  return {
    what,
    asked: percent(asked),
    got: rows.length === 0 ? 'no rows' : percent(share),
    count: rows.length,
    reached: share >= asked,
  };
}

function meanTarget(what: string, rows: readonly TruthRow[], askedDays: number): Target {
  const errors = rows.map((row) => Math.abs(row.got - row.expected)).filter(Number.isFinite);
  const mean = errors.reduce((a, b) => a + b, 0) / errors.length;
  return {
    what,
    asked: `${askedDays} d`,
    got: errors.length === 0 ? 'no rows' : `${mean.toFixed(1)} d`,
    count: errors.length,
    reached: mean <= askedDays,
  };
}

/** Groups that check printed formulas to their printed digits. */
export const isWrittenOut = (row: TruthRow): boolean =>
  /^(FAO-56|day length|degree-days|damping|amplitude|lag|WGEN|effective day-degrees|carrot vernalisation, (rate|days)|.*, worked out$)/.test(
    groupNameOf(row),
  );

/** Groups made of published tables, which may have been copied from practice: they have targets of their own. */
const tabled = new Set([
  'first harvest outside its published window',
  'middle of the harvest against its published window',
  'weeks of keeping in the best store',
  'day on which keeping ends',
  'yield against the published range',
  'weeks from sowing to the first harvest',
]);

export const middleGroup = 'middle of the harvest against its published window';
export const keepingLife = 'weeks of keeping in the best store';
export const keepingEnd = 'day on which keeping ends';

export function targetsOf(rows: readonly TruthRow[], heldOut: readonly TruthRow[]): Target[] {
  const of = (name: string, those = rows): TruthRow[] => those.filter((row) => groupNameOf(row) === name);
  return [
    shareTarget(
      'printed formulas and worked examples, to their printed digits',
      [...rows, ...heldOut].filter(isWrittenOut),
      1,
    ),
    shareTarget('emergence at 10–25 °C within 15 % or 2 days', of('emergence at 10–25 °C'), 0.9),
    shareTarget('emergence at 5 and 30 °C within 25 % or 4 days', of('emergence at 5 and 30 °C'), 0.8),
    shareTarget(
      'cells where nothing came up',
      of('emergence where nothing came up, share of the way in 100 days'),
      1,
    ),
    meanTarget('middle of the harvest, mean error', of(middleGroup), 18),
    shareTarget(
      'the same, held out, within 10 days',
      of(middleGroup, heldOut),
      0.55,
      (row) => Math.abs(row.got - row.expected) <= 10,
    ),
    shareTarget('end of keeping inside the published range', [...of(keepingLife), ...of(keepingEnd)], 0.85),
    shareTarget(
      'what growers do (*common practice*)',
      rows.filter((row) => row.source.startsWith('*common practice*') && !tabled.has(groupNameOf(row))),
      1,
    ),
  ];
}
