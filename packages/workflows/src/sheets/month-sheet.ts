import type { Day } from '@twelvemonth/basis';
import type { KindCaution } from '@twelvemonth/growing';
import type { SeedListLine } from '../report/forecast-report.ts';
import type { PlanReport, ReportJob, ReportMaterials, ReportSowing } from '../report/plan-report.ts';
import { type DecisionLine, decisionLineOf } from './decision-line.ts';
import { type HandoverLine, handoverLines } from './handover-lines.ts';
import { lineOf, type MonthLine } from './month-line.ts';
import { type MonthWork, monthMaterialsOf, monthWorkOf } from './month-work.ts';
import { placeNamesOf } from './place-names.ts';
import { type CalendarMonth, dayOf, dayOrNull, daysOfMonthWeeks, mondayBefore } from './sheet-days.ts';
import { headOf, type SheetHead } from './sheet-head.ts';

export type { EatenPart, LineAmount, MonthLine } from './month-line.ts';

export interface MonthJob {
  readonly day: Day;
  readonly code: ReportJob['code'] | 'look';
  readonly area: string;
  readonly number: number | null;
  readonly sowing: string | null;
  readonly kindName: string;
  readonly placeName: string;
  readonly count: number;
  readonly belowC?: number | undefined;
  /** kit-move: what, how many metres, from where; feed: barrows. */
  readonly kit?: string | undefined;
  readonly amount?: number | undefined;
  readonly fromPlaceName?: string | undefined;
  /** look: what to look for, and what to do then. */
  readonly decision?: DecisionLine | undefined;
}

export interface MonthOrder {
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly packets: number;
  readonly packetCount: number;
  readonly needCount: number;
  readonly orderBy: Day;
}

const kindCautions = [
  'green-potatoes',
  'raw-beans',
  'dried-beans',
  'favism',
  'rhubarb-leaves',
  'bitter-squash',
  'plant-sap',
  'oxalate-leaves',
] as const satisfies readonly KindCaution[];

export type Caution = KindCaution | 'nitrate-leaves' | 'compost-dust' | 'spray-label';

export interface MonthArea {
  readonly area: string;
  /** Not done and due before today: first on the sheet. */
  readonly late: readonly MonthLine[];
  readonly weeks: readonly { readonly monday: Day; readonly lines: readonly MonthLine[] }[];
  readonly jobs: readonly MonthJob[];
}

export interface MonthSheet {
  readonly head: SheetHead;
  readonly month: CalendarMonth;
  readonly areas: readonly MonthArea[];
  readonly orders: readonly MonthOrder[];
  /** Strips that change hands in the month's weeks. */
  readonly handovers: readonly HandoverLine[];
  readonly cautions: readonly Caution[];
  readonly work: MonthWork | null;
  readonly materials: ReportMaterials | null;
}

export interface MonthRequest {
  readonly month: CalendarMonth;
  readonly today: Day;
  readonly seeds: readonly SeedListLine[];
}

function linesOf(report: PlanReport): MonthLine[] {
  const sowingById = new Map(report.sowings.map((s) => [s.id, s]));
  return report.sowings.flatMap((sowing) => {
    const lines: MonthLine[] = [];
    const begins: MonthLine['act'] = sowing.routeId === 'planted' ? 'plant' : 'sow';
    if (sowing.state !== 'done') lines.push(lineOf(sowing, begins, dayOf(sowing.sow), sowingById));
    const plantOut = dayOrNull(sowing.plantOut?.p50 ?? null);
    const planted = plantOut !== null && sowing.state === 'done' && plantOut < dayOf(report.from);
    if (plantOut !== null && !planted) lines.push(lineOf(sowing, 'plant-out', plantOut, sowingById));
    return lines;
  });
}

function cautionsOf(ofKinds: ReadonlySet<string>, darkRoles: ReadonlySet<string>, sows: boolean): Caution[] {
  const cautions: Caution[] = kindCautions.filter((caution) => ofKinds.has(caution));
  if (darkRoles.has('salad-leaves') || darkRoles.has('cooked-greens')) cautions.push('nitrate-leaves');
  if (sows) cautions.push('compost-dust');
  cautions.push('spray-label');
  return cautions;
}

