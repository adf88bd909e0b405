import { describe, expect, it } from 'vitest';
import { multiply, transpose } from './autoregression.ts';
import { fastAutoregression, spreadFor } from './residual-model.ts';

describe('residual model', () => {
  it('has a real, stationary autoregression in every climate and season', () => {
    for (let rangeC = 0; rangeC <= 40; rangeC += 0.5) {
      for (let warmth = 0; warmth <= 1.0001; warmth += 0.05) {
        const spread = spreadFor(rangeC, Math.min(1, warmth));
        expect(spread.tmaxSdC).toBeGreaterThan(1);
        const { a, b } = fastAutoregression(spread.correlation, Math.min(1, warmth));
        let covariance: number[] = new Array(9).fill(0);
        const noise = multiply(b, transpose(b));
        for (let day = 0; day < 200; day++) {
          covariance = multiply(multiply(a, covariance), transpose(a)).map((v, i) => v + noise[i]!);
        }
        for (const i of [0, 4, 8]) expect(covariance[i]!).toBeCloseTo(1, 6);
      }
    }
  });
});
