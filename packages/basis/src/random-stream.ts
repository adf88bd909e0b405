import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { invariant } from './invariant.ts';

/**
 * Keyed random streams: the same seed, purpose and index give the same numbers on every machine, whatever
 * else was drawn. Only + − × ÷, sqrt, exp and log are used, so that Node and browsers agree to the last bit.
 */
export interface RandomStream {
  /** Uniform on [0, 1). */
  uniform(): number;
  /** Standard normal (polar method, Marsaglia & Bray 1964). */
  normal(): number;
  /** Gamma with the given shape (> 0) and scale (Marsaglia & Tsang 2000). */
  gamma(shape: number, scale: number): number;
}

/** FNV-1a over the key text, mixed; 32 bits. */
function hashKey(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    h ^= text.charCodeAt(i);
    h = Math.imul(h, 0x01000193);
  }
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  h = Math.imul(h, 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}

export function streamFor(seed: number, purpose: string, index: number): RandomStream {
  invariant(Number.isInteger(seed) && Number.isInteger(index), 'seed and index are whole numbers', {
    seed,
    index,
  });
  const generator = xoroshiro128plus(hashKey(`${seed}/${purpose}/${index}`));
  const uniform = (): number => {
    const high = generator.next() >>> 5;
    const low = generator.next() >>> 6;
    return (high * 67108864 + low) / 9007199254740992;
  };
  let spare: number | null = null;
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s > 0 && s < 1) {
        const m = Math.sqrt((-2 * Math.log(s)) / s);
        spare = v * m;
        return u * m;
      }
    }
  };
  const gamma = (shape: number, scale: number): number => {
    if (shape < 1) {
      const u = Math.max(uniform(), 1e-300);
      return gamma(shape + 1, scale) * Math.exp(Math.log(u) / shape);
    }
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const t = 1 + c * x;
      if (t <= 0) continue;
      const v = t * t * t;
      const u = uniform();
      if (u > 0 && Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v * scale;
    }
  };
  return { uniform, normal, gamma };
}
