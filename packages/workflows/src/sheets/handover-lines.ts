/** Passes in which one crop is cleared and the next planted in the same strips, for the sheets. */
import type { Day } from '@twelvemonth/basis';
import type { PlanReport } from '../report/plan-report.ts';
import { dayOf } from './sheet-days.ts';

export interface HandoverLine {
  readonly fromNumber: number;
  readonly fromKindName: string;
  readonly toKindName: string;
  readonly placeName: string;
  readonly passes: readonly {
    /** Monday of the week. */
    readonly monday: Day;
    readonly m2: number;
    readonly toNumber: number;
  }[];
}

/** Handovers with a pass that `isShown` takes; only these passes. */
export function handoverLines(
  report: PlanReport,
  isShown: (pass: { readonly monday: Day; readonly to: string }) => boolean,
): HandoverLine[] {
  const numberOf = new Map(report.sowings.map((sowing) => [sowing.id, sowing.number]));
  return (report.handovers ?? []).flatMap((handover): HandoverLine[] => {
    const passes = handover.passes
      .map(({ week, m2, to }) => ({ monday: dayOf(week), m2, to }))
      .filter(isShown)
      .map(({ monday, m2, to }) => ({ monday, m2, toNumber: numberOf.get(to) ?? 0 }));
    if (passes.length === 0) return [];
    const { fromKindName, toKindName, placeName } = handover;
    return [{ fromNumber: numberOf.get(handover.from) ?? 0, fromKindName, toKindName, placeName, passes }];
  });
}