/** A risky sowing is looked at on its make-or-break day. */
function looksOf(report: PlanReport): MonthJob[] {
  return report.sowings.flatMap((sowing) => {
    const decision = decisionLineOf(sowing);
    if (decision === null) return [];
    return [
      {
        day: decision.decisionDay,
        code: 'look' as const,
        area: sowing.area,
        number: sowing.number,
        sowing: sowing.id,
        kindName: sowing.kindName,
        placeName: placeNamesOf(sowing),
        count: sowing.count.plant,
        decision,
      },
    ];
  });
}

function jobsOf(report: PlanReport, from: Day, to: Day): MonthJob[] {
  const numberById = new Map(report.sowings.map((s) => [s.id, s.number]));
  const jobs = report.jobs
    .filter((job) => job.code !== 'plant-out' && job.code !== 'order')
    .map((job) => ({
      ...job,
      day: dayOf(job.day),
      number: job.sowing === null ? null : (numberById.get(job.sowing) ?? null),
    }));
  return [...jobs, ...looksOf(report)]
    .filter((job) => job.day >= from && job.day <= to)
    .sort((a, b) => a.day - b.day || a.code.localeCompare(b.code) || (a.number ?? 0) - (b.number ?? 0));
}

function ordersOf(seeds: readonly SeedListLine[], from: Day, to: Day, first: boolean): MonthOrder[] {
  return seeds
    .map((s) => ({
      kind: s.kind,
      kindName: s.kindName,
      startsAs: s.startsAs,
      packets: s.packets,
      packetCount: s.packetCount,
      needCount: s.needCount,
      orderBy: dayOf(s.orderBy),
    }))
    .filter((o) => o.packets > 0 && o.orderBy <= to && (first || o.orderBy >= from))
    .sort((a, b) => a.orderBy - b.orderBy || a.kindName.localeCompare(b.kindName));
}

/** The month's sheet. What lies before today and is not done waits on top of the sheet that holds today. */
export function monthSheetOf(report: PlanReport, request: MonthRequest): MonthSheet {
  const { from, to } = daysOfMonthWeeks(request.month);
  const thisMonth = request.today >= from && request.today <= to;
  const current = mondayBefore(request.today);
  const isLate = (line: MonthLine): boolean =>
    thisMonth && line.monday < current && line.state !== 'done' && line.day < request.today;
  const inWeeks = (line: MonthLine): boolean =>
    line.monday >= from && line.monday <= to && (!thisMonth || line.monday >= current);
  const lines = linesOf(report).sort((a, b) => a.day - b.day || a.number - b.number);
  const jobs = jobsOf(report, thisMonth ? current : from, to);
  const late = lines.filter(isLate);
  const ahead = lines.filter(inWeeks);

  const areaNames = [...new Set([...late, ...ahead, ...jobs].map((x) => x.area))];
  areaNames.sort((a, b) => Number(b === 'home') - Number(a === 'home') || a.localeCompare(b));
  const areas = areaNames.map((area): MonthArea => {
    const own = ahead.filter((line) => line.area === area);
    const mondays = [...new Set(own.map((line) => line.monday))].sort((a, b) => a - b);
    return {
      area,
      late: late.filter((line) => line.area === area),
      weeks: mondays.map((monday) => ({ monday, lines: own.filter((line) => line.monday === monday) })),
      jobs: jobs.filter((job) => job.area === area),
    };
  });

  const head = headOf(report, request.today);
  const shown = new Set([...late, ...ahead].map((line) => line.sowing));
  const sowings = report.sowings.filter((s) => shown.has(s.id));
  const dark = (s: ReportSowing): string[] =>
    s.reason.feeds
      .filter((f) => head.standstill.some((w) => dayOf(f.from) <= w.to && dayOf(f.to) >= w.from))
      .map((f) => f.role);
  return {
    head,
    month: request.month,
    areas,
    orders: ordersOf(request.seeds, from, to, thisMonth),
    handovers: handoverLines(report, ({ monday }) => monday >= from && monday <= to),
    work: monthWorkOf(report, from, to),
    materials: monthMaterialsOf(report, request.month),
    cautions: cautionsOf(
      new Set(sowings.flatMap((s) => s.cautions)),
      new Set(sowings.flatMap(dark)),
      [...late, ...ahead].some((line) => line.act === 'sow' && line.route !== 'direct'),
    ),
  };
}
