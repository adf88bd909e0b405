/**
 * Daily weather drawn from monthly normals (Richardson 1981; Richardson & Wright 1984, WGEN): wet and dry days from a
 * Markov chain, gamma rain, tmax, tmin and sun as autoregressive residuals about means that differ between wet and dry
 * days, plus slow terms on tmax and tmin so that seasons and years differ as they do on record.
 *
 *   χ(i) = A χ(i−1) + B ε(i)     s_k(i) = φ_k s_k(i−1) + √(1 − φ_k²) η(i)
 *   T = m + σ (√(1 − Σ v) χ + Σ √v_k s_k)     Rs = Ra · clip(k + σ_k χ_sun, overcast, clear)
 *
 * Only + − × ÷, sqrt, exp and log are used while drawing, so that the same seed gives the same weather everywhere.
 */
import type { Day, RandomStream } from '@twelvemonth/basis';
import type { DailyWeather } from './climate.ts';
import type { NormalYear } from './normal-year.ts';
import { fastWeight, slowTerms } from './residual-model.ts';
import { slotsFrom } from './year-slots.ts';

const warmUpDays = 20;

interface SlowState {
  readonly persistence: number;
  readonly noise: number;
  readonly tmaxWeight: number;
  readonly tminWeight: number;
  readonly shared: number;
  readonly own: number;
  tmax: number;
  tmin: number;
}

function startSlow(stream: RandomStream): SlowState[] {
  return slowTerms.map((term) => {
    const own = Math.sqrt(1 - term.correlation * term.correlation);
    const tmax = stream.normal();
    return {
      persistence: term.persistence,
      noise: Math.sqrt(1 - term.persistence * term.persistence),
      tmaxWeight: Math.sqrt(term.tmaxShare),
      tminWeight: Math.sqrt(term.tminShare),
      shared: term.correlation,
      own,
      tmax,
      tmin: term.correlation * tmax + own * stream.normal(),
    };
  });
}

export function generateWeather(
  year: NormalYear,
  stream: RandomStream,
  startDay: Day,
  dayCount: number,
): DailyWeather {
  const tmaxC = new Float64Array(dayCount);
  const tminC = new Float64Array(dayCount);
  const rainMm = new Float64Array(dayCount);
  const radiationMJPerM2Day = new Float64Array(dayCount);
  const slots = slotsFrom(startDay, dayCount);
  const { rain } = year;
  const slow = startSlow(stream);
  const firstSlot = slots[0] ?? 0;
  let wet = stream.uniform() < rain.wetShare[firstSlot]!;
  let [fastTmax, fastTmin, fastSun] = [0, 0, 0];
  for (let i = -warmUpDays; i < dayCount; i++) {
    const slot = i < 0 ? firstSlot : slots[i]!;
    const { a, b } = year.autoregression[slot]!;
    const [e1, e2, e3] = [stream.normal(), stream.normal(), stream.normal()];
    const nextTmax = a[0]! * fastTmax + a[1]! * fastTmin + a[2]! * fastSun + b[0]! * e1;
    const nextTmin = a[3]! * fastTmax + a[4]! * fastTmin + a[5]! * fastSun + b[3]! * e1 + b[4]! * e2;
    const nextSun =
      a[6]! * fastTmax + a[7]! * fastTmin + a[8]! * fastSun + b[6]! * e1 + b[7]! * e2 + b[8]! * e3;
    fastTmax = nextTmax;
    fastTmin = nextTmin;
    fastSun = nextSun;
    if (i < 0) continue;
    let tmaxResidual = fastWeight.tmax * fastTmax;
    let tminResidual = fastWeight.tmin * fastTmin;
    for (const term of slow) {
      const e = stream.normal();
      term.tmax = term.persistence * term.tmax + term.noise * e;
      term.tmin = term.persistence * term.tmin + term.noise * (term.shared * e + term.own * stream.normal());
      tmaxResidual += term.tmaxWeight * term.tmax;
      tminResidual += term.tminWeight * term.tmin;
    }
    wet = stream.uniform() < (wet ? rain.wetAfterWetProb[slot]! : rain.wetAfterDryProb[slot]!);
    rainMm[i] = wet
      ? rain.leastWetMm[slot]! + stream.gamma(rain.gammaShape[slot]!, rain.gammaScaleMm[slot]!)
      : 0;
    const kind = wet ? year.wet : year.dry;
    let tmax = kind.tmaxC[slot]! + kind.tmaxSdC[slot]! * tmaxResidual;
    let tmin = kind.tminC[slot]! + kind.tminSdC[slot]! * tminResidual;
    if (tmax - tmin < year.leastRangeC) {
      const middle = (tmax + tmin) / 2;
      tmax = middle + year.leastRangeC / 2;
      tmin = middle - year.leastRangeC / 2;
    }
    tmaxC[i] = tmax;
    tminC[i] = tmin;
    const clearness = kind.clearness[slot]! + year.clearnessSd * fastSun;
    radiationMJPerM2Day[i] =
      year.outerMJPerM2Day[slot]! *
      Math.min(year.clearShare[slot]!, Math.max(year.overcastShare[slot]!, clearness));
  }
  return { startDay, tmaxC, tminC, rainMm, radiationMJPerM2Day };
}
