/**
 * How wide days scatter about the normal year, and how they hang together: by season (the share of the way from the
 * coldest to the warmest time of the year) and by how continental the place is (range of monthly mean temperature).
 * The residual of tmax and tmin is a fast autoregression plus slow terms of some weeks and some months, without which
 * winters differ too little from one another. Total correlations M0, M1 are given; the slow part is taken out:
 *   M0f = (M0 − Σ C_k) / √((1 − v_i)(1 − v_j))    M1f with φ_k C_k    C_k,ij = c_k √(v_ki v_kj)
 * v share of variance · c correlation of tmax and tmin in the slow term · φ = exp(−1/time constant)
 */
import { generatorTable } from '../generated/generator.ts';
import { type Autoregression, autoregressionFrom } from './autoregression.ts';

const knots = [
  generatorTable['spread-valentia-like'],
  generatorTable['spread-dublin-like'],
  generatorTable['spread-lowland-like'],
  generatorTable['spread-inland-like'],
] as const;
type SpreadName = keyof (typeof knots)[number];

const mix = (winter: number, summer: number, warmth: number): number => winter + warmth * (summer - winter);

function spreadAt(name: SpreadName, annualRangeC: number): number {
  if (annualRangeC <= knots[0]['annual-range-c']) return knots[0][name];
  for (let i = 1; i < knots.length; i++) {
    const [low, high] = [knots[i - 1]!, knots[i]!];
    if (annualRangeC > high['annual-range-c']) continue;
    const gap = high['annual-range-c'] - low['annual-range-c'];
    return low[name] + ((annualRangeC - low['annual-range-c']) / gap) * (high[name] - low[name]);
  }
  return knots[knots.length - 1]![name];
}

export interface SlowTerm {
  readonly persistence: number;
  readonly tmaxShare: number;
  readonly tminShare: number;
  readonly correlation: number;
}

export const slowTerms: readonly SlowTerm[] = [
  generatorTable['slow-weeks'],
  generatorTable['slow-years'],
].map((row) => ({
  persistence: Math.exp(-1 / row['time-constant-days']),
  tmaxShare: row['tmax-share'],
  tminShare: row['tmin-share'],
  correlation: row['tmax-tmin-correlation'],
}));

const sumOf = (value: (term: SlowTerm) => number): number => slowTerms.reduce((s, t) => s + value(t), 0);
export const fastWeight = {
  tmax: Math.sqrt(1 - sumOf((t) => t.tmaxShare)),
  tmin: Math.sqrt(1 - sumOf((t) => t.tminShare)),
};

export interface Spread {
  readonly tmaxSdC: number;
  readonly tminSdC: number;
  readonly correlation: number;
}

/** `warmth` 0 in the coldest, 1 in the warmest time of the year. */
export function spreadFor(annualRangeC: number, warmth: number): Spread {
  const seasonal = (winter: SpreadName, summer: SpreadName): number =>
    mix(spreadAt(winter, annualRangeC), spreadAt(summer, annualRangeC), warmth);
  return {
    tmaxSdC: seasonal('tmax-sd-winter-c', 'tmax-sd-summer-c'),
    tminSdC: seasonal('tmin-sd-winter-c', 'tmin-sd-summer-c'),
    correlation: seasonal('tmax-tmin-correlation-winter', 'tmax-tmin-correlation-summer'),
  };
}

export function fastAutoregression(correlation: number, warmth: number): Autoregression {
  const winter = generatorTable['winter-correlations'];
  const summer = generatorTable['summer-correlations'];
  const row = (name: keyof typeof winter): number => mix(winter[name], summer[name], warmth);
  const maritime = spreadFor(0, warmth).correlation;
  // Inland nights follow the days more closely, and sun then tells them apart less: both shrink together, as in the
  // published United States matrices, which also keeps the innovations positive definite.
  const closer = Math.min(1.3, correlation / maritime);
  const apart = 1 - Math.max(0, (correlation - maritime) / (1 - maritime));
  const tmaxSun = row('m0-tmax-sun') * apart;
  const tminSun = row('m0-tmin-sun') * apart;
  const m0 = [1, correlation, tmaxSun, correlation, 1, tminSun, tmaxSun, tminSun, 1];
  const m1 = [
    row('m1-tmax-tmax'),
    row('m1-tmax-tmin') * closer,
    row('m1-tmax-sun') * apart,
    Math.min(row('m1-tmin-tmax') * closer, row('m1-tmax-tmax')),
    row('m1-tmin-tmin'),
    row('m1-tmin-sun') * apart,
    row('m1-sun-tmax') * apart,
    row('m1-sun-tmin') * apart,
    row('m1-sun-sun'),
  ];
  const weights = [fastWeight.tmax, fastWeight.tmin, 1];
  const slowShare = (i: number, j: number, lag: number): number => {
    if (i === 2 || j === 2) return 0;
    return sumOf((t) => {
      const shares = [t.tmaxShare, t.tminShare];
      const together = i === j ? 1 : t.correlation;
      return together * Math.sqrt(shares[i]! * shares[j]!) * (lag === 0 ? 1 : t.persistence);
    });
  };
  const fast = (m: readonly number[], lag: number): number[] =>
    m.map((value, cell) => {
      const [i, j] = [Math.floor(cell / 3), cell % 3];
      return (value - slowShare(i, j, lag)) / (weights[i]! * weights[j]!);
    });
  return autoregressionFrom(fast(m0, 0), fast(m1, 1));
}
