import { civilFromDay, type Day } from '../../packages/basis/src/index.ts';

export function daysByMonth(startDay: Day, count: number): number[][] {
  const months: number[][] = Array.from({ length: 12 }, () => []);
  for (let i = 0; i < count; i++) months[civilFromDay(startDay + i).month - 1]!.push(i);
  return months;
}

export function meanAt(values: ArrayLike<number>, days: readonly number[]): number {
  let sum = 0;
  for (const i of days) sum += values[i]!;
  return sum / days.length;
}

/** Standard deviation of running means of so many days, after the mean year is taken out. */
export function spreadOfMeans(values: Float64Array, days: number): number {
  const slot = (i: number): number => Math.floor(i % 365.2425);
  const sums = new Float64Array(366);
  const counts = new Float64Array(366);
  for (let i = 0; i < values.length; i++) {
    sums[slot(i)] = sums[slot(i)]! + values[i]!;
    counts[slot(i)] = counts[slot(i)]! + 1;
  }
  let running = 0;
  let [total, squares, count] = [0, 0, 0];
  const departure = (i: number): number => values[i]! - sums[slot(i)]! / counts[slot(i)]!;
  for (let i = 0; i < values.length; i++) {
    running += departure(i);
    if (i >= days) running -= departure(i - days);
    if (i < days - 1) continue;
    total += running / days;
    squares += (running / days) * (running / days);
    count++;
  }
  return Math.sqrt(squares / count - (total / count) * (total / count));
}
