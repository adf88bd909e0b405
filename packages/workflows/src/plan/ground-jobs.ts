/** Work on the ground itself: compost and lime before a crop, kit carried from one bed to another. */
import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import type { ReportJob, ReportSowing } from '../report/plan-report.ts';
import { placeNamesOf } from '../sheets/place-names.ts';
import type { ReportGround } from './report-ground.ts';

/** Less in a month and place is not worth a walk with the barrow. */
const leastBarrows = 0.25;
/** A shorter piece is not worth a line of its own: it comes off and goes on. */
const leastCarriedM = 1;
/** Lime works slowly: it goes on so long before the crop. Common practice. */
const limeAheadDays = 56;

/** Lendings whose going on, or coming off, is wholly a carrying over: 'on/SOWING/KIT/DAY', 'off/…'. */
export function carriedKit(ground: ReportGround | null): ReadonlySet<string> {
  const carried = new Set<string>();
  for (const { kit, lent, moves } of ground?.kitLedger ?? [])
    for (const { sowing, amount, from, to } of lent) {
      const sum = (own: typeof moves): number =>
        own.reduce((all, move) => all + (move.amount >= leastCarriedM ? move.amount : 0), 0);
      const on = sum(moves.filter((move) => move.to === sowing && move.day === from));
      const off = sum(moves.filter((move) => move.from === sowing && move.day >= to));
      if (on >= amount - 0.1) carried.add(`on/${sowing}/${kit}/${from}`);
      if (off >= amount - 0.1) carried.add(`off/${sowing}/${kit}/${to}`);
    }
  return carried;
}

/** Compost is brought once a month to each place, before the first sowing that asks for it. */
function compostByMonth(ground: ReportGround, byId: ReadonlyMap<string, ReportSowing>) {
  const months = new Map<string, { day: number; sowings: Map<string, number>; barrows: number }>();
  for (const { before, day, barrows } of ground.feeding) {
    const sowing = byId.get(before);
    if (sowing === undefined) continue;
    const key = `${day.slice(0, 7)}/${placeNamesOf(sowing)}`;
    const own = months.get(key) ?? { day: dayFromIso(day)!, sowings: new Map(), barrows: 0 };
    own.day = Math.min(own.day, dayFromIso(day)!);
    own.barrows += barrows;
    own.sowings.set(before, (own.sowings.get(before) ?? 0) + barrows);
    months.set(key, own);
  }
  return [...months.values()].map((own) => ({ ...own, isWorth: own.barrows >= leastBarrows }));
}

export function groundJobs(
  sowings: readonly ReportSowing[],
  fromDay: number,
  ground: ReportGround,
): ReportJob[] {
  const byId = new Map(sowings.map((sowing) => [sowing.id, sowing]));
  const jobs: ReportJob[] = [];
  const add = (day: number, code: ReportJob['code'], id: string, more: Partial<ReportJob>): void => {
    const sowing = byId.get(id);
    if (sowing === undefined || day < fromDay - 6) return;
    const { area, kindName } = sowing;
    jobs.push({
      day: isoFromDay(Math.max(day, fromDay)),
      code,
      area,
      sowing: id,
      kindName,
      placeName: placeNamesOf(sowing),
      count: 0,
      ...more,
    });
  };
  for (const { day, sowings: fed, isWorth } of compostByMonth(ground, byId))
    for (const [id, barrows] of fed) if (isWorth && barrows > 0) add(day, 'feed', id, { amount: barrows });
  const limed = new Set<string>();
  for (const { before, day, lime } of ground.feeding) {
    if (!lime || limed.has(before)) continue;
    limed.add(before);
    add(Math.max(fromDay, dayFromIso(day)! - limeAheadDays), 'lime', before, {});
  }
  for (const { kit, moves } of ground.kitLedger)
    for (const { day, amount, to, toPlaceName, fromPlaceName } of moves)
      if (kit !== 'fleece' && toPlaceName !== fromPlaceName && amount >= leastCarriedM)
        add(dayFromIso(day)!, 'kit-move', to, { kit, amount, fromPlaceName });
  return jobs;
}
