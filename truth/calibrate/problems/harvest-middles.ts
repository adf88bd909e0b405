/** Durations of a kind against the middles of its published harvests, for kinds with two or more windows to learn from. */
import { tables } from '../../../packages/growing/src/generated/catalogue.ts';
import { type CalendarRow, kindById, sourceById } from '../../../packages/growing/src/index.ts';
import { calendarId, mainHarvestIndex } from '../../trade/calendar.ts';
import { daysAfterMiddle, rowsWithMiddle, toleranceDays } from '../../trade/harvest-middle.ts';
import { type Constant, judgedConstant } from '../constant.ts';
import { leastEvidence } from '../fit-constants.ts';
import type { CalibrationProblem } from '../problem.ts';

/** A harvest that does not come counts as this many days off. */
const neverDays = 200;

/** The kind's own judged duration; null where it was measured, stands at the crop, or has no range. */
function durationOf(kindId: string): Constant | null {
  const kind = kindById(kindId)!;
  const harvest = kind.harvests[mainHarvestIndex(kind)]!;
  try {
    return judgedConstant(`kind:${kindId}`, `harvest.${harvest.id}.start-days`);
  } catch {
    return null;
  }
}

const sourceOf = (row: CalendarRow): string => {
  const packed = tables.rowsBySubject[`calendar:${calendarId(row)}`]?.[0];
  return sourceById(packed?.[5] ?? '')?.title ?? '*common practice*';
};

export function harvestMiddleProblems(): CalibrationProblem[] {
  const byKind = new Map<string, CalendarRow[]>();
  for (const row of rowsWithMiddle('calibration'))
    byKind.set(row.kind, [...(byKind.get(row.kind) ?? []), row]);
  return [...byKind].flatMap(([kindId, rows]): CalibrationProblem[] => {
    const constant = durationOf(kindId);
    if (constant === null || rows.length < leastEvidence) return [];
    return [
      {
        name: `harvest middles of ${kindId}`,
        about: 'days from emergence to the first harvest, by the middles of the published harvests',
        constants: [constant],
        observations: rows.map((row) => ({
          id: calendarId(row),
          expected: 0,
          sd: toleranceDays.calibration / 2,
          source: sourceOf(row),
        })),
        predict: (kindOf) =>
          rows.map((row) => {
            const { days } = daysAfterMiddle(kindOf(kindId), row);
            return Number.isFinite(days) ? days : neverDays;
          }),
      },
    ];
  });
}
