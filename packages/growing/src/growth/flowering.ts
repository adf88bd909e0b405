/**
 * The first open flower, by the same clock as growth: so many reference days after emergence.
 *
 *   flower = first day with Σ E ≥ flowering days · reference day ÷ pace
 *
 * | symbol | meaning | unit |
 * | E | effective day-degrees (light-limited-heat.ts) | °C·d |
 * | flowering days | a row of the kind: faba bean 53 (44–62), *judged* | reference days |
 *
 * Faba bean flowers by warmth and day length added together, without a need of cold (Ellis, Summerfield & Roberts
 * 1988: photothermal time); here day length counts only as the light that it brings. 43 to 73 days from emergence in
 * mild winters (Aust. J. Exp. Agric. 34, 1994). Range: sowings of October to April at 45–60°. Known weakness: a late
 * spring sowing flowers sooner than this says, since long days hasten it and shade in the tunnel does not delay it.
 */
import type { Day } from '@twelvemonth/basis';
import type { Growing } from './growing.ts';

/** NEVER when the weather ends before; a kind without `floweringDays` must not be asked. */
export const firstFlowerDay = ({ kind, raised, sumOf }: Growing): Day =>
  raised.dayOfGrowth(sumOf(kind.floweringDays));
