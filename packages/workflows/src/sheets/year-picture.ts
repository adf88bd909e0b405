import type { Day } from '@twelvemonth/basis';
import type { PlanReport, ReportRoleWeek } from '../report/plan-report.ts';
import { dayOf } from './sheet-days.ts';
import { headOf, type SheetHead } from './sheet-head.ts';

export interface LaneWeek extends ReportRoleWeek {
  readonly monday: Day;
  /** What the garden is to give: appetite without what is bought on purpose. */
  readonly wanted: number;
  readonly lean: boolean;
}

export interface RoleLane {
  readonly role: string;
  readonly name: string;
  readonly weeks: readonly LaneWeek[];
  readonly leanWeeks: number;
  readonly servingsMissing: number;
  readonly wanted: number;
  readonly eaten: number;
  readonly fromStock: number;
}

export interface YearPicture {
  readonly head: SheetHead;
  readonly from: Day;
  readonly to: Day;
  readonly lanes: readonly RoleLane[];
}

/** A week is marked lean where it is lean in at least half of the members. */
const leanMarkShare = 0.5;
const nothing: ReportRoleWeek = {
  appetite: 0,
  bought: 0,
  offered: 0,
  eaten: { p10: 0, p50: 0, p90: 0 },
  fromStock: 0,
  stockLeft: 0,
  chanceLean: 0,
};

function laneOf(report: PlanReport, role: string, name: string): RoleLane {
  const weeks = report.weeks.map((week): LaneWeek => {
    const own = week.roles[role] ?? nothing;
    return {
      ...own,
      monday: dayOf(week.weekOf),
      wanted: Math.max(0, own.appetite - own.bought),
      lean: own.chanceLean >= leanMarkShare,
    };
  });
  const sum = (pick: (week: LaneWeek) => number): number => weeks.reduce((all, w) => all + pick(w), 0);
  return {
    role,
    name,
    weeks,
    leanWeeks: sum((w) => w.chanceLean),
    servingsMissing: sum((w) => Math.max(0, w.wanted - w.eaten.p50)),
    wanted: sum((w) => w.wanted),
    eaten: sum((w) => w.eaten.p50),
    fromStock: sum((w) => w.fromStock),
  };
}

/** One lane a kitchen role that somebody eats or the garden gives. */
export function yearPictureOf(report: PlanReport, printedDay: Day): YearPicture {
  const lanes = Object.entries(report.roleNames)
    .map(([role, name]) => laneOf(report, role, name))
    .filter((lane) => lane.wanted > 0 || lane.eaten > 0);
  const from = dayOf(report.from);
  const last = report.weeks.at(-1);
  return {
    head: headOf(report, printedDay),
    from,
    to: last === undefined ? from : dayOf(last.weekOf) + 6,
    lanes,
  };
}
