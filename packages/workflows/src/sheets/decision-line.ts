import type { Day } from '@twelvemonth/basis';
import type { ReportDecision, ReportSowing } from '../report/plan-report.ts';
import { dayOf } from './sheet-days.ts';

/** A make-or-break day as a sheet says it. */
export interface DecisionLine {
  readonly decisionDay: Day;
  readonly rule: ReportDecision['rule'];
  readonly chanceFails: number;
  readonly fallback: {
    readonly kindName: string;
    readonly act: 'sow' | 'plant';
    readonly sow: Day;
    readonly plants: number;
  };
}

export function decisionLineOf({ decision }: ReportSowing): DecisionLine | null {
  if (decision === undefined) return null;
  const { fallback } = decision;
  return {
    decisionDay: dayOf(decision.decisionDay),
    rule: decision.rule,
    chanceFails: decision.chanceFails,
    fallback: {
      kindName: fallback.kindName,
      act: fallback.startsAs === 'seed' ? 'sow' : 'plant',
      sow: dayOf(fallback.sow),
      plants: fallback.plants,
    },
  };
}
