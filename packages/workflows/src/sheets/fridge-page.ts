import type { Day } from '@twelvemonth/basis';
import type { PlanReport, ReportHarvest, ReportSowing } from '../report/plan-report.ts';
import type { MonthJob } from './month-sheet.ts';
import { numberedName, placeNamesOf } from './place-names.ts';
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
const storeLossShareAWeek = 0.05;

const startsBy = (harvest: ReportHarvest, day: Day): boolean =>
  harvest.first.p50 !== null && dayOf(harvest.first.p50) <= day;
const lastsTo = (harvest: ReportHarvest, day: Day): boolean => {
  const last = harvest.last.p90 ?? harvest.last.p50;
  return last === null || dayOf(last) >= day;
};

interface PlaceNow {
  readonly name: string;
  readonly numbers: readonly number[];
  readonly raised: boolean;
}

/** Where a sowing is on a day: on its bench while it is raised, then in every one of its beds or tubs. */
function placesNow(sowing: ReportSowing, day: Day): readonly PlaceNow[] {
  const stage = sowing.route.filter((s) => dayOf(s.from) <= day && day <= dayOf(s.to)).at(-1);
  const inGround = dayOrNull(sowing.plantOut?.p50 ?? null);
  const raised = inGround !== null && day < inGround;
  if (raised || sowing.beds.length === 0)
    return stage === undefined ? [] : [{ name: stage.placeName, numbers: [], raised: true }];
  return sowing.beds.map((bed) => ({ name: bed.placeName, numbers: [bed.number], raised: false }));
}

function placeTextNow(sowing: ReportSowing, day: Day): string {
  const places = placesNow(sowing, day);
  if (places.length === 0) return sowing.area;
  return places[0]!.raised ? places[0]!.name : placeNamesOf(sowing);
}

function watersOf(report: PlanReport, monday: Day): WaterLine[] {
  const lines = new Map<string, PlaceNow & { area: string; kinds: Set<string>; thirsty: boolean }>();
  for (const sowing of report.sowings) {
    if (dayOf(sowing.sow) > monday + 6 || dayOf(sowing.clear) < monday) continue;
    for (const place of placesNow(sowing, monday)) {
      const key = numberedName(place.name, place.numbers);
      const line = lines.get(key) ?? { ...place, area: sowing.area, kinds: new Set(), thirsty: false };
      line.kinds.add(sowing.kindName);
      line.thirsty ||= place.raised || sowing.route.at(-1)?.stage === 'tub';
      lines.set(key, line);
    }
  }
  const joined = new Map<string, WaterLine & { name: string; numbers: number[] }>();
  for (const { name, numbers, area, kinds, thirsty } of lines.values()) {
    const kindNames = [...kinds];
    const key = [name, area, thirsty, ...kindNames].join('|');
    const all = [...(joined.get(key)?.numbers ?? []), ...numbers];
    joined.set(key, {
      name,
      numbers: all,
      placeName: numberedName(name, all),
      area,
      kindNames,
      thirsty,
    });
  }
  return [...joined.values()]
    .map(({ placeName, area, kindNames, thirsty }) => ({ placeName, area, kindNames, thirsty }))
    .sort(
      (a, b) =>
        Number(b.thirsty) - Number(a.thirsty) ||
        a.placeName.localeCompare(b.placeName, 'en', { numeric: true }),
    );
}

type WeekRoles = PlanReport['weeks'][number]['roles'];

/** What came in and is neither eaten nor in store at the week's end; what a store loses by itself is no glut. */
function putByOf(report: PlanReport, monday: Day): FridgePage['putBy'] {
  const at = report.weeks.findIndex((w) => dayOf(w.weekOf) === monday);
  const roles: WeekRoles = report.weeks[at]?.roles ?? {};
  const before: WeekRoles = report.weeks[at - 1]?.roles ?? {};
  return Object.entries(roles)
    .map(([role, w]) => {
      const fresh = w.offered - Math.max(0, w.eaten.p50 - w.fromStock);
      const intoStore = Math.max(0, w.stockLeft + w.fromStock - (before[role]?.stockLeft ?? 0));
      return {
        role,
        roleName: report.roleNames[role] ?? role,
        servings: fresh - intoStore,
        least: Math.max(leastGlutServings, storeLossShareAWeek * w.stockLeft),
      };
    })
    .filter((w) => w.servings >= w.least)
    .map(({ role, roleName, servings }) => ({ role, roleName, servings }))
    .sort((a, b) => b.servings - a.servings);
}

export function fridgePageOf(report: PlanReport, day: Day, printedDay: Day): FridgePage {
  const monday = mondayBefore(day);
  const roles = report.weeks.find((w) => dayOf(w.weekOf) === monday)?.roles;
  // A perennial is picked in its season only, though its harvest spans the years between.
  const outOfSeason = (role: string): boolean => {
    const w = roles?.[role];
    return w !== undefined && w.offered === 0 && w.eaten.p50 === 0;
  };
  const items = report.sowings.flatMap((sowing) =>
    dayOf(sowing.clear) < monday
      ? []
      : sowing.harvests
          .filter(
            (h) =>
              startsBy(h, monday + 6) && lastsTo(h, monday) && !(h.habit === 'picks' && outOfSeason(h.role)),
          )
          .map(
            (h): FridgeItem => ({
              number: sowing.number,
              kindName: sowing.kindName,
              role: h.role,
              habit: h.habit,
              harvest: h.id,
              placeName: placeTextNow(sowing, monday),
              area: sowing.area,
              endsMiddle: dayOrNull(h.last.p50),
              endsLate: dayOrNull(h.last.p90),
            }),
          ),
  );
  items.sort((a, b) => (a.endsMiddle ?? Infinity) - (b.endsMiddle ?? Infinity) || a.number - b.number);
  const goingOver = (item: FridgeItem): boolean =>
    item.endsMiddle !== null && item.endsMiddle <= monday + goingOverWithinDays;

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
    putBy: putByOf(report, monday),
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
