import type { LinearProgram } from '@twelvemonth/planning';

/** Gathers columns one at a time and lays them out in column order. */
export class ProgramColumns {
  readonly #cost: number[] = [];
  readonly #lower: number[] = [];
  readonly #upper: number[] = [];
  readonly #whole: number[] = [];
  readonly #starts: number[] = [0];
  readonly #indices: number[] = [];
  readonly #values: number[] = [];

  add(
    cost: number,
    lower: number,
    upper: number,
    whole: boolean,
    entries: ReadonlyMap<number, number>,
  ): void {
    this.#cost.push(cost);
    this.#lower.push(lower);
    this.#upper.push(upper);
    this.#whole.push(whole ? 1 : 0);
    for (const [row, value] of [...entries].sort((a, b) => a[0] - b[0])) {
      this.#indices.push(row);
      this.#values.push(value);
    }
    this.#starts.push(this.#indices.length);
  }

  program(rowLower: readonly number[], rowUpper: readonly number[]): LinearProgram {
    return {
      colCost: Float64Array.from(this.#cost),
      colLower: Float64Array.from(this.#lower),
      colUpper: Float64Array.from(this.#upper),
      colWhole: Uint8Array.from(this.#whole),
      rowLower: Float64Array.from(rowLower),
      rowUpper: Float64Array.from(rowUpper),
      starts: Int32Array.from(this.#starts),
      indices: Int32Array.from(this.#indices),
      values: Float64Array.from(this.#values),
    };
  }
}
