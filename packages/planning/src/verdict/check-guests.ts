/**
 * Guests between hosts, strip by strip and week by week: whoever stands on a guest's strips before they are its own must
 * be a host that takes it, in its last weeks, and no host gives up more than its share.
 */
import { isoOfWeek, type Week, weekOfDay } from '@twelvemonth/basis';
import type { CheckedSowing } from './checked-sowing.ts';

const holds = (sowing: CheckedSowing, place: string, number: number, strip: number): boolean =>
  (sowing.placements ?? []).some(
    ({ bed, stripsFrom, stripsCount }) =>
      bed.place === place && bed.number === number && stripsFrom <= strip && strip < stripsFrom + stripsCount,
  );

export function guestsWrong(sowings: readonly CheckedSowing[]): string[] {
  const found: string[] = [];
  const released = new Map<CheckedSowing, number>();
  for (const guest of sowings) {
    if (guest.guestOf === undefined) continue;
    const from: Week = guest.guestOf.fromWeek;
    const { stages, plantDay, startDay } = guest.plan;
    const begun = stages.length > 0 ? plantDay : startDay;
    if (begun === null || weekOfDay(begun) < from)
      found.push(`guest-early:${guest.plan.id}:${isoOfWeek(from)}`);
    for (const { bed, stripsFrom, stripsCount } of guest.placements ?? [])
      for (let strip = stripsFrom; strip < stripsFrom + stripsCount; strip++) {
        const there = sowings.filter(
          (other) =>
            other !== guest &&
            (other.guestOf?.fromWeek ?? other.groundFromWeek) < guest.groundFromWeek &&
            other.groundToWeek > from &&
            holds(other, bed.place, bed.number, strip),
        );
        for (const host of there) {
          const { guestCrops, guestWeeks } = host.plan.kind;
          const isHost = guestCrops.includes(guest.plan.kind.crop) && host.groundToWeek - from <= guestWeeks;
          if (isHost && there.length === 1) released.set(host, (released.get(host) ?? 0) + 1);
          else found.push(`guest-wrong:${guest.plan.id}:${host.plan.id}:${bed.place} ${bed.number}/${strip}`);
        }
      }
  }
  for (const [host, strips] of released)
    if (strips > Math.floor(host.plan.kind.guestShare * host.stripsCount + 1e-9))
      found.push(`guest-share:${host.plan.id}:${strips}/${host.stripsCount}`);
  return [...new Set(found)];
}
