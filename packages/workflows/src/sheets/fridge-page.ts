import type { Day } from '@twelvemonth/basis';
import type { PlanReport, ReportHarvest, ReportSowing } from '../report/plan-report.ts';
import type { MonthJob } from './month-sheet.ts';
import { dayOf, dayOrNull, mondayBefore } from './sheet-days.ts';
import { headOf, type SheetHead } from './sheet-head.ts';

/** Something that can be eaten this week. */
export interface FridgeItem {
  readonly number: number;
  readonly kindName: string;
  readonly role: string;
  readonly habit: string;
  readonly harvest: string;
  readonly placeName: string;
  readonly area: string;
  /** Last day of it in the middle of the forecast, and in late years. */
  readonly endsMiddle: Day | null;
  readonly endsLate: Day | null;
}

export interface WaterLine {
  readonly placeName: string;
  readonly area: string;
  readonly kindNames: readonly string[];
  /** Trays and pots dry out first. */
  readonly thirsty: boolean;
}

export interface FridgePage {
  readonly head: SheetHead;
  readonly monday: Day;
  readonly eatFirst: readonly FridgeItem[];
  readonly ready: readonly FridgeItem[];
  /** More came ready than will be eaten. */
  readonly putBy: readonly { readonly role: string; readonly roleName: string; readonly servings: number }[];
  readonly left: readonly {
    readonly what: string;
    /** 'ground', or a store id. */
    readonly where: string;
    readonly servings: number;
    readonly kg: number | null;
    readonly untilFrom: Day | null;
    readonly untilTo: Day | null;
  }[];
  readonly water: readonly WaterLine[];
  readonly nights: readonly MonthJob[];
}

const goingOverWithinDays = 20;
const leastGlutServings = 2;

const startsBy = (harvest: ReportHarvest, day: Day): boolean =>
  harvest.first.p50 !== null && dayOf(harvest.first.p50) <= day;
const lastsTo = (harvest: ReportHarvest, day: Day): boolean => {
  const last = harvest.last.p90 ?? harvest.last.p50;
  return last === null || dayOf(last) >= day;
};

const placeNow = (sowing: ReportSowing, day: Day): { name: string; raised: boolean } | null => {
  const stages = sowing.route.filter((s) => dayOf(s.from) <= day && day <= dayOf(s.to));
  const stage = stages.at(-1);
  const inGround = dayOrNull(sowing.plantOut?.p50 ?? null);
  if (inGround !== null && day < inGround)
    return stage === undefined ? null : { name: stage.placeName, raised: true };
  const bed = sowing.beds[0];
  if (bed !== undefined)
    return { name: bed.number > 0 ? `${bed.placeName} ${bed.number}` : bed.placeName, raised: false };
  return stage === undefined ? null : { name: stage.placeName, raised: true };
};

function watersOf(report: PlanReport, monday: Day): WaterLine[] {
  const lines = new Map<string, { area: string; kinds: Set<string>; thirsty: boolean }>();
  for (const sowing of report.sowings) {
    if (dayOf(sowing.sow) > monday + 6 || dayOf(sowing.clear) < monday) continue;
    const place = placeNow(sowing, monday);
    if (place === null) continue;
    const line = lines.get(place.name) ?? { area: sowing.area, kinds: new Set(), thirsty: false };
    line.kinds.add(sowing.kindName);
    line.thirsty ||= place.raised || sowing.route.at(-1)?.stage === 'tub';
    lines.set(place.name, line);
  }
  return [...lines]
    .map(([placeName, l]) => ({ placeName, area: l.area, kindNames: [...l.kinds], thirsty: l.thirsty }))
    .sort(
      (a, b) =>
        Number(b.thirsty) - Number(a.thirsty) ||
        a.placeName.localeCompare(b.placeName, 'en', { numeric: true }),
    );
}

export function fridgePageOf(report: PlanReport, day: Day, printedDay: Day): FridgePage {
  const monday = mondayBefore(day);
  const items = report.sowings.flatMap((sowing) =>
    dayOf(sowing.clear) < monday
      ? []
      : sowing.harvests
          .filter((h) => startsBy(h, monday + 6) && lastsTo(h, monday))
          .map(
            (h): FridgeItem => ({
              number: sowing.number,
              kindName: sowing.kindName,
              role: h.role,
              habit: h.habit,
              harvest: h.id,
              placeName: placeNow(sowing, monday)?.name ?? sowing.area,
              area: sowing.area,
              endsMiddle: dayOrNull(h.last.p50),
              endsLate: dayOrNull(h.last.p90),
            }),
          ),
  );
  items.sort((a, b) => (a.endsMiddle ?? Infinity) - (b.endsMiddle ?? Infinity) || a.number - b.number);
  const goingOver = (item: FridgeItem): boolean =>
    item.endsMiddle !== null && item.endsMiddle <= monday + goingOverWithinDays;

  const week = report.weeks.find((w) => dayOf(w.weekOf) === monday);
  const putBy = Object.entries(week?.roles ?? {})
    .map(([role, w]) => ({
      role,
      roleName: report.roleNames[role] ?? role,
      servings: w.offered - Math.max(0, w.eaten.p50 - w.fromStock),
    }))
    .filter((w) => w.servings >= leastGlutServings)
    .sort((a, b) => b.servings - a.servings);

  const standing = items
    .filter((item) => item.habit === 'stands' && !goingOver(item))
    .map((item) => ({
      what: item.kindName,
      where: 'ground',
      servings: report.sowings
        .filter((s) => s.number === item.number)
        .flatMap((s) => s.harvests)
        .filter((h) => h.id === item.harvest)
        .reduce((sum, h) => sum + h.servings.p50, 0),
      kg: null,
      untilFrom: item.endsMiddle,
      untilTo: item.endsLate,
    }));
  const stored = report.stock.map((lot) => ({
    what: lot.kindName,
    where: lot.store,
    servings: lot.servings,
    kg: lot.kg,
    untilFrom: dayOrNull(lot.runsOut.p10),
    untilTo: dayOrNull(lot.runsOut.p90),
  }));

  const numberById = new Map(report.sowings.map((s) => [s.id, s.number]));
  return {
    head: headOf(report, printedDay),
    monday,
    eatFirst: items.filter(goingOver),
    ready: items.filter((item) => !goingOver(item)),
    putBy,
    left: [...standing, ...stored.filter((lot) => lot.untilTo === null || lot.untilTo >= monday)],
    water: watersOf(report, monday),
    nights: report.jobs
      .filter((job) => job.code === 'fleece-night')
      .map((job) => ({
        ...job,
        day: dayOf(job.day),
        number: job.sowing === null ? null : (numberById.get(job.sowing) ?? null),
      }))
      .filter((job) => job.day >= monday && job.day <= monday + 6),
  };
}
