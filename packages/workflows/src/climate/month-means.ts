import { civilFromDay, type Day } from '@twelvemonth/basis';

/** Month (0–11) of each day of a run. */
export function monthsOfDays(fromDay: Day, dayCount: number): Uint8Array {
  return Uint8Array.from({ length: dayCount }, (_, i) => civilFromDay(fromDay + i).month - 1);
}

/** Daily values gathered into means of the calendar months. */
export class MonthMeans {
  readonly #sums = new Float64Array(12);
  readonly #counts = new Float64Array(12);
  readonly #months: Uint8Array;

  constructor(months: Uint8Array) {
    this.#months = months;
  }

  addDays(dailyValue: (dayIndex: number) => number): void {
    this.#months.forEach((month, i) => {
      this.#sums[month] = this.#sums[month]! + dailyValue(i);
      this.#counts[month] = this.#counts[month]! + 1;
    });
  }

  /** Month 0–11. */
  meanOf(month: number): number {
    return this.#sums[month]! / Math.max(1, this.#counts[month]!);
  }
}
