import { dayFromIso, isoFromDay } from '@twelvemonth/basis';
import { type FleeceNight, hardeningDays } from '@twelvemonth/growing';
import type { ReportJob, ReportSowing } from '../report/plan-report.ts';
import { carriedKit, groundJobs } from './ground-jobs.ts';
import type { ReportGround } from './report-ground.ts';

/** The other work that sowings bring: hardening off, planting out, potting on, kit on and off, cold nights, lifting, clearing. */
export function reportJobs(
  sowings: readonly ReportSowing[],
  fromDay: number,
  nights: ReadonlyMap<string, FleeceNight>,
  ground: ReportGround | null = null,
): ReportJob[] {
  const jobs: ReportJob[] = ground === null ? [] : groundJobs(sowings, fromDay, ground);
  const carried = carriedKit(ground);
  for (const sowing of sowings) {
    const add = (day: string | null, code: ReportJob['code'], placeName: string, count: number): void => {
      const at = day === null ? null : dayFromIso(day);
      if (at === null || at < fromDay) return;
      jobs.push({
        day: isoFromDay(at),
        code,
        area: sowing.area,
        sowing: sowing.id,
        kindName: sowing.kindName,
        placeName,
        count,
      });
    };
    const first = sowing.beds[0];
    const bed =
      first === undefined
        ? (sowing.route.at(-1)?.placeName ?? '')
        : `${first.placeName}${first.number > 0 ? ` ${first.number}` : ''}`;
    const ground = sowing.route.at(-1);
    const pots = sowing.route.find((stage) => stage.stage === 'pots');
    const frame = sowing.route.find((stage) => stage.stage === 'frame');
    if (pots !== undefined) add(pots.from, 'pot-on', pots.placeName, sowing.count.plant);
    if (frame !== undefined && frame !== ground) {
      const out = ground === undefined ? null : dayFromIso(ground.from);
      if (out !== null)
        add(isoFromDay(out - hardeningDays), 'harden-off', frame.placeName, sowing.count.plant);
    }
    if (sowing.plantOut !== null && ground !== undefined)
      add(ground.from, 'plant-out', bed, sowing.count.plant);
    for (const kit of sowing.kit) {
      if (kit.kit === 'fleece') continue;
      if (!carried.has(`on/${sowing.id}/${kit.kit}/${kit.from}`))
        add(kit.from, kit.kit === 'net' ? 'net-on' : 'mesh-on', bed, sowing.count.plant);
      if (!carried.has(`off/${sowing.id}/${kit.kit}/${kit.to}`))
        add(kit.to, kit.kit === 'net' ? 'net-off' : 'mesh-off', bed, sowing.count.plant);
    }
    const night = nights.get(sowing.id);
    if (night !== undefined)
      jobs.push({
        day: isoFromDay(night.day),
        code: 'fleece-night',
        area: sowing.area,
        sowing: sowing.id,
        kindName: sowing.kindName,
        placeName: bed,
        count: sowing.count.plant,
        belowC: Math.round(night.belowC),
      });
    const once = sowing.harvests.find((h) => h.habit === 'once' && h.first.p50 !== null);
    if (once !== undefined) add(once.first.p50, 'lift', bed, sowing.count.keep);
    add(sowing.clear, 'clear', bed, sowing.count.keep);
  }
  return jobs.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.code < b.code ? -1 : 1));
}
