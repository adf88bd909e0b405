/**
 * Interplanting as host and guest: plants that wait in pots for their ground go into strips of a crop that still stands
 * there and is being cleared bit by bit. The guest takes whole strips that the host has released, at most the host's
 * share of them, in the host's last weeks and after its first harvest; no other crop may lie on them meanwhile.
 *
 *   guests' strips on a host ≤ ⌊share · host's strips⌋,   host ends − weeks ≤ guest begins < host ends
 */
import type { Week } from '@twelvemonth/basis';
import type { CropType } from '@twelvemonth/growing';
import type { Placement } from './held-strips.ts';

export interface Interplantable {
  readonly id: string;
  readonly kind: CropType;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly placements: readonly Placement[];
  /** Week of the first harvest in most years; Infinity where none comes. */
  readonly firstHarvestWeek: Week;
  /** Earliest week in which its plants are fit to go out; its own first week where they do not wait. */
  readonly readyWeek: Week;
}

export interface GuestHost {
  readonly host: string;
  readonly strips: number;
}

export interface GuestPlanting {
  /** Week of planting, between the host's rows; the ground is the guest's own from `groundFromWeek`. */
  readonly fromWeek: Week;
  readonly hosts: readonly GuestHost[];
}

const stripsOf = ({ placements }: Interplantable): string[] =>
  placements.flatMap(({ bed, stripsFrom, stripsCount }) =>
    Array.from({ length: stripsCount }, (_, i) => `${bed.place}/${bed.number}/${stripsFrom + i}`),
  );

/** Whole strips that a host of so many gives up before it is cleared. */
export const releasedStrips = (host: CropType, strips: number): number =>
  Math.floor(host.guestShare * strips + 1e-9);

export const takesGuest = (host: CropType, guest: CropType): boolean =>
  host.guestWeeks > 0 && host.guestCrops.includes(guest.crop);

function hostsFrom(
  guest: Interplantable,
  fromWeek: Week,
  heldBy: ReadonlyMap<string, readonly Interplantable[]>,
  begins: ReadonlyMap<string, Week>,
  given: ReadonlyMap<string, number>,
): GuestHost[] | null {
  const strips = new Map<Interplantable, number>();
  for (const strip of stripsOf(guest))
    for (const other of heldBy.get(strip)!) {
      const otherFrom = begins.get(other.id) ?? other.groundFromWeek;
      if (other === guest || other.groundToWeek <= fromWeek || otherFrom >= guest.groundFromWeek) continue;
      const isHost =
        takesGuest(other.kind, guest.kind) &&
        !begins.has(other.id) &&
        other.groundToWeek <= guest.groundFromWeek &&
        fromWeek >= other.groundToWeek - other.kind.guestWeeks &&
        fromWeek >= other.firstHarvestWeek;
      if (!isHost) return null;
      strips.set(other, (strips.get(other) ?? 0) + 1);
    }
  for (const [host, count] of strips)
    if (count + (given.get(host.id) ?? 0) > releasedStrips(host.kind, stripsOf(host).length)) return null;
  return [...strips].map(([host, count]) => ({ host: host.id, strips: count }));
}

export function interplant(sowings: readonly Interplantable[]): Map<string, GuestPlanting> {
  const heldBy = new Map<string, Interplantable[]>();
  for (const sowing of sowings)
    for (const strip of stripsOf(sowing)) heldBy.set(strip, [...(heldBy.get(strip) ?? []), sowing]);
  const given = new Map<string, number>();
  const begins = new Map<string, Week>();
  const found = new Map<string, GuestPlanting>();
  const order = [...sowings].sort((a, b) => a.groundFromWeek - b.groundFromWeek || (a.id < b.id ? -1 : 1));
  for (const guest of order)
    for (let fromWeek = guest.readyWeek; fromWeek < guest.groundFromWeek; fromWeek++) {
      const hosts = hostsFrom(guest, fromWeek, heldBy, begins, given);
      if (hosts === null || hosts.length === 0) continue;
      for (const { host, strips } of hosts) given.set(host, (given.get(host) ?? 0) + strips);
      begins.set(guest.id, fromWeek);
      found.set(guest.id, { fromWeek, hosts });
      break;
    }
  return found;
}
