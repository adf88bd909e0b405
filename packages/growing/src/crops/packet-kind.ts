/**
 * A kind as a seed packet describes it: like one of the catalogue, with the packet's own days and spacing. The days
 * stretch every harvest of the parent in one proportion; what the packet does not say stays as the parent has it.
 *
 *   ratio = (packet days − days to emergence) / (parent's days to its first harvest − days to emergence)
 *
 * Days counted from planting leave the raising out of both sides. Kinds whose first harvest waits for cold, for day
 * length or for midwinter are not moved by a packet's days; that is said, not hidden.
 */
import type { Issue } from '@twelvemonth/basis';
import { kindById } from './catalogue.ts';
import type { CropType, Harvest } from './crop-type.ts';
import { assembleOwnKind, type OwnKind, type OwnKindRequest } from './own-kind.ts';

export interface PacketKind {
  readonly id: string;
  /** Kind of the catalogue that it behaves like. */
  readonly parent: string;
  readonly name: string;
  /** Days to the first harvest as printed, in the main season; null: as the parent. */
  readonly packetDays: number | null;
  readonly countedFrom: 'sowing' | 'planting';
  readonly inRowCm: number | null;
  readonly betweenRowCm: number | null;
  /** Further values by the tables' parameter names. */
  readonly changes: OwnKindRequest['changes'];
}

export interface ReadPacket {
  readonly own: OwnKind;
  /** Warnings only; errors are in `own`. */
  readonly warnings: readonly Issue[];
}

/** The kind's own days in its main season to its first harvest, as a packet would print them. */
export function packetDaysOf(kind: CropType, countedFrom: 'sowing' | 'planting'): number {
  const first = firstHarvest(kind);
  const grown = Math.max(first.startDays, 'afterDays' in first.startGate ? first.startGate.afterDays : 0);
  if (countedFrom === 'planting') return Math.max(1, grown - raisedDays(kind));
  return grown + emergenceDays(kind);
}

const firstHarvest = (kind: CropType): Harvest =>
  kind.harvests
    .filter((harvest) => harvest.after === null)
    .reduce((a, b) => (b.startDays < a.startDays ? b : a));

const raisedDays = (kind: CropType): number => (kind.startsAs === 'seed' ? kind.raisingDays : 0);

function emergenceDays(kind: CropType): number {
  if (kind.startsAs !== 'seed' && kind.startsAs !== 'tuber') return 0;
  const warmthC = Math.min(kind.referenceC, kind.emergenceOptimumC) - kind.emergenceBaseC;
  return kind.emergenceSumCDays / Math.max(1, warmthC);
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

function stretchedHarvests(parent: CropType, ratio: number): Record<string, number> {
  const changes: Record<string, number> = {};
  for (const harvest of parent.harvests) {
    const of = (name: string): string => `harvest.${harvest.id}.${name}`;
    if (harvest.startDays > 0) changes[of('start-days')] = rounded(harvest.startDays * ratio);
    if (harvest.fullDays > 0 && harvest.habit !== 'picks')
      changes[of('full-days')] = rounded(harvest.fullDays * ratio);
  }
  return changes;
}

/** Half or double the parent's time is more likely a slip than a kind. */
const contradictionRatio = 2;

export function readPacket(packet: PacketKind): ReadPacket {
  const { id, name, packetDays, countedFrom } = packet;
  const where = `kind:${id}`;
  const parent = kindById(packet.parent);
  const spacing = {
    ...(packet.inRowCm === null ? {} : { 'in-row-cm': packet.inRowCm }),
    ...(packet.betweenRowCm === null ? {} : { 'between-row-cm': packet.betweenRowCm }),
  };
  const warnings: Issue[] = [];
  let days: Record<string, number> = {};
  if (parent !== undefined && packetDays !== null) {
    const usualDays = packetDaysOf(parent, countedFrom);
    const detail = { parent: parent.name, days: Math.round(packetDays), usualDays: Math.round(usualDays) };
    const warn = (code: string): void => {
      warnings.push({ code, severity: 'warning', where, detail });
    };
    const apart = packetDays / usualDays;
    if (apart >= contradictionRatio || apart <= 1 / contradictionRatio) warn('own-kind.days-contradict');
    if (firstHarvest(parent).startGate.gate === 'none') {
      const fixed = countedFrom === 'sowing' ? emergenceDays(parent) : -raisedDays(parent);
      const ratio = (packetDays - fixed) / (usualDays - fixed);
      if (ratio > 0) days = stretchedHarvests(parent, ratio);
      else warn('own-kind.days-too-few');
    } else warn('own-kind.days-without-effect');
  }
  const changes = { name, ...spacing, ...days, ...packet.changes };
  return { own: assembleOwnKind({ id, parent: packet.parent, changes }), warnings };
}
