/**
 * First-order vector autoregression of daily residuals (Matalas 1967; Richardson 1981):
 *   χ(i) = A χ(i−1) + B ε(i),   A = M1 M0⁻¹,   B Bᵀ = M0 − A M1ᵀ   (B lower triangular, by Cholesky)
 * Order of variables: tmax, tmin, sun. M0 same-day correlations, M1 row variable today with column variable yesterday.
 * Matrices are flat, row by row, of nine values.
 */
import { invariant } from '@twelvemonth/basis';

export type Matrix3 = readonly number[];

export interface Autoregression {
  readonly a: Matrix3;
  readonly b: Matrix3;
}

const at = (m: Matrix3, row: number, column: number): number => m[row * 3 + column]!;
const build = (cell: (row: number, column: number) => number): number[] =>
  Array.from({ length: 9 }, (_, i) => cell(Math.floor(i / 3), i % 3));

export const multiply = (m: Matrix3, n: Matrix3): number[] =>
  build((r, c) => at(m, r, 0) * at(n, 0, c) + at(m, r, 1) * at(n, 1, c) + at(m, r, 2) * at(n, 2, c));

export const transpose = (m: Matrix3): number[] => build((r, c) => at(m, c, r));

export function inverse(m: Matrix3): number[] {
  const cofactor = (r: number, c: number): number => {
    const [r1, r2, c1, c2] = [(r + 1) % 3, (r + 2) % 3, (c + 1) % 3, (c + 2) % 3];
    return at(m, r1, c1) * at(m, r2, c2) - at(m, r1, c2) * at(m, r2, c1);
  };
  const determinant =
    at(m, 0, 0) * cofactor(0, 0) + at(m, 0, 1) * cofactor(0, 1) + at(m, 0, 2) * cofactor(0, 2);
  invariant(Math.abs(determinant) > 1e-9, 'correlations can be inverted', { determinant });
  return build((r, c) => cofactor(c, r) / determinant);
}

export function cholesky(m: Matrix3): number[] {
  const l = new Array<number>(9).fill(0);
  for (let r = 0; r < 3; r++) {
    for (let c = 0; c <= r; c++) {
      let sum = at(m, r, c);
      for (let k = 0; k < c; k++) sum -= l[r * 3 + k]! * l[c * 3 + k]!;
      if (r === c) {
        invariant(sum > 0, 'innovation covariance is positive definite', { row: r, pivot: sum });
        l[r * 3 + c] = Math.sqrt(sum);
      } else l[r * 3 + c] = sum / l[c * 3 + c]!;
    }
  }
  return l;
}

export function autoregressionFrom(m0: Matrix3, m1: Matrix3): Autoregression {
  const a = multiply(m1, inverse(m0));
  const explained = multiply(a, transpose(m1));
  return { a, b: cholesky(m0.map((value, i) => value - explained[i]!)) };
}
