/** The household's seed as the sowings draw on it: the oldest packet that is still worth sowing first, then fresh seed. */
import { civilFromDay, type Day } from '@twelvemonth/basis';
import type { SeedEntry } from '@twelvemonth/garden';
import { agedShare, type CropType, worthSowing } from '@twelvemonth/growing';

export interface SeedDrawn {
  readonly fromTin: number;
  readonly bought: number;
  /** Germination of what came from the tin against fresh seed, 0–1; 1 when nothing did. */
  readonly leftShare: number;
}

/** Draws what is worth so many fresh seeds. */
export type DrawSeed = (freshCount: number) => SeedDrawn;

export interface SeedTin {
  /** Draws for a sowing on that day; what is drawn is gone for the next. */
  drawFor(kind: CropType, day: Day): DrawSeed;
}

/** Germination against fresh seed in the year of a day; of unknown year: taken as fresh. Sets keep for their season. */
export function leftShareOf(packet: SeedEntry, kind: CropType, day: Day): number {
  const ageYears = packet.packedYear === null ? 0 : Math.max(0, civilFromDay(day).year - packet.packedYear);
  if (kind.startsAs === 'seed') return agedShare(ageYears, kind.seedLifeYears);
  return ageYears === 0 ? 1 : 0;
}

export function openTin(packets: readonly SeedEntry[]): SeedTin {
  const oldestFirst = packets
    .map((packet) => ({ packet, count: packet.seedsCount }))
    .sort((a, b) => (a.packet.packedYear ?? 9999) - (b.packet.packedYear ?? 9999));
  return {
    drawFor: (kind, day) => (freshCount) => {
      let missing = freshCount;
      let fromTin = 0;
      for (const lot of oldestFirst) {
        if (lot.packet.kind !== kind.id || lot.count <= 0) continue;
        const left = leftShareOf(lot.packet, kind, day);
        if (!worthSowing(left)) continue;
        const taken = Math.min(lot.count, Math.ceil(missing / left - 1e-9));
        lot.count -= taken;
        fromTin += taken;
        missing -= taken * left;
        if (missing <= 1e-9) break;
      }
      const bought = missing > 1e-9 ? Math.ceil(missing - 1e-9) : 0;
      const drawn = freshCount - Math.max(0, missing);
      return { fromTin, bought, leftShare: fromTin === 0 ? 1 : Math.min(1, drawn / fromTin) };
    },
  };
}
