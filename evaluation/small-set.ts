/** The small set of `npm test` against what was agreed to: worse than its tolerance fails, better is only said. */
import type { CaseFigures } from './figures.ts';
import { rivalNames } from './summary.ts';

export const heldMeasures = ['leanWeeks', 'servingsMissing', 'wasted', 'gapShare'] as const;
export type HeldMeasure = (typeof heldMeasures)[number];

/** How much worse a figure may become: a share of it, and at least so much. */
export const tolerances: Readonly<Record<HeldMeasure, { readonly share: number; readonly least: number }>> = {
  leanWeeks: { share: 0.05, least: 3 },
  servingsMissing: { share: 0.05, least: 6 },
  wasted: { share: 0.1, least: 25 },
  gapShare: { share: 0, least: 0.02 },
};

export type SmallFigures = Readonly<Record<HeldMeasure, number>> & {
  readonly ratios: CaseFigures['ratios'];
};

export const smallFiguresOf = ({ plan, gapShare, ratios }: CaseFigures): SmallFigures => ({
  leanWeeks: plan.leanWeeks,
  servingsMissing: plan.servingsMissing,
  wasted: plan.wasted,
  gapShare: gapShare ?? 1,
  ratios,
});

export interface SmallVerdict {
  readonly failures: readonly string[];
  readonly notes: readonly string[];
}

function compareCase(found: CaseFigures, agreed: SmallFigures): SmallVerdict {
  const now = smallFiguresOf(found);
  const failures: string[] = found.violations.map((violation) => `${found.name}: ${violation}`);
  const notes: string[] = [];
  for (const measure of heldMeasures) {
    const { share, least } = tolerances[measure];
    const may = Math.max(least, share * agreed[measure]);
    const text = `${found.name}: ${measure} ${shown(now[measure])}, agreed ${shown(agreed[measure])} ± ${shown(may)}`;
    if (now[measure] > agreed[measure] + may || Number.isNaN(now[measure])) failures.push(text);
    else if (now[measure] < agreed[measure] - may) notes.push(`better: ${text}`);
  }
  for (const rival of rivalNames)
    for (const measure of ['leanWeeks', 'servingsMissing'] as const) {
      const [before, after] = [agreed.ratios[rival][measure], now.ratios[rival][measure]];
      if (before === null || after === null || after <= before + ratioMay) continue;
      failures.push(`${found.name}: ${measure} against ${rival} ${shown(after)}, agreed ${shown(before)}`);
    }
  return { failures, notes };
}

const ratioMay = 0.04;
const shown = (value: number): string => String(Math.round(value * 1000) / 1000);

export function compareSmall(
  found: readonly CaseFigures[],
  agreed: Readonly<Record<string, SmallFigures>>,
): SmallVerdict {
  const failures: string[] = [];
  const notes: string[] = [];
  for (const name of Object.keys(agreed))
    if (!found.some((each) => each.name === name)) failures.push(`${name}: agreed to, and not run`);
  for (const each of found) {
    const own = agreed[each.name];
    if (own === undefined) {
      failures.push(`${each.name}: nothing agreed to yet; run npm run evaluate -- --small --update`);
      continue;
    }
    const verdict = compareCase(each, own);
    failures.push(...verdict.failures);
    notes.push(...verdict.notes);
  }
  return { failures, notes };
}
