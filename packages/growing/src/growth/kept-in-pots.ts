/**
 * Plants that wait in pots for their ground. When fit to set out they have filled their module; a 9 cm pot carries
 * them some way further, freely; then growth stops. What warmth and light would have let them grow beyond it is the
 * check. It counts in reference days of growth, so that a winter standstill costs next to nothing and May is dear.
 *
 *   size = min(P, raising + room)      C = P − size
 *   restart = most · (1 − exp(−C/c))   yield share = exp(−r · C) · buttons (buttoning.ts)
 *
 * | symbol | meaning | unit |
 * | P | growth that the benches would have allowed since emergence | reference days |
 * | raising | from emergence to fit to set out | reference days |
 * | room | what the pot carries beyond; 12 (7–20) by default, less for fast seedlings | reference days |
 * | C | the check: growth withheld | reference days |
 * | restart | growth lost after setting out, until there are new roots; most 10 (6–14), *judged* | reference days |
 * | c | check after which most of a restart is due: roots soon circle a full pot; 3 (1–6), *judged* | reference days |
 * | r | yield lost per day of check, a row of the kind, *judged* | 1/day |
 *
 * Room: twice the pot gives 43 % more plant (Poorter et al. 2012, 65 studies); a 9 cm pot holds about ten times a 4 cm
 * module, hence 3.3 times the plant, 1.7 doublings of its weight: 12 reference days where a seedling doubles in seven,
 * 5 where it does in three. The steps from weight to days are *judged*.
 *
 * Range: one potting on. Known weakness: growth stops at once where it truly slows; fed and watered every day.
 */
import type { CropType } from '../crops/crop-type.ts';
import { coversTable } from '../generated/covers.ts';
import { buttoningYieldShare } from './buttoning.ts';

const {
  'restart-most-days': restartMostDays,
  'restart-scale-days': restartScaleDays,
  'usual-bench-pace-share': usualBenchPaceShare,
} = coversTable.raising;

export type PotTraits = Pick<
  CropType,
  'raisingDays' | 'potRoomDays' | 'rootboundLossPerDayShare' | 'buttoningLossPerDayShare'
>;

export interface KeptInPots {
  readonly sizeDays: number;
  readonly checkedDays: number;
  readonly restartDays: number;
  readonly yieldShare: number;
}

/** What a plant is that could have grown so many reference days on its benches. */
export function keptInPots(kind: PotTraits, potentialDays: number): KeptInPots {
  const sizeDays = Math.min(potentialDays, kind.raisingDays + kind.potRoomDays);
  const checkedDays = potentialDays - sizeDays;
  return {
    sizeDays,
    checkedDays,
    restartDays: restartMostDays * (1 - Math.exp(-checkedDays / restartScaleDays)),
    yieldShare:
      Math.exp(-kind.rootboundLossPerDayShare * checkedDays) *
      buttoningYieldShare(kind.buttoningLossPerDayShare, checkedDays),
  };
}

/** Calendar days for which a 9 cm pot holds a plant without a check, on a cool bench in spring. */
export const usualPotDays = (kind: PotTraits): number => kind.potRoomDays / usualBenchPaceShare;
