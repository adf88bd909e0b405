/**
 * How hardened against frost plants are, 0 soft to 1 fully, at the end of each day: the cold of the last week draws it
 * up (Tamura 2002: follows the seven-day mean minimum, strongly below 2–4 °C), a cold day does so at once (Fennell & Li:
 * spinach gains 2–4 °C on its first day at 5/2 °C, most by the third), and warmth takes it away within a day (3–5 °C
 * lost in one at 20/17 °C). A frosty night finds plants as hard as the day before left them (growth/place-clock.ts).
 *
 *   target = 1 / (1 + exp((m − half)/slope)),  m = min(m7, Tmin)     gain: h += g (target − h)
 *   in warmth: h −= l · warmth · h        week growing milder but cool: h drifts to the target
 *
 * | symbol | meaning | unit |
 * | m7, Tmin | mean minimum of the last seven days, minimum of the day itself | °C |
 * | g, l | share gained in a day, lost in a warm day (tables/covers.csv, hardening) | – |
 * | warmth | 0–1 as the daily mean goes from 8 to 18.5 °C | – |
 *
 * Range: leafy crops of winter, −20 to 20 °C. Known weakness: one cold night in a mild week counts as a cold day.
 */
import { coversTable } from '../generated/covers.ts';

export function hardenedShares(tmaxC: ArrayLike<number>, tminC: ArrayLike<number>): Float64Array {
  const row = coversTable.hardening;
  const shares = new Float64Array(tminC.length);
  let hardened = Number.NaN;
  let minimumSum = 0;
  for (let i = 0; i < shares.length; i++) {
    minimumSum += tminC[i]! - (i >= 7 ? tminC[i - 7]! : 0);
    const coldC = Math.min(minimumSum / Math.min(7, i + 1), tminC[i]!);
    const target = 1 / (1 + Math.exp((coldC - row['half-at-minimum-c']) / row['slope-c']));
    const meanC = (tmaxC[i]! + tminC[i]!) / 2;
    const warmth = Math.min(
      1,
      Math.max(0, (meanC - row['loss-from-mean-c']) / (row['loss-full-mean-c'] - row['loss-from-mean-c'])),
    );
    if (Number.isNaN(hardened)) hardened = target;
    else if (target > hardened && warmth === 0) hardened += row['gain-per-day'] * (target - hardened);
    else if (target < hardened) hardened += row['drift-per-day'] * (target - hardened);
    hardened -= row['loss-per-day'] * warmth * hardened;
    shares[i] = hardened;
  }
  return shares;
}
