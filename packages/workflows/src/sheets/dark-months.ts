import { civilFromDay, type Day, dayFromCivil } from '@twelvemonth/basis';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { type DecisionLine, decisionLineOf } from './decision-line.ts';
import { type HandoverLine, handoverLines } from './handover-lines.ts';
import { placeNamesOf } from './place-names.ts';
import { addToMonth, dayOf, dayOrNull } from './sheet-days.ts';
import { headOf, type SheetHead } from './sheet-head.ts';

/** One crop that feeds the dark months or the hungry gap, counted back to the day it must be sown. */
export interface DarkLine {
  readonly number: number;
  readonly sowing: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly state: ReportSowing['state'];
  readonly placeName: string;
  readonly keepCount: number;
  readonly groundM2: number;
  readonly comesOut: readonly { readonly number: number; readonly kindName: string; readonly by: Day }[];
  /** Middle day of planting out; null where it is sown or planted in place. */
  readonly plantOut: Day | null;
  readonly sow: Day;
  readonly lastSafeDay: Day | null;
  readonly feeds: readonly {
    readonly role: string;
    readonly from: Day;
    readonly to: Day;
    readonly servings: number;
  }[];
  readonly fortnightLateServings: number | null;
  /** Risky ones: when to look, and what to do then. */
  readonly decision: DecisionLine | null;
}

export interface DarkMonthsPage {
  readonly head: SheetHead;
  readonly from: Day;
  readonly to: Day;
  /** What gives less than this over the window has no line. */
  readonly leastServings: number;
  readonly roleNames: Readonly<Record<string, string>>;
  readonly places: readonly { readonly placeName: string; readonly lines: readonly DarkLine[] }[];
  /** How the ground of these lines changes hands. */
  readonly handovers: readonly HandoverLine[];
  /** Servings over the window by role. */
  readonly totals: readonly {
    readonly role: string;
    readonly roleName: string;
    readonly eaten: number;
    readonly appetite: number;
    readonly fromStock: number;
  }[];
  readonly lean: readonly {
    readonly roleName: string;
    readonly from: Day;
    readonly to: Day;
    readonly servings: number;
  }[];
}

const servingsWorthAWord = 0.5;
/** A line gives at least this share of what is wanted in the window, but never more than a few servings are asked. */
const leastShareOfWanted = 0.0015;
const mostServingsAsked = 3;

/** Six months from the month of the shortest day: December to May in the north, June to November in the south. */
export function darkWindowOf(head: SheetHead): { readonly from: Day; readonly to: Day } {
  const ahead = head.standstill.find((s) => s.to >= head.planDay);
  const planned = civilFromDay(head.planDay);
  const middle =
    ahead === undefined
      ? dayFromCivil(planned.month > 5 ? planned.year : planned.year - 1, 12, 21)
      : Math.floor((ahead.from + ahead.to) / 2);
  const { year, month } = civilFromDay(middle);
  const after = addToMonth({ year, month }, 6);
  return { from: dayFromCivil(year, month, 1), to: dayFromCivil(after.year, after.month, 1) - 1 };
}

function darkLineOf(
  sowing: ReportSowing,
  window: { readonly from: Day; readonly to: Day },
  sowingById: ReadonlyMap<string, ReportSowing>,
): DarkLine | null {
  const feeds = sowing.reason.feeds
    .map((f) => {
      const [from, to] = [dayOf(f.from), dayOf(f.to) + 6];
      const [start, end] = [Math.max(from, window.from), Math.min(to, window.to)];
      const share = Math.max(0, end - start + 1) / (to - from + 1);
      return { role: f.role, from: start, to: end, servings: f.servings * share };
    })
    .filter((f) => f.servings >= servingsWorthAWord);
  if (feeds.length === 0) return null;
  return {
    number: sowing.number,
    sowing: sowing.id,
    kindName: sowing.kindName,
    startsAs: sowing.startsAs,
    state: sowing.state,
    placeName: placeNamesOf(sowing),
    keepCount: sowing.count.keep,
    groundM2: sowing.groundM2,
    comesOut: sowing.follows.flatMap((id) => {
      const before = sowingById.get(id);
      return before === undefined
        ? []
        : [{ number: before.number, kindName: before.kindName, by: dayOf(before.clear) }];
    }),
    plantOut: dayOrNull(sowing.plantOut?.p50 ?? null),
    sow: dayOf(sowing.sow),
    lastSafeDay: dayOrNull(sowing.lastSafeDay),
    feeds,
    fortnightLateServings: sowing.delays.find((d) => d.weeks === 2)?.servingsChange ?? null,
    decision: decisionLineOf(sowing),
  };
}

export function darkMonthsOf(report: PlanReport, printedDay: Day): DarkMonthsPage {
  const head = headOf(report, printedDay);
  const window = darkWindowOf(head);
  const sowingById = new Map(report.sowings.map((s) => [s.id, s]));
  const weeks = report.weeks.filter((w) => {
    const monday = dayOf(w.weekOf);
    return monday >= window.from && monday <= window.to;
  });
  const totals = Object.entries(report.roleNames).map(([role, roleName]) => {
    const sum = (pick: (w: (typeof weeks)[number]['roles'][string]) => number): number =>
      weeks.reduce((all, w) => all + (w.roles[role] === undefined ? 0 : pick(w.roles[role])), 0);
    return {
      role,
      roleName,
      eaten: sum((w) => w.eaten.p50),
      appetite: sum((w) => w.appetite - w.bought),
      fromStock: sum((w) => w.fromStock),
    };
  });
  const leastServings = Math.min(
    mostServingsAsked,
    leastShareOfWanted * totals.reduce((sum, t) => sum + t.appetite, 0),
  );
  const lines = report.sowings
    .map((s) => darkLineOf(s, window, sowingById))
    .filter((line) => line !== null)
    .filter((line) => line.feeds.reduce((sum, f) => sum + f.servings, 0) >= leastServings)
    .sort((a, b) => a.sow - b.sow || a.number - b.number);
  const placeNames = [...new Set(lines.map((l) => l.placeName))].sort((a, b) =>
    a.localeCompare(b, 'en', { numeric: true }),
  );
  return {
    head,
    ...window,
    leastServings,
    roleNames: report.roleNames,
    places: placeNames.map((placeName) => ({
      placeName,
      lines: lines.filter((l) => l.placeName === placeName),
    })),
    handovers: handoverLines(report, ({ to }) => lines.some((line) => line.sowing === to)),
    totals: totals.filter((t) => t.appetite >= 1),
    lean: report.shortages
      .map((s) => ({
        roleName: report.roleNames[s.role] ?? s.role,
        from: dayOf(s.from),
        to: dayOf(s.to) + 6,
        servings: s.servingsMissing,
      }))
      .filter((s) => s.from <= window.to && s.to >= window.from),
  };
}
