/**
 * What the ground is given before what: compost by the demand of the crop that follows, lime before brassicas in the
 * winter before, and what legumes leave. Compost is asked for once in half a year and strip: what was spread for the
 * crop before is still there for the next, and nitrogen left by legumes stands for part of it.
 */
import type { Week } from '@twelvemonth/basis';
import type { CropType } from '@twelvemonth/growing';
import type { Bed } from '../problem.ts';
import type { Placement } from './strips.ts';

export interface FedSowing {
  readonly id: string;
  readonly kind: CropType;
  readonly stripM2: number;
  readonly groundFromWeek: Week;
  readonly groundToWeek: Week;
  readonly placements: readonly Placement[];
  /** Stands already: it was fed. */
  readonly standing: boolean;
  /** What its tops and roots leave when it is cleared; 0 for all but legumes. */
  readonly nitrogenLeftGPerM2: number;
}

export interface Feeding {
  readonly bed: Bed;
  /** Week in which the crop takes its ground. */
  readonly week: Week;
  readonly before: string;
  readonly compostL: number;
  /** Litres that the crop would ask for and that the ground still holds, or legumes have left. */
  readonly savedL: number;
  readonly lime: boolean;
  /** Legumes whose tops and roots are left in this ground: sowing ids. */
  readonly residueOf: readonly string[];
}

const fedForWeeks = 26;
/** A litre of garden compost gives about so much nitrogen in its first year. Common practice. */
const compostNitrogenGPerL = 1;
/** Lime lasts so long. Common practice: every third or fourth year. */
const limeForWeeks = 156;

interface StripState {
  fedWeek: Week;
  fedLPerM2: number;
  limedWeek: Week;
  lastLegume: { readonly id: string; readonly nitrogenGPerM2: number } | null;
}

export function feedingOf(sowings: readonly FedSowing[]): Feeding[] {
  const strips = new Map<string, StripState>();
  const order = [...sowings].sort((a, b) => a.groundFromWeek - b.groundFromWeek || (a.id < b.id ? -1 : 1));
  return order.flatMap((sowing) =>
    sowing.placements.flatMap(({ bed, stripsFrom, stripsCount }): Feeding[] => {
      const { kind, standing, stripM2, groundFromWeek: week } = sowing;
      let compostL = 0;
      let savedL = 0;
      let lime = false;
      const residueOf = new Set<string>();
      for (let strip = stripsFrom; strip < stripsFrom + stripsCount; strip++) {
        const key = `${bed.place}/${bed.number}/${strip}`;
        const state = strips.get(key) ?? {
          fedWeek: Number.NEGATIVE_INFINITY,
          fedLPerM2: 0,
          limedWeek: Number.NEGATIVE_INFINITY,
          lastLegume: null,
        };
        const still = week - state.fedWeek < fedForWeeks ? state.fedLPerM2 : 0;
        const legumeLPerM2 = (state.lastLegume?.nitrogenGPerM2 ?? 0) / compostNitrogenGPerL;
        const needLPerM2 = Math.max(0, kind.compostLPerM2 - still - legumeLPerM2);
        if (state.lastLegume !== null) residueOf.add(state.lastLegume.id);
        if (!standing) {
          compostL += needLPerM2 * stripM2;
          savedL += (kind.compostLPerM2 - needLPerM2) * stripM2;
          if (kind.limeBefore && week - state.limedWeek >= limeForWeeks) {
            lime = true;
            state.limedWeek = week;
          }
        }
        if (standing || needLPerM2 > 0) {
          state.fedWeek = week;
          state.fedLPerM2 = standing ? kind.compostLPerM2 : still + needLPerM2;
        }
        const nitrogenGPerM2 = sowing.nitrogenLeftGPerM2;
        state.lastLegume = nitrogenGPerM2 > 0 ? { id: sowing.id, nitrogenGPerM2 } : null;
        strips.set(key, state);
      }
      if (standing || (compostL <= 0 && savedL <= 0 && !lime && residueOf.size === 0)) return [];
      return [{ bed, week, before: sowing.id, compostL, savedL, lime, residueOf: [...residueOf] }];
    }),
  );
}
