/**
 * Buttons: a calabrese, cauliflower or Chinese cabbage checked in its pot makes its head on too few leaves, and the
 * head stays small. Larger plants set out later made more curds under 9 cm, and it was the check to leaf growth that
 * did it, not an earlier start of the curd (Cauliflower buttoning: the role of transplant size, J. Hort. Sci. 59,
 * 1984, abstract). The size of the loss is *judged*:
 *
 *   yield share = exp(−b · C)
 *
 * | symbol | meaning | unit |
 * | C | growth that the pot withheld (kept-in-pots.ts) | reference days |
 * | b | loss per day, a row of the kind; 0.025 (0.01–0.05) for heads, 0 for all else | 1/day |
 *
 * Range: C up to some 40 days. Known weakness: the mean of a batch; in truth some heads button and others come whole,
 * and side shoots lose less than heads. Hunger, drought and cold nights, which button plants too, are not in it.
 */
export const buttoningYieldShare = (lossPerDayShare: number, checkedDays: number): number =>
  Math.exp(-lossPerDayShare * checkedDays);
