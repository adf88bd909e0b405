/** Which crop takes the strips of which, and when: one pass for each week in which a share of them changes hands. */
import type { Week } from '@twelvemonth/basis';
import type { Placement } from './strips.ts';

export interface Holder {
  readonly id: string;
  readonly kind: string;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly placements: readonly Placement[];
}

export interface HandoverPass {
  readonly week: Week;
  readonly strips: number;
  /** The sowing that is planted or sown there. */
  readonly to: string;
}

export interface Handover {
  readonly from: string;
  /** Kind that takes over, perhaps in several sowings. */
  readonly toKind: string;
  readonly passes: readonly HandoverPass[];
}

/** Ground that lay idle for longer than this was not handed over. */
export const mostIdleWeeks = 5;

export function handoversOf(holders: readonly Holder[]): Handover[] {
  const byStrip = new Map<string, Holder[]>();
  for (const holder of holders)
    for (const { bed, stripsFrom, stripsCount } of holder.placements)
      for (let strip = stripsFrom; strip < stripsFrom + stripsCount; strip++) {
        const key = `${bed.place}/${bed.number}/${strip}`;
        byStrip.set(key, [...(byStrip.get(key) ?? []), holder]);
      }
  const strips = new Map<string, { from: Holder; to: Holder; count: number }>();
  for (const held of byStrip.values()) {
    held.sort((a, b) => a.groundFromWeek - b.groundFromWeek);
    for (let i = 1; i < held.length; i++) {
      const [from, to] = [held[i - 1]!, held[i]!];
      if (to.groundFromWeek - from.groundToWeek > mostIdleWeeks) continue;
      const key = `${from.id}/${to.id}`;
      const pair = strips.get(key) ?? { from, to, count: 0 };
      strips.set(key, { ...pair, count: pair.count + 1 });
    }
  }
  const found = new Map<string, { from: string; toKind: string; passes: HandoverPass[] }>();
  for (const { from, to, count } of strips.values()) {
    const key = `${from.id}/${to.kind}`;
    const handover = found.get(key) ?? { from: from.id, toKind: to.kind, passes: [] };
    handover.passes.push({ week: to.groundFromWeek, strips: count, to: to.id });
    found.set(key, handover);
  }
  for (const { passes } of found.values()) passes.sort((a, b) => a.week - b.week || (a.to < b.to ? -1 : 1));
  return [...found.values()].sort(
    (a, b) =>
      a.passes[0]!.week - b.passes[0]!.week || (`${a.from}${a.toKind}` < `${b.from}${b.toKind}` ? -1 : 1),
  );
}
