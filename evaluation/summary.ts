/** The cases together against the targets (docs/evaluation.md, rules 6 to 9). */
import { quantileOfSorted } from '../packages/basis/src/index.ts';
import type { CaseFigures, Measured } from './figures.ts';

export type RivalName = 'calendar' | 'practised';
export const rivalNames: readonly RivalName[] = ['calendar', 'practised'];

interface RivalTarget {
  readonly median: number;
  readonly bestHalf: number | null;
}

export const targets: Readonly<Record<RivalName, RivalTarget>> = {
  calendar: { median: 1 / 3, bestHalf: 1 / 4 },
  practised: { median: 0.6, bestHalf: null },
};

export interface RatioSummary {
  readonly rival: RivalName;
  readonly measure: 'leanWeeks' | 'servingsMissing';
  readonly casesCount: number;
  readonly median: number | null;
  readonly bestHalf: number | null;
  /** The same without cases in which the rival is a straw man. */
  readonly medianOfOpponents: number | null;
  readonly bestHalfOfOpponents: number | null;
  readonly met: boolean;
}

export interface Summary {
  readonly ratios: readonly RatioSummary[];
  /** 'hot-plain: servingsMissing 210 > practised 190' */
  readonly worseThanARival: readonly string[];
  readonly wastesMore: readonly string[];
  readonly strawMen: readonly string[];
  readonly violations: readonly string[];
}

export const middleOf = (values: readonly number[]): number | null =>
  values.length === 0
    ? null
    : quantileOfSorted(
        [...values].sort((a, b) => a - b),
        0.5,
      );

/** Median of the lower half, rounded up to whole cases. */
export function bestHalfOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  return middleOf(sorted.slice(0, Math.ceil(sorted.length / 2)));
}

/** A mean over a hundred members is no surer than this. */
export const noMore = (own: number, other: number): boolean => own <= other + Math.max(0.5, 0.01 * other);

function summarise(
  cases: readonly CaseFigures[],
  rival: RivalName,
  measure: RatioSummary['measure'],
): RatioSummary {
  const ratiosOf = (some: readonly CaseFigures[]): number[] =>
    some.flatMap((each) => each.ratios[rival][measure] ?? []);
  const all = ratiosOf(cases);
  const opponents = ratiosOf(cases.filter((each) => !each[rival].strawMan));
  const [median, bestHalf] = [middleOf(all), bestHalfOf(all)];
  const target = targets[rival];
  const met =
    median !== null &&
    bestHalf !== null &&
    median <= target.median &&
    (target.bestHalf === null || bestHalf <= target.bestHalf);
  return {
    rival,
    measure,
    casesCount: all.length,
    median,
    bestHalf,
    medianOfOpponents: middleOf(opponents),
    bestHalfOfOpponents: bestHalfOf(opponents),
    met,
  };
}

function worse(cases: readonly CaseFigures[], measures: readonly (keyof Measured)[]): string[] {
  return cases.flatMap((each) =>
    rivalNames.flatMap((rival) =>
      measures
        .filter((measure) => !noMore(each.plan[measure], each[rival][measure]))
        .map(
          (measure) =>
            `${each.name}: ${measure} ${Math.round(each.plan[measure])} > ${rival} ${Math.round(each[rival][measure])}`,
        ),
    ),
  );
}

export function summaryOf(cases: readonly CaseFigures[]): Summary {
  return {
    ratios: rivalNames.flatMap((rival) =>
      (['leanWeeks', 'servingsMissing'] as const).map((measure) => summarise(cases, rival, measure)),
    ),
    worseThanARival: worse(cases, ['leanWeeks', 'servingsMissing']),
    wastesMore: worse(cases, ['wasted']),
    strawMen: cases.flatMap((each) =>
      rivalNames
        .filter((rival) => each[rival].strawMan)
        .map(
          (rival) =>
            `${each.name}: ${rival} ${each[rival].kgPerM2Year.toFixed(2)} kg/m² (plan ${each.plan.kgPerM2Year.toFixed(2)})`,
        ),
    ),
    violations: cases.flatMap((each) => each.violations.map((found) => `${each.name}: ${found}`)),
  };
}
