/** How long things keep: the best store of a kind against cold-store tables, and the end of keeping in a household. */
import { civilFromDay, dayFromCivil, isoFromDay, quantileOfSorted } from '../../packages/basis/src/index.ts';
import {
  type CropType,
  calendarRows,
  type Harvest,
  type KeepingRule,
  NEVER,
  runSowing,
} from '../../packages/growing/src/index.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';
import { rangeRows, type Said } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import { keepingEnd, keepingLife } from '../targets.ts';
import type { TruthRow } from '../truth-row.ts';
import { middleOfSowing } from './calendar.ts';

const station = 'dublin';
const none: Said = { got: Number.NaN, note: 'has no store' };

/** Stores that keep things fresh; freezer and jar are another matter. */
function bestRule(kind: CropType, but: readonly string[]): { harvest: Harvest; rule: KeepingRule } | null {
  const rules = kind.harvests.flatMap((harvest) => harvest.stores.map((rule) => ({ harvest, rule })));
  const fresh = rules.filter(({ rule }) => !but.includes(rule.store));
  return fresh.toSorted((a, b) => b.rule.lifeWeeks - a.rule.lifeWeeks)[0] ?? null;
}

/** Where a kind has no store of its own: what is picked is eaten within these weeks, in the fridge. */
function lifeWeeks(kind: CropType): Said {
  const best = bestRule(kind, ['freezer', 'jar']);
  if (best !== null) return { got: best.rule.lifeWeeks, note: best.rule.store };
  const weeks = Math.max(...kind.harvests.map((harvest) => harvest.eatWithinWeeks));
  return weeks === 0 ? none : { got: weeks, note: 'eaten within' };
}

/** What stands is lifted for the store by the first of November; the rest when it is ready. */
function liftedDay(kind: CropType, harvest: Harvest): number {
  const row = calendarRows().find((each) => each.kind === kind.id);
  if (row === undefined) return NEVER;
  const plan = sowingPlan(kind, row.route, row.growsIn === 'tub' ? 'open' : row.growsIn, middleOfSowing(row));
  const context = contextAt(station);
  const days = context.members.map((member) => {
    const { harvests } = runSowing(context, member, plan, noStores);
    return harvests.find((run) => run.id === harvest.id)?.firstDay ?? NEVER;
  });
  const ready = quantileOfSorted(Float64Array.from(days).sort(), 0.5);
  if (ready >= NEVER / 2 || harvest.habit !== 'stands') return ready;
  return Math.max(ready, dayFromCivil(civilFromDay(ready).year, 11, 1));
}

/** Days after New Year of the winter that follows; a year-end before New Year is negative there, so days count from 1 July. */
function endOfKeeping(kind: CropType, fromDayOfYear: number): Said {
  const best = bestRule(kind, ['freezer', 'jar', 'fridge']);
  if (best === null) return none;
  const lifted = liftedDay(kind, best.harvest);
  if (lifted >= NEVER / 2) return { got: Number.NaN, note: 'no calendar row, or never ready' };
  const end = lifted + best.rule.cureDays + 7 * best.rule.lifeWeeks;
  const { year } = civilFromDay(end);
  const sinceNewYear = end - dayFromCivil(year, 1, 1) + 1;
  // The end that is meant lies in the winter of the published one: shift by a year where that is nearer.
  const got = sinceNewYear - 365 * Math.round((sinceNewYear - fromDayOfYear) / 365);
  return {
    got,
    note: `lifted ${isoFromDay(Math.round(lifted))}, ${best.rule.store} to ${isoFromDay(Math.round(end))}`,
  };
}

export const keepingRows = (split: Split): TruthRow[] => [
  ...rangeRows(
    'keeping-life',
    split,
    { quantity: keepingLife, unit: 'weeks', low: 'lowWeeks', high: 'highWeeks' },
    lifeWeeks,
  ),
  ...rangeRows(
    'keeping-end',
    split,
    { quantity: keepingEnd, unit: 'd', low: 'fromDayOfYear', high: 'toDayOfYear' },
    (kind, figure) => endOfKeeping(kind, Number(figure.fromDayOfYear)),
  ),
];
