/**
 * Nitrogen that a legume leaves in its ground, tops and roots left there. It gathers it until it flowers; from then on
 * it moves into the seed and goes away with the pods. Where only tips are taken, it stays.
 *
 *   g ≤ f:  N = Nf · (g/f)²                          g > f:  N = Nf − (Nf − Nh) · min(1, (g − f)/(e − f))
 *
 * | symbol | meaning | unit |
 * | g | growth since emergence | reference days |
 * | f, e | first flower; end of the last picking | reference days |
 * | Nf, Nh | left when cut at the first flower, and after the harvest | g/m² |
 *
 * The square is *judged*: nodules work from the third to fifth week on, tops cut young return little. Known weakness: no
 * soil, no acid or rich ground that stops the nodules, no loss over winter, and no crop is fed by it yet.
 */
import type { Day } from '@twelvemonth/basis';
import type { CropType } from '../crops/crop-type.ts';
import type { Growing } from './growing.ts';

/** Reference days from emergence to the last picking of pods or seed; 0 where none are taken. */
const lastPickingDays = (kind: CropType): number =>
  kind.harvests.reduce(
    (most, { habit, startDays, fullDays }) =>
      Math.max(most, habit === 'picks' ? startDays + fullDays : habit === 'once' ? fullDays : 0),
    0,
  );

/** What is left when a full stand is cleared on a day; 0 for all but legumes. */
export function nitrogenLeftGPerM2(growing: Growing, clearDay: Day): number {
  const { kind, raised } = growing;
  const { nitrogenAtFlowerGPerM2: atFlower, nitrogenAfterHarvestGPerM2: afterHarvest, floweringDays } = kind;
  if (atFlower === 0) return 0;
  const grownDays = raised.growthAt(clearDay) / growing.sumOf(1);
  if (grownDays <= floweringDays) return atFlower * (grownDays / floweringDays) ** 2;
  const endDays = lastPickingDays(kind);
  if (endDays === 0) return atFlower;
  const filled = (grownDays - floweringDays) / (endDays - floweringDays);
  return atFlower - (atFlower - afterHarvest) * Math.min(1, filled);
}
