const yearDays = 365.2425;

/** Standard deviation of running means of so many days, after the mean year is taken out. */
export function spreadOfMeans(values: Float64Array, days: number): number {
  const slotOf = (day: number): number => Math.floor(day % yearDays);
  const sums = new Float64Array(366);
  const counts = new Float64Array(366);
  values.forEach((value, day) => {
    sums[slotOf(day)] = sums[slotOf(day)]! + value;
    counts[slotOf(day)] = counts[slotOf(day)]! + 1;
  });
  const departures = values.map((value, day) => value - sums[slotOf(day)]! / counts[slotOf(day)]!);
  let running = 0;
  let [total, squares, count] = [0, 0, 0];
  departures.forEach((departure, day) => {
    running += departure - (day >= days ? departures[day - days]! : 0);
    if (day < days - 1) return;
    const mean = running / days;
    total += mean;
    squares += mean * mean;
    count++;
  });
  return Math.sqrt(Math.max(0, squares / count - (total / count) ** 2));
}
