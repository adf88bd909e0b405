/** Weeks from sowing or planting to the first harvest, as handbooks give them: sown in the middle of the published window. */
import { quantileOfSorted } from '../../packages/basis/src/index.ts';
import { type CropType, calendarRows, NEVER, runSowing } from '../../packages/growing/src/index.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';
import { rangeRows, type Said } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import type { TruthRow } from '../truth-row.ts';
import { mainHarvestIndex, middleOfSowing, tradeStations } from './calendar.ts';

/** Handbooks name whole weeks, and no sowing day within the season. */
const slackWeeks = 1;

/** The first window of the kind in the calendar, in open ground where it has one. */
function weeksTo(kind: CropType): Said {
  const rows = calendarRows().filter((row) => row.kind === kind.id);
  const row = rows.find((each) => each.growsIn === 'open') ?? rows[0];
  if (row === undefined) return { got: Number.NaN, note: 'no calendar row' };
  const startDay = middleOfSowing(row);
  const plan = sowingPlan(kind, row.route, row.growsIn === 'tub' ? 'open' : row.growsIn, startDay);
  const index = mainHarvestIndex(kind);
  const weeks = tradeStations.map((station) => {
    const context = contextAt(station);
    const days = context.members.map(
      (member) => runSowing(context, member, plan, noStores).harvests[index]!.firstDay,
    );
    const median = quantileOfSorted(Float64Array.from(days).sort(), 0.5);
    return median >= NEVER / 2 ? Number.POSITIVE_INFINITY : (median - startDay) / 7;
  });
  return { got: weeks.reduce((a, b) => a + b, 0) / weeks.length, note: `${row.route}, ${row.growsIn}` };
}

export const weeksToHarvestRows = (split: Split): TruthRow[] =>
  rangeRows(
    'weeks-to-harvest',
    split,
    {
      quantity: 'weeks from sowing to the first harvest',
      unit: 'weeks',
      low: 'lowWeeks',
      high: 'highWeeks',
      slack: slackWeeks,
    },
    weeksTo,
  );
