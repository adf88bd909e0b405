import type { Day } from '@twelvemonth/basis';
import type { ReportRest } from '../report/ground-report.ts';
import type { ReportHarvest, ReportSowing } from '../report/plan-report.ts';
import { type DecisionLine, decisionLineOf } from './decision-line.ts';
import { dayOf, dayOrNull, mondayBefore } from './sheet-days.ts';

export interface EatenPart {
  readonly harvest: string;
  readonly role: string;
  readonly habit: string;
  /** First day in most years; null where it never comes in most years (see `reason`). */
  readonly firstFrom: Day | null;
  readonly firstTo: Day | null;
  /** First day in a middling year; set while `firstTo` is null where it comes in most years, not in nearly all. */
  readonly firstMiddle: Day | null;
  readonly lastMiddle: Day | null;
  readonly lastTo: Day | null;
  readonly reason: string | null;
}

export interface LineAmount {
  readonly unit: 'pieces' | 'metres' | 'trays';
  readonly sow: number | null;
  readonly plant: number | null;
  readonly keep: number | null;
}

/** One thing to begin: sow it, plant it (sets, cloves, tubers), or plant it out after raising. */
export interface MonthLine {
  readonly act: 'sow' | 'plant' | 'plant-out';
  readonly state: ReportSowing['state'];
  readonly number: number;
  readonly sowing: string;
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly area: string;
  readonly day: Day;
  readonly monday: Day;
  readonly amount: LineAmount;
  readonly route: string;
  readonly spacingCm: ReportSowing['spacingCm'];
  readonly path: readonly { readonly stage: string; readonly placeName: string; readonly to: Day }[];
  readonly beds: readonly { readonly placeName: string; readonly numbers: readonly number[] }[];
  readonly clearFirst: readonly { readonly number: number; readonly kindName: string; readonly by: Day }[];
  readonly eaten: readonly EatenPart[];
  readonly lastSafeDay: Day | null;
  readonly weekLateServings: number | null;
  readonly mind: ReportSowing['risks'];
  /** Ground on which its family is back too soon. */
  readonly rests: readonly ReportRest[];
  readonly decision: DecisionLine | null;
  /** Crops between which it is planted while they still stand. */
  readonly between: readonly { readonly number: number; readonly kindName: string }[];
  readonly kit: readonly {
    readonly kit: string;
    readonly why: string;
    readonly from: Day;
    readonly to: Day;
  }[];
}

const trayM2 = 0.2;

function amountOf(sowing: ReportSowing, act: MonthLine['act']): LineAmount {
  const { sow, plant, keep } = sowing.count;
  if (act === 'plant-out') return { unit: 'pieces', sow: null, plant, keep };
  if (sowing.routeId === 'tray')
    return { unit: 'trays', sow: Math.max(1, Math.round(sowing.groundM2 / trayM2)), plant: null, keep: null };
  if (sowing.routeId === 'direct') {
    const metres = (count: number): number =>
      Math.max(0.5, Math.round((count * sowing.spacingCm.inRow) / 50) / 2);
    return { unit: 'metres', sow: metres(plant), plant: null, keep: metres(keep) };
  }
  return { unit: 'pieces', sow, plant: act === 'plant' ? null : plant, keep };
}

export function eatenPartOf(harvest: ReportHarvest): EatenPart {
  return {
    harvest: harvest.id,
    role: harvest.role,
    habit: harvest.habit,
    firstFrom: dayOrNull(harvest.first.p10),
    firstTo: dayOrNull(harvest.first.p90),
    firstMiddle: dayOrNull(harvest.first.p50),
    lastMiddle: dayOrNull(harvest.last.p50),
    lastTo: dayOrNull(harvest.last.p90),
    reason: harvest.first.reason,
  };
}

function bedsOf(sowing: ReportSowing): MonthLine['beds'] {
  const numbersByPlace = new Map<string, Set<number>>();
  for (const bed of sowing.beds) {
    const numbers = numbersByPlace.get(bed.placeName) ?? new Set();
    numbersByPlace.set(bed.placeName, numbers.add(bed.number));
  }
  return [...numbersByPlace].map(([placeName, numbers]) => ({
    placeName,
    numbers: [...numbers].sort((a, b) => a - b),
  }));
}

export function lineOf(
  sowing: ReportSowing,
  act: MonthLine['act'],
  day: Day,
  sowingById: ReadonlyMap<string, ReportSowing>,
): MonthLine {
  const hosts = (sowing.guestOf?.hosts ?? []).flatMap((host) => sowingById.get(host.sowing) ?? []);
  const stages = act === 'plant-out' ? [] : sowing.route;
  return {
    act,
    state: act === 'plant-out' && sowing.state === 'done' ? 'firm' : sowing.state,
    number: sowing.number,
    sowing: sowing.id,
    kind: sowing.kind,
    kindName: sowing.kindName,
    startsAs: sowing.startsAs,
    area: sowing.area,
    day,
    monday: mondayBefore(day),
    amount: amountOf(sowing, act),
    route: sowing.routeId,
    spacingCm: sowing.spacingCm,
    path: stages.map((s) => ({ stage: s.stage, placeName: s.placeName, to: dayOf(s.to) })),
    beds: bedsOf(sowing),
    clearFirst: sowing.follows.flatMap((id) => {
      if (hosts.some((host) => host.id === id)) return [];
      const before = sowingById.get(id);
      return before === undefined
        ? []
        : [{ number: before.number, kindName: before.kindName, by: dayOf(before.clear) }];
    }),
    eaten: sowing.harvests.map(eatenPartOf),
    lastSafeDay: act === 'plant-out' ? null : dayOrNull(sowing.lastSafeDay),
    weekLateServings:
      act === 'plant-out' ? null : (sowing.delays.find((d) => d.weeks === 1)?.servingsChange ?? null),
    mind: sowing.risks,
    rests: sowing.rests ?? [],
    decision: decisionLineOf(sowing),
    between: hosts.map(({ number, kindName }) => ({ number, kindName })),
    kit: sowing.kit.map((k) => ({ ...k, from: dayOf(k.from), to: dayOf(k.to) })),
  };
}
