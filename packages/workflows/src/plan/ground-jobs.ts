/** Work on the ground itself: compost and lime before a crop, kit carried from one bed to another. */
import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import type { ReportJob, ReportSowing } from '../report/plan-report.ts';
import { placeNamesOf } from '../sheets/place-names.ts';
import type { ReportGround } from './report-ground.ts';

/** Less is not worth a walk with the barrow. */
const leastBarrows = 0.5;
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
  const feeding = new Map<string, { day: number; barrows: number; lime: boolean }>();
  for (const { before, day, barrows, lime } of ground.feeding) {
    const own = feeding.get(before) ?? { day: dayFromIso(day)!, barrows: 0, lime: false };
    feeding.set(before, { ...own, barrows: own.barrows + barrows, lime: own.lime || lime });
  }
  for (const [id, { day, barrows, lime }] of feeding) {
    if (barrows >= leastBarrows) add(day, 'feed', id, { amount: barrows });
    if (lime) add(Math.max(fromDay, day - limeAheadDays), 'lime', id, {});
  }
  for (const { kit, moves } of ground.kitLedger)
    for (const { day, amount, to, toPlaceName, fromPlaceName } of moves)
      if (kit !== 'fleece' && toPlaceName !== fromPlaceName && amount >= leastCarriedM)
        add(dayFromIso(day)!, 'kit-move', to, { kit, amount, fromPlaceName });
  return jobs;
}
